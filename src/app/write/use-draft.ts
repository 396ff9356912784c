import { useRef, useState } from "react";
import type { ProcedureFile } from "../../core/procedure/index.ts";
import { stepAdded, taskAdded } from "../../core/write/index.ts";
import { afterPress } from "./after-press.ts";
import type { Draft } from "./sheet-rows.ts";
import { draftKey } from "./sheet-rows.ts";
import type { OpenManuscript } from "./use-manuscript.ts";

/** The row that is being written, which is none of the procedure before it has a text ([WRT2]). */
export function useDraft(file: ProcedureFile, make: OpenManuscript["make"]) {
  const [draft, setDraft] = useState<Draft | null>(null);
  const drafts = useRef(0);
  return {
    draft,
    beginDraft: (kind: Draft["kind"], behind: string) => {
      drafts.current += 1;
      setDraft({ number: drafts.current, kind, behind, by: null });
    },
    choose: (by: readonly string[]) => setDraft(draft && { ...draft, by }),
    /** Makes it, with its text; returns its row, or `null` where it cannot be made. */
    written: (text: string): string | null => {
      if (!draft) return null;
      const { kind, behind, by } = draft;
      const proposal = kind === "step" ? stepAdded(file, behind, text, by) : taskAdded(file, behind, text);
      setDraft(null);
      return make("add", proposal) ? (proposal.rows?.[0] ?? null) : null;
    },
    unwritten: (key: string, isAway: boolean) =>
      afterPress(isAway, () => setDraft((now) => (now && draftKey(now) === key ? null : now))),
  };
}
