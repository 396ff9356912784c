import type { Entry, LineProblem } from "../../core/log/index.ts";
import type { Choice, ExtractMade, ExtractVerified, Verification } from "../../core/seal/index.ts";

/** What the worker is asked of a log: to verify it, or to take an extract of it; or of the file of an extract: to verify that. */
export type SealQuestion =
  | {
      readonly kind: "verify";
      /** Keys of hubs. */
      readonly trust: readonly string[];
      readonly isQuick: boolean;
    }
  | { readonly kind: "extract"; readonly choice: Choice }
  | { readonly kind: "verify-extract"; readonly trust: readonly string[] };

/** Entries as whole lines; `null` when those that were given are no longer what the log is, and all of it comes anew. */
export type LogPiece = string | null;

/** What the worker is sent: the question, then the log piece by piece and in any order, then that this was all. */
export type SealRequest =
  | { readonly question: SealQuestion }
  | { readonly piece: LogPiece }
  | { readonly isAll: true };

/** What came of an extract: the text of its file, or why there is none. */
export type ExtractTold =
  | { readonly kind: "made"; readonly text: string; readonly chosen: number; readonly leftOut: number }
  | Exclude<ExtractMade, { readonly kind: "made" }>;

/** What was read from the file of an extract, and what it is worth. */
export interface ExtractRead {
  /** `null` where no entry can be read. */
  readonly found: ExtractVerified | null;
  /** In the order of the file. */
  readonly entries: readonly Entry[];
  readonly problems: readonly LineProblem[];
}

/** What the worker tells. */
export type SealTold =
  | { readonly kind: "progress"; readonly done: number; readonly of: number }
  /** `null` for a log without entries. */
  | { readonly kind: "verified"; readonly found: Verification | null }
  | { readonly kind: "extract"; readonly made: ExtractTold }
  | { readonly kind: "extract-verified"; readonly read: ExtractRead };
