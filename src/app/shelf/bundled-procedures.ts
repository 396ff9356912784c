import { bundledFacts } from "virtual:bundled-facts";
import type { ProcedureFacts } from "./procedure-facts.ts";

/** The addresses of the texts of the procedures that come with the app, by file name. */
const addresses = import.meta.glob<string>("../../../procedures/*.procedure.json", {
  query: "?url",
  import: "default",
  eager: true,
});

const PREFIX = "example-";

/** Identifies the procedure to learn by in addresses of the app. */
export const PRACTICE_KEY = `${PREFIX}practice`;

const nameOf = (path: string) => path.replace(/^.*\//, "").replace(".procedure.json", "");

/** A procedure that comes with the app. */
export interface BundledProcedure {
  /** Identifies it in addresses of the app. */
  readonly key: string;
  /** The id of the procedure, which is the name of its file. */
  readonly id: string;
  readonly facts: ProcedureFacts;
}

/**
 * The procedures that come with the app, in the order of their file names. They were checked and planned when the app was built,
 * so that the shelf is drawn without the checker and without their texts.
 */
export const bundledProcedures: readonly BundledProcedure[] = Object.entries(bundledFacts).map(
  ([name, one]) => ({
    key: `${PREFIX}${name}`,
    id: name,
    facts: one,
  }),
);

/** Thrown when a text among the app's own files cannot be loaded. */
export class MissingProcedureError extends Error {
  override readonly name = "MissingProcedureError";
}

/** The text of a procedure that comes with the app; `null` when there is none of that key. Rejects when it cannot be loaded. */
export async function bundledText(key: string): Promise<string | null> {
  const found = Object.entries(addresses).find(([path]) => `${PREFIX}${nameOf(path)}` === key);
  if (!found) return null;
  const [, address] = found;
  const response = await fetch(address);
  if (!response.ok) throw new MissingProcedureError(`${address}: ${response.status}`);
  return response.text();
}
