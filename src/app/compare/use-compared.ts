import { useMemo } from "react";
import type { Checked, CheckOptions } from "../../core/check/index.ts";
import { checkProcedureText } from "../../core/check/index.ts";
import { words } from "../../words/index.ts";
import { isOutside, outsideFile } from "../outside-files/index.ts";
import { useProcedureText, useShelfRevisions } from "../shelf/index.ts";
import { revisionName } from "./revision-name.ts";

/** One of the procedures that are compared. */
export interface Compared {
  readonly key: string;
  /** What it is called beside the others. */
  readonly name: string;
  readonly text: string;
  readonly checked: Checked;
}

/** A procedure that was chosen: `null` for the choice of none, `gone` when it is not there, `opening` until it was looked up. */
export type Choice = Compared | "gone" | "opening" | null;

/** The procedure of a key, on the shelf or from a file that was brought in to be compared; the empty key is none. */
export function useCompared(key: string, options: CheckOptions): Choice {
  const onShelf = useProcedureText(isOutside(key) ? "" : key);
  const all = useShelfRevisions();
  const outside = outsideFile(key);
  const text = outside ? outside.text : key === "" ? null : onShelf.text;
  const checked = useMemo(() => (text === null ? null : checkProcedureText(text, options)), [text, options]);
  const isOpening = isOutside(key) ? false : !onShelf.isRead || all === null;
  return useMemo(() => {
    if (key === "") return null;
    if (isOpening) return "opening";
    if (text === null || !checked) return "gone";
    const revision = all?.find((one) => one.key === key);
    const name = outside
      ? words("compare/file", { name: outside.name })
      : revision
        ? revisionName(revision, all ?? [])
        : key;
    return { key, name, text, checked };
  }, [key, isOpening, text, checked, all, outside]);
}
