import type { ListName } from "../procedure/index.ts";

/** Why a change cannot be applied ([CHG2]). */
export type ChangeProblem =
  /** What it names is not there. */
  | { readonly code: "not-there"; readonly list: ListName; readonly id: string }
  /** Several members have the id it names. */
  | { readonly code: "several"; readonly list: ListName; readonly id: string }
  /** The id it would give is another member's. */
  | { readonly code: "id-taken"; readonly list: ListName; readonly id: string }
  /** What it would add has no id. */
  | { readonly code: "no-id"; readonly list: ListName }
  /** It would put a member behind itself. */
  | { readonly code: "behind-itself"; readonly list: ListName }
  /** It says neither, or both, of `behind` and `first`. */
  | { readonly code: "no-place"; readonly list: ListName }
  /** Its `first` does not say in what: steps stand first in a task, and other lists have but one beginning. */
  | { readonly code: "wrong-first"; readonly list: ListName }
  /** It would set fields that are the member's id. */
  | { readonly code: "id-stays"; readonly list: ListName; readonly id: string };

/** A procedure file after changes, or the first change that cannot be applied and why. The result is not checked. */
export type Applied<File> =
  | { readonly file: File; readonly problem: null }
  | {
      readonly file: null;
      readonly problem: ChangeProblem;
      /** Which change it is, from 0. */
      readonly index: number;
    };
