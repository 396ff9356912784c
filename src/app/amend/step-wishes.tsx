import { useState } from "react";
import type { OutlineStep } from "../../core/procedure/index.ts";
import type { CrewId, Duration, StepId } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { SelectField } from "../parts/index.ts";
import { CrewTicks, MinutesField, minutesOf } from "./fields.tsx";
import { added, dropped, moved, reassigned, retimed } from "./wish.ts";
import type { WishFormProps } from "./wish-form-props.ts";

const stepChoices = (steps: readonly OutlineStep[]) =>
  steps.map(({ number, step }) => ({
    id: step.id,
    name: words("amending/step-name", { number, action: step.do }),
  }));

interface StepWishesProps extends WishFormProps {
  /** The step that is chosen at first; `null` for the next one. */
  readonly first: StepId | null;
}

/** What can be wished of a step that is not begun: another time, other performers, another place in the plan, or none. */
export function StepWishes({ outline, written, isOpen, first, onWish }: StepWishesProps) {
  const open = outline.steps.filter(({ step }) => isOpen(step.id));
  const [chosen, setChosen] = useState<StepId | null>(first);
  const entry = open.find(({ step }) => step.id === chosen) ?? open[0];
  if (!entry) return null;
  return (
    <>
      <SelectField
        label={words("amending/step")}
        choices={stepChoices(open)}
        value={entry.step.id}
        onValue={setChosen}
      />
      <OneStep
        key={entry.step.id}
        outline={outline}
        written={written}
        isOpen={isOpen}
        entry={entry}
        onWish={onWish}
      />
    </>
  );
}

function OneStep({ outline, entry, onWish }: WishFormProps & { readonly entry: OutlineStep }) {
  const { step } = entry;
  const [minutes, setMinutes] = useState(step.time ? String(step.time.likely / 60_000) : "");
  const [by, setBy] = useState<readonly CrewId[]>(step.by);
  const others = outline.steps.filter((one) => one.step.id !== step.id);
  const before = outline.steps[entry.index - 1] ?? others[0];
  const [behind, setBehind] = useState<StepId | null>(before?.step.id ?? null);
  const to = others.find((one) => one.step.id === behind);
  const time = minutesOf(minutes);
  return (
    <>
      <MinutesField label={words("amending/minutes")} value={minutes} onValue={setMinutes} />
      <div className="panel-acts">
        <button
          type="button"
          className="plain-button"
          disabled={time === null}
          onClick={() => time !== null && onWish(retimed(entry, time))}
        >
          {words("amending/set-time")}
        </button>
      </div>
      <CrewTicks outline={outline} by={by} onBy={setBy} />
      <div className="panel-acts">
        <button
          type="button"
          className="plain-button"
          disabled={by.length === 0}
          onClick={() => onWish(reassigned(outline, entry, by))}
        >
          {words("amending/set-by")}
        </button>
      </div>
      {to && (
        <>
          <SelectField
            label={words("amending/behind")}
            choices={stepChoices(others)}
            value={to.step.id}
            onValue={setBehind}
          />
          <div className="panel-acts">
            <button type="button" className="plain-button" onClick={() => onWish(moved(entry, to))}>
              {words("amending/move")}
            </button>
            <button type="button" className="plain-button" onClick={() => onWish(dropped(entry))}>
              {words("amending/take-out")}
            </button>
          </div>
        </>
      )}
    </>
  );
}

interface NewStepProps extends WishFormProps {
  /** The step behind which it stands at first. */
  readonly first: StepId | null;
  /** The PET, from which its id is made. */
  readonly pet: Duration;
}

/** A step that is not in the procedure: what is to be done, by whom, for how long, and behind which step. */
export function NewStepWish({ outline, first, pet, onWish }: NewStepProps) {
  const [action, setAction] = useState("");
  const [minutes, setMinutes] = useState("5");
  const [by, setBy] = useState<readonly CrewId[]>([]);
  const [behind, setBehind] = useState<StepId | null>(first);
  const to = outline.steps.find(({ step }) => step.id === behind) ?? outline.steps[0];
  const time = minutesOf(minutes);
  if (!to) return null;
  const text = action.trim();
  const add = () => {
    if (time === null) return;
    onWish(added(outline, { action: text, by, time, behind: to }, Math.floor(pet / 1000)));
    setAction("");
  };
  return (
    <>
      <label className="field">
        <span>{words("amending/what-to-do")}</span>
        <textarea rows={2} value={action} onChange={(event) => setAction(event.target.value)} />
      </label>
      <CrewTicks outline={outline} by={by} onBy={setBy} />
      <MinutesField label={words("amending/minutes")} value={minutes} onValue={setMinutes} />
      <SelectField
        label={words("amending/behind")}
        choices={stepChoices(outline.steps)}
        value={to.step.id}
        onValue={setBehind}
      />
      <div className="panel-acts">
        <button
          type="button"
          className="plain-button"
          disabled={text === "" || by.length === 0 || time === null}
          onClick={add}
        >
          {words("amending/add")}
        </button>
      </div>
    </>
  );
}
