import { useMemo, useState } from "react";
import type { Conflict, MergeDecisions, MergeSide } from "../../core/changes/index.ts";
import { conflictName, mergeChanges, writtenOver } from "../../core/changes/index.ts";
import type { CheckOptions } from "../../core/check/index.ts";
import { checkProcedureText } from "../../core/check/index.ts";
import { effectOf } from "../../core/effect/index.ts";
import type { Finding } from "../../core/procedure/index.ts";
import type { RevisionNote } from "../../io/store/index.ts";
import { inWords, words } from "../../words/index.ts";
import { FindingItem } from "../read/index.ts";
import type { ComparedProcedure } from "./compare-view.tsx";
import { ComparedEffect, effectOptions } from "./compared-effect.tsx";
import type { SideNames } from "./conflict-field.tsx";
import { ConflictField } from "./conflict-field.tsx";
import { useBothInTexts } from "./use-both-in-texts.ts";
import "./compare.css";

/** One of three procedures that are merged. */
export interface MergedProcedure extends ComparedProcedure {
  /** The text whose layout is kept where nothing changes. */
  readonly text: string;
}

interface MergeViewProps {
  readonly base: MergedProcedure;
  readonly ours: MergedProcedure;
  readonly theirs: MergedProcedure;
  readonly options: CheckOptions;
  /** The letter that the merged revision gets when it is saved. */
  readonly revision: string;
  /** Keeps the text as a revision of its own. */
  readonly onSave: (text: string, note: RevisionNote) => void;
}

const NONE: MergeDecisions = new Map();

/** Three revisions merged, conflict by conflict; nothing is chosen until somebody chooses it ([WRT8]). */
export function MergeView({ base, ours, theirs, options, revision, onSave }: MergeViewProps) {
  const [decisions, setDecisions] = useState(NONE);
  const merged = useMemo(
    () => mergeChanges(base.file, ours.file, theirs.file, withRevision(decisions)),
    [base.file, ours.file, theirs.file, decisions],
  );
  const text = useMemo(
    () => merged.file && writtenOver(ours.text, { ...merged.file, revision }),
    [merged.file, ours.text, revision],
  );
  const names: SideNames = { base: base.name, ours: ours.name, theirs: theirs.name };
  const isOfOne = new Set([base, ours, theirs].map(({ file }) => file.id)).size === 1;
  const decide = (conflict: Conflict) => (side: MergeSide) =>
    setDecisions((all) => new Map([...all, [conflictName(conflict), side]]));
  // The letter of a revision is chosen on saving, so that two letters are no conflict.
  const shown = [...merged.conflicts, ...merged.decided].filter((one) => !isRevision(one)).toSorted(inOrder);
  const left = merged.conflicts.filter((one) => !isRevision(one)).length;
  return (
    <div className="compare-merge">
      {!isOfOne && <p>{words("merge/other-procedure")}</p>}
      <p role="status">
        {shown.length === 0
          ? words("merge/no-conflicts")
          : left > 0
            ? words("merge/conflicts", { count: left })
            : words("merge/all-decided")}
      </p>
      {shown.map((conflict) => (
        <ConflictField
          key={conflictName(conflict)}
          conflict={conflict}
          names={names}
          decided={decisions.get(conflictName(conflict)) ?? null}
          onDecide={decide(conflict)}
        />
      ))}
      {text !== null && (
        <MergedResult
          key={text}
          text={text}
          ours={ours}
          because={words("merge/because", { ours: ours.name, theirs: theirs.name })}
          options={options}
          revision={revision}
          onSave={onSave}
        />
      )}
    </div>
  );
}

const isRevision = ({ list, field }: Conflict) => list === "head" && field === "revision";

/** The decisions, with one about the letter of the revision, which is another one after saving whatever was decided. */
const withRevision = (decisions: MergeDecisions): MergeDecisions =>
  new Map([...decisions, [conflictName({ list: "head", id: null, field: "revision" }), "ours"]]);

/** Conflicts keep their places when they are decided. */
const inOrder = (a: Conflict, b: Conflict) => conflictName(a).localeCompare(conflictName(b), "en");

interface MergedResultProps {
  readonly text: string;
  readonly ours: ComparedProcedure;
  /** What is put in as the reason. */
  readonly because: string;
  readonly options: CheckOptions;
  readonly revision: string;
  readonly onSave: (text: string, note: RevisionNote) => void;
}

/** The merged procedure, checked again, what it comes to, and the form that saves it. */
function MergedResult({ text, ours, because, options, revision, onSave }: MergedResultProps) {
  const [by, setBy] = useState("");
  const [why, setWhy] = useState(because);
  const { outline, findings } = useMemo(() => checkProcedureText(text, options), [text, options]);
  const effect = useMemo(
    () => outline && effectOf(ours.outline, outline, effectOptions(options)),
    [ours.outline, outline, options],
  );
  const shown = useBothInTexts(ours.outline, outline ?? ours.outline);
  if (!outline || !effect) {
    return (
      <div role="alert">
        <p>{words("merge/unreadable")}</p>
        <FindingItems findings={findings} />
      </div>
    );
  }
  const note = { by: by.trim(), why: why.trim() };
  const isSaid = note.by !== "" && note.why !== "";
  return (
    <>
      <h3>{words("merge/findings")}</h3>
      {findings.length === 0 ? (
        <p className="hint">{words("merge/no-findings")}</p>
      ) : (
        <FindingItems findings={findings} />
      )}
      <h3>{words("merge/against", { name: ours.name })}</h3>
      <ComparedEffect
        names={{ before: ours.name, after: words("compare/merged") }}
        effect={effect}
        shown={shown}
      />
      <form
        className="compare-save"
        onSubmit={(event) => {
          event.preventDefault();
          if (isSaid) onSave(text, note);
        }}
      >
        <label className="field">
          <span>{words("merge/who")}</span>
          <input value={by} autoComplete="name" onChange={(event) => setBy(event.target.value)} />
        </label>
        <label className="field">
          <span>{words("merge/why")}</span>
          <textarea rows={2} value={why} onChange={(event) => setWhy(event.target.value)} />
        </label>
        {!isSaid && <p className="hint">{words("merge/needs-who")}</p>}
        <button type="submit" className="main-button" disabled={!isSaid}>
          {words("merge/save", { revision })}
        </button>
      </form>
    </>
  );
}

const FindingItems = ({ findings }: { readonly findings: readonly Finding[] }) => (
  <ul className="plain-list">
    {findings.map((one) => (
      <FindingItem key={`${one.code} ${one.pointer} ${inWords(one.message)}`} finding={one} />
    ))}
  </ul>
);
