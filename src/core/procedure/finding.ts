import type { Message } from "../../words/index.ts";
import type { StepId } from "../units/index.ts";
import type { Change } from "./change.ts";

/** A position in a file; line and column both count from 1. */
export interface FilePosition {
  readonly line: number;
  readonly column: number;
}

/** One operation of a JSON Patch (RFC 6902) on the procedure file. */
export type PatchOperation =
  | { readonly op: "add" | "replace"; readonly path: string; readonly value: unknown }
  | { readonly op: "remove"; readonly path: string }
  | { readonly op: "move"; readonly from: string; readonly path: string };

/**
 * How much a finding matters: an error must be mended before the walk, a caution needs a look, an advice can be
 * weighed.
 */
export type FindingLevel = "error" | "caution" | "advice";

/** A finding named by another one. */
export type Cause = Pick<Finding, "code" | "pointer">;

/** One thing that the checker reports about a procedure ([CHK1]). */
export interface Finding {
  readonly level: FindingLevel;
  /** `area/what`, for example `custody/not-held`. */
  readonly code: string;
  /** The report itself. Put into words, it is a sentence that a practitioner understands. */
  readonly message: Message;
  /** JSON Pointer (RFC 6901) to the place in the file; `""` is the whole file. */
  readonly pointer: string;
  /** The steps concerned, in reading order. */
  readonly steps: readonly StepId[];
  /** Ids of the crew, places, items, windows … concerned. */
  readonly things: readonly string[];
  /** Line and column of the pointer; `null` when the text of the file is not known. */
  readonly position: FilePosition | null;
  /**
   * Changes to the procedure that mend only this finding; `null` when there is more than one way to mend it. Never
   * applied unasked.
   */
  readonly mend: readonly Change[] | null;
  /** What the mend does, as a sentence; `null` without a mend. */
  readonly mendSays: Message | null;
  /** The finding that this one follows from: once that is mended, this one is probably gone. `null` for most. */
  readonly follows: Cause | null;
  /**
   * Used where the file does not read as a procedure, so that there is nothing to change: a JSON Patch of the file that
   * repairs only this finding. `null` when there is more than one way to repair it. Never applied unasked.
   */
  readonly repair: readonly PatchOperation[] | null;
}

/** Changes that mend a finding, with what they do as a sentence. */
export interface Mend {
  readonly changes: readonly Change[];
  readonly says: Message;
}

/** Makes a finding without a position in the file. Everything that is left out of the options is empty or `null`. */
export function finding(
  level: FindingLevel,
  code: string,
  pointer: string,
  message: Message,
  concerned: {
    readonly steps?: readonly StepId[];
    readonly things?: readonly string[];
    readonly mend?: Mend | null;
    readonly repair?: readonly PatchOperation[] | null;
  } = {},
): Finding {
  return {
    level,
    code,
    message,
    pointer,
    steps: concerned.steps ?? [],
    things: concerned.things ?? [],
    position: null,
    mend: concerned.mend?.changes ?? null,
    mendSays: concerned.mend?.says ?? null,
    follows: null,
    repair: concerned.repair ?? null,
  };
}

/** True when at least one of the findings is an error. */
export function hasErrors(findings: readonly Finding[]): boolean {
  return findings.some(({ level }) => level === "error");
}
