import type { StepId } from "../../core/units/index.ts";
import { between, clockText } from "../../core/units/index.ts";
import type { WalkState } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
import { actorsText } from "./actors-text.ts";

interface StepNotesProps {
  readonly step: StepId;
  readonly state: WalkState;
}

/** The notes made at a step, the newest first, with when and by whom. Nothing is drawn without any. */
export function StepNotes({ step, state: { ledger } }: StepNotesProps) {
  const notes = ledger.notes.toArray().filter((note) => note.step === step);
  if (notes.length === 0) return null;
  const { petZero, inForce } = ledger;
  return (
    <section className="step-notes" aria-label={words("panel/notes")}>
      <h3>{words("panel/notes")}</h3>
      <ul className="plain-list">
        {notes.toReversed().map(({ at, actor, text }) => (
          <li key={`${at} ${text}`}>
            <b>{petZero === null ? words("panel/before-start") : clockText(between(petZero, at))}</b>{" "}
            {actor !== null && `${actorsText([{ actor }], inForce.outline.crew)}: `}
            {text}
          </li>
        ))}
      </ul>
    </section>
  );
}
