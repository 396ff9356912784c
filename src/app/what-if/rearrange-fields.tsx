import { useId, useState } from "react";
import { canBeShifted } from "../../core/changes/index.ts";
import type { Outline, Task } from "../../core/procedure/index.ts";
import type { CrewId, Duration, TaskId } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import type { SelectChoice } from "../parts/index.ts";
import { SelectField } from "../parts/index.ts";
import type { Trial } from "./trial.ts";

interface RearrangeProps {
  readonly outline: Outline;
  readonly trial: Trial;
  readonly onTrial: (trial: Trial) => void;
}

/** Fields for trying a task elsewhere, two people the other way round in a task, and windows earlier or later. */
export function RearrangeFields(props: RearrangeProps) {
  const { tasks, crew } = props.outline.procedure;
  return (
    <>
      {tasks.length > 1 && <MoveTask {...props} />}
      {crew.length > 1 && <SwapPeople {...props} />}
      <ShiftWindows {...props} />
    </>
  );
}

const taskChoices = (tasks: readonly Task[]): SelectChoice<TaskId>[] =>
  tasks.map(({ id, title }, index) => ({ id, name: `${index + 1} ${title}` }));

/** No id of a task is empty, so that the empty one can stand for the first place. */
const FIRST = "" as TaskId;

function MoveTask({ outline, trial, onTrial }: RearrangeProps) {
  const { tasks } = outline.procedure;
  const [task, setTask] = useState<TaskId>(tasks[0]?.id ?? FIRST);
  const [behind, setBehind] = useState<TaskId>(tasks.at(-1)?.id ?? FIRST);
  const places = [
    { id: FIRST, name: words("what-if/place-first") },
    ...taskChoices(tasks).filter(({ id }) => id !== task),
  ];
  const at = places.some(({ id }) => id === behind) ? behind : FIRST;
  const move = () => {
    const moved = new Map(trial.moved);
    // Moved again, it is moved last: what was moved behind it meanwhile stays where it was put.
    moved.delete(task);
    onTrial({ ...trial, moved: moved.set(task, at === FIRST ? null : at) });
  };
  return (
    <fieldset className="what-if-rearrange">
      <legend>{words("what-if/move-title")}</legend>
      <SelectField
        label={words("what-if/move-task")}
        choices={taskChoices(tasks)}
        value={task}
        onValue={setTask}
      />
      <SelectField label={words("what-if/move-behind")} choices={places} value={at} onValue={setBehind} />
      <button type="button" className="plain-button" onClick={move}>
        {words("what-if/move")}
      </button>
    </fieldset>
  );
}

function SwapPeople({ outline, trial, onTrial }: RearrangeProps) {
  const { tasks, crew } = outline.procedure;
  const [task, setTask] = useState<TaskId>(tasks[0]?.id ?? FIRST);
  const outside = crew.filter(({ station }) => station === "outside");
  const [first, second] = outside.length > 1 ? outside : crew;
  const [one, setOne] = useState<CrewId | null>(first?.id ?? null);
  const [other, setOther] = useState<CrewId | null>(second?.id ?? null);
  if (one === null || other === null) return null;
  const people = crew.map(({ id, call }) => ({ id, name: call }));
  const swap = () => {
    const swapped = new Map(trial.swapped);
    // The same two again are back where the file has them.
    const [was, with_] = swapped.get(task) ?? [];
    const isSame = (was === one && with_ === other) || (was === other && with_ === one);
    if (isSame) swapped.delete(task);
    else swapped.set(task, [one, other]);
    onTrial({ ...trial, swapped });
  };
  return (
    <fieldset className="what-if-rearrange">
      <legend>{words("what-if/swap-title")}</legend>
      <SelectField
        label={words("what-if/swap-task")}
        choices={taskChoices(tasks)}
        value={task}
        onValue={setTask}
      />
      <SelectField label={words("what-if/swap-one")} choices={people} value={one} onValue={setOne} />
      <SelectField label={words("what-if/swap-other")} choices={people} value={other} onValue={setOther} />
      <button type="button" className="plain-button" disabled={one === other} onClick={swap}>
        {words("what-if/swap")}
      </button>
    </fieldset>
  );
}

const MINUTE = 60_000;

/** Windows are tried so many minutes earlier or later at most: a day. */
const FURTHEST = 24 * 60;

function ShiftWindows({ outline, trial, onTrial }: RearrangeProps) {
  const id = useId();
  const { windows } = outline.procedure;
  if (windows.length === 0) return null;
  return (
    <fieldset className="what-if-rearrange">
      <legend>{words("what-if/shift-title")}</legend>
      {windows.filter(canBeShifted).map((window) => (
        <div key={window.id} className="field">
          <label htmlFor={`${id}-${window.id}`}>
            {words("what-if/shift-window", { window: window.label ?? window.id })}
          </label>
          <input
            id={`${id}-${window.id}`}
            type="number"
            min={-FURTHEST}
            max={FURTHEST}
            step={1}
            value={(trial.shifted.get(window.id) ?? 0) / MINUTE}
            onChange={(event) => {
              const minutes = Math.round(Number(event.target.value));
              if (!Number.isFinite(minutes) || Math.abs(minutes) > FURTHEST) return;
              const shifted = new Map(trial.shifted);
              if (minutes === 0) shifted.delete(window.id);
              else shifted.set(window.id, (minutes * MINUTE) as Duration);
              onTrial({ ...trial, shifted });
            }}
          />
        </div>
      ))}
      {windows.some((window) => !canBeShifted(window)) && (
        <p className="hint">{words("what-if/shift-start")}</p>
      )}
    </fieldset>
  );
}
