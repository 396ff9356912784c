import { useState } from "react";
import { canBeShifted } from "../../core/changes/index.ts";
import type { Task } from "../../core/procedure/index.ts";
import type { CrewId, Duration, TaskId, WindowId } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { SelectField } from "../parts/index.ts";
import { MinutesField, numberOf } from "./fields.tsx";
import { getAheadIn, swapped, taskDropped, taskMoved, windowShifted } from "./wish.ts";
import type { WishFormProps } from "./wish-form-props.ts";

const taskChoices = (tasks: readonly Task[]) => tasks.map(({ id, title }) => ({ id, name: title }));

/** What can be wished of a task with steps to come: another place, none, its get-ahead done, two people the other way round. */
export function TaskWishes({ outline, written, isOpen, onWish }: WishFormProps) {
  const { tasks } = outline.procedure;
  const open = tasks.filter(({ steps }) => steps.some(({ id }) => isOpen(id)));
  const [chosen, setChosen] = useState<TaskId | null>(null);
  const [behind, setBehind] = useState<TaskId | null>(null);
  const task = open.find(({ id }) => id === chosen) ?? open[0];
  if (!task) return null;
  const others = tasks.filter(({ id }) => id !== task.id);
  const to = others.find(({ id }) => id === behind) ?? others.at(-1);
  return (
    <>
      <SelectField
        label={words("amending/task")}
        choices={taskChoices(open)}
        value={task.id}
        onValue={setChosen}
      />
      <div className="panel-acts">
        <button type="button" className="plain-button" onClick={() => onWish(taskDropped(task))}>
          {words("amending/take-out-task")}
        </button>
        {task.priority === "get-ahead" && (
          <button type="button" className="plain-button" onClick={() => onWish(getAheadIn(task))}>
            {words("amending/bring-get-ahead")}
          </button>
        )}
      </div>
      {to && (
        <>
          <SelectField
            label={words("amending/behind")}
            choices={taskChoices(others)}
            value={to.id}
            onValue={setBehind}
          />
          <div className="panel-acts">
            <button type="button" className="plain-button" onClick={() => onWish(taskMoved(task, to))}>
              {words("amending/move-task")}
            </button>
          </div>
        </>
      )}
      <Swap task={task} outline={outline} written={written} isOpen={isOpen} onWish={onWish} />
    </>
  );
}

function Swap({ outline, written, isOpen, onWish, task }: WishFormProps & { readonly task: Task }) {
  const outside = outline.crew.filter(({ station }) => station === "outside");
  const [first, second] = outside.length > 1 ? outside : outline.crew;
  const [one, setOne] = useState<CrewId | null>(first?.id ?? null);
  const [other, setOther] = useState<CrewId | null>(second?.id ?? null);
  if (one === null || other === null) return null;
  const people = outline.crew.map(({ id, call }) => ({ id, name: call }));
  const wish = one === other ? null : swapped(written, task, [one, other], isOpen);
  return (
    <>
      <SelectField label={words("amending/swap-one")} choices={people} value={one} onValue={setOne} />
      <SelectField label={words("amending/swap-other")} choices={people} value={other} onValue={setOther} />
      <div className="panel-acts">
        <button
          type="button"
          className="plain-button"
          disabled={wish === null}
          onClick={() => wish && onWish(wish)}
        >
          {words("amending/swap")}
        </button>
      </div>
      {wish === null && <p className="hint">{words("amending/swap-none")}</p>}
    </>
  );
}

/** Windows are shifted so many minutes at most: a day. */
const FURTHEST = 24 * 60;

/** A window comes earlier or later. */
export function WindowWish({ outline, onWish }: WishFormProps) {
  const windows = outline.procedure.windows.filter(canBeShifted);
  const [chosen, setChosen] = useState<WindowId | null>(null);
  const [minutes, setMinutes] = useState("");
  const window = windows.find(({ id }) => id === chosen) ?? windows[0];
  if (!window) return <p className="hint">{words("amending/no-windows")}</p>;
  const by = Math.round(numberOf(minutes) ?? 0);
  const mayShift = by !== 0 && Math.abs(by) <= FURTHEST;
  return (
    <>
      <SelectField
        label={words("amending/window")}
        choices={windows.map(({ id, label }) => ({ id, name: label ?? id }))}
        value={window.id}
        onValue={setChosen}
      />
      <MinutesField label={words("amending/shift")} value={minutes} onValue={setMinutes} />
      <div className="panel-acts">
        <button
          type="button"
          className="plain-button"
          disabled={!mayShift}
          onClick={() => onWish(windowShifted(window, (by * 60_000) as Duration))}
        >
          {words("amending/set-shift")}
        </button>
      </div>
    </>
  );
}
