import type { Choice, ExtractMade, Verification } from "../../core/seal/index.ts";

/** What the worker is asked: to verify a log, or to take an extract of it. A log is given as lines. */
export type SealRequest =
  | {
      readonly kind: "verify";
      readonly log: string;
      /** Keys of hubs. */
      readonly trust: readonly string[];
      readonly isQuick: boolean;
    }
  | { readonly kind: "extract"; readonly log: string; readonly choice: Choice };

/** What came of an extract: the text of its file, or why there is none. */
export type ExtractTold =
  | { readonly kind: "made"; readonly text: string; readonly chosen: number; readonly leftOut: number }
  | Exclude<ExtractMade, { readonly kind: "made" }>;

/** What the worker tells. */
export type SealTold =
  | { readonly kind: "progress"; readonly done: number; readonly of: number }
  /** `null` for a log without entries. */
  | { readonly kind: "verified"; readonly found: Verification | null }
  | { readonly kind: "extract"; readonly made: ExtractTold };
