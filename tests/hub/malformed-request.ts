import fc from "fast-check";
import type { InjectOptions } from "fastify";
import { WALK } from "./test-hub.ts";

/** A request that is wrong by the way it was made, and what it may be answered. */
export interface Malformed {
  readonly request: InjectOptions;
  /** Statuses that refuse it. 200 is only for a batch, whose every result has to be a refusal. */
  readonly refused: readonly number[];
}

/** What requests are made with. */
export interface Credentials {
  readonly device: string;
  readonly lead: string;
  readonly owner: string;
}

/** Where entries of the tests' walk go and come from. */
export const ENTRIES = `/api/walks/${WALK}/entries`;
/** Whether a text is JSON after all. */
export const isJson = (text: string) => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};
/** Any value that JSON has. */
export const anything = fc.anything({
  maxDepth: 2,
  withNullPrototype: false,
  values: [
    fc.string(),
    fc.integer(),
    fc.boolean(),
    fc.constant(null),
    fc.double({ noNaN: true, noDefaultInfinity: true }),
  ],
});
/** Any text. */
export const anyText = fc.oneof(fc.string({ unit: "binary", maxLength: 40 }), fc.string({ maxLength: 40 }));
/** Any value but a text. */
export const notText = anything.filter((value) => typeof value !== "string" && value !== undefined);
/** Text that a header can carry. */
export const headerText = fc.string({
  unit: fc.integer({ min: 0x20, max: 0x7e }).map((code) => String.fromCharCode(code)),
  maxLength: 60,
});
/** JSON that is nested too deep. */
export const deep = fc
  .integer({ min: 101, max: 600 })
  .map((depth) => `${"[".repeat(depth)}${"]".repeat(depth)}`);
