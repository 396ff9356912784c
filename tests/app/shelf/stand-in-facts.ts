import type { ProcedureFacts } from "../../../src/app/shelf/procedure-facts.ts";

/** In place of the facts that the build makes of the procedures that come with the app: none come with it here. */
export const bundledFacts: Readonly<Record<string, ProcedureFacts>> = {};
