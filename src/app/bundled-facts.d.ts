/** Made by the build: the facts of each procedure that comes with the app, by file name without its ending. */
declare module "virtual:bundled-facts" {
  import type { ProcedureFacts } from "./shelf/procedure-facts.ts";

  export const bundledFacts: Readonly<Record<string, ProcedureFacts>>;
}
