import { useState } from "react";
import type { BlankValues, Fragment, FragmentBlank, FragmentPlace } from "../../core/fragment/index.ts";
import { filledIn } from "../../core/fragment/index.ts";
import type { Change, Outline, ProcedureFile } from "../../core/procedure/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { formatDuration, parseDuration } from "../../core/units/index.ts";
import { inWords, words } from "../../words/index.ts";
import { SelectField } from "../parts/index.ts";

const MINUTE = 60_000;

interface FillFormProps {
  readonly fragment: Fragment;
  readonly file: ProcedureFile;
  readonly outline: Outline;
  readonly onChanges: (changes: readonly Change[], about: string) => void;
}

/** The blanks of a fragment, where it goes, and the button that puts it in. */
export function FillForm({ fragment, file, outline, onChanges }: FillFormProps) {
  const [values, setValues] = useState<BlankValues>(() => usual(fragment));
  const hasTasks = fragment.tasks !== undefined;
  const [place, setPlace] = useState(() =>
    hasTasks ? `task:${file.tasks.at(-1)?.id ?? ""}` : `step:${outline.steps.at(-1)?.step.id ?? ""}`,
  );
  const filled = filledIn(fragment, file, values, placeOf(place));
  return (
    <form
      className="fragments-fill"
      onSubmit={(event) => {
        event.preventDefault();
        if (filled.changes) onChanges(filled.changes, words("fragments/about", { fragment: fragment.title }));
      }}
    >
      {fragment.summary !== undefined && <p>{fragment.summary}</p>}
      {fragment.blanks.map((blank) => (
        <BlankField
          key={blank.id}
          blank={blank}
          file={file}
          value={values[blank.id]}
          onValue={(value) =>
            setValues((before) => {
              const { [blank.id]: _, ...rest } = before;
              return value === null ? rest : { ...rest, [blank.id]: value };
            })
          }
        />
      ))}
      <SelectField
        label={words("fragments/goes")}
        value={place}
        onValue={setPlace}
        choices={[
          ...file.tasks.map(({ id, title }) => ({
            id: `task:${id}`,
            name: words(hasTasks ? "fragments/tasks-behind-task" : "fragments/behind-task", { task: title }),
          })),
          ...(hasTasks ? [] : outline.steps).map(({ step, number }) => ({
            id: `step:${step.id}`,
            name: words("fragments/behind-step", { number, action: step.do }),
          })),
        ]}
      />
      {filled.problem && (
        <p className="hint" role="status">
          {inWords(filled.problem)}
        </p>
      )}
      <button type="submit" className="main-button" disabled={filled.changes === null}>
        {words("fragments/put-in")}
      </button>
    </form>
  );
}

function placeOf(place: string): FragmentPlace {
  const [kind, id = ""] = place.split(":");
  return kind === "task" ? { behindTask: id } : { behindStep: id };
}

const usual = ({ blanks }: Fragment): BlankValues =>
  Object.fromEntries(
    blanks.flatMap(({ id, usual: time }) => (time === undefined ? [] : [[id, { time }] as const])),
  );

interface BlankFieldProps {
  readonly blank: FragmentBlank;
  readonly file: ProcedureFile;
  readonly value: BlankValues[string] | undefined;
  /** `null` empties the blank. */
  readonly onValue: (value: BlankValues[string] | null) => void;
}

function BlankField({ blank: { kind, label }, file, value, onValue }: BlankFieldProps) {
  if (kind === "time") {
    const time = value && "time" in value ? value.time : null;
    const likely = time === null ? null : parseDuration(typeof time === "string" ? time : time.likely);
    return (
      <label className="field">
        <span>{words("fragments/minutes", { label })}</span>
        <input
          type="number"
          min="0"
          step="any"
          inputMode="decimal"
          defaultValue={likely === null ? "" : likely / MINUTE}
          onChange={({ target }) => {
            const minutes = target.valueAsNumber;
            const isTime = Number.isFinite(minutes) && minutes >= 0;
            onValue(isTime ? { time: formatDuration(Math.round(minutes * MINUTE) as Duration) } : null);
          }}
        />
      </label>
    );
  }
  const members =
    kind === "crew"
      ? file.crew.map(({ id, call }) => ({ id, name: call }))
      : ((kind === "place" ? file.places : file.items) ?? []).map(({ id, label: name }) => ({
          id,
          name: name ?? id,
        }));
  const chosen = value ? String((value as Readonly<Record<string, unknown>>)[kind] ?? "") : "";
  return (
    <SelectField
      label={label}
      value={chosen}
      onValue={(id) => onValue(id === "" ? null : ({ [kind]: id } as unknown as BlankValues[string]))}
      choices={[{ id: "", name: words("fragments/choose") }, ...members]}
    />
  );
}
