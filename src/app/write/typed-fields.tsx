import { useEffect, useId, useState } from "react";
import type { ListName } from "../../core/procedure/index.ts";
import type { FileStep } from "../../core/write/index.ts";
import { words } from "../../words/index.ts";
import type { Choice, FieldSchema } from "./field-schema.ts";
import { fieldWords } from "./field-words.ts";
import { minutesText, timeText, typedDuration, typedTime } from "./minutes-text.ts";

/** What a field may name at a place in a member: all of them, and of these what is not possible now with the reason. */
export interface FieldChoices {
  readonly choices: readonly Choice[];
  /** The ids that are possible now; `null` where all are. */
  readonly possible: ReadonlySet<string> | null;
}

/** Where a form stands: whose member it shows, and what its fields may name. */
export interface FormContext {
  readonly list: ListName | "head";
  readonly choicesOf: (list: ListName, path: readonly string[]) => FieldChoices;
}

/** What every field is given. */
export interface FieldProps {
  readonly context: FormContext;
  readonly schema: FieldSchema;
  readonly path: readonly string[];
  readonly label: string;
  readonly value: unknown;
  /** `undefined` takes the field out. */
  readonly onValue: (value: unknown) => void;
}

/** Fields for whole sentences. */
const LONG: ReadonlySet<string> = new Set(["do", "text", "summary", "brief", "when"]);

/** A field whose text is told when it is left or Enter is pressed, so that a gesture is an edit and no letter. */
export function TypedField({
  label,
  text,
  isLong = false,
  read,
  onValue,
}: {
  readonly label: string;
  readonly text: string;
  readonly isLong?: boolean;
  /** The value of a text; `null` for what is none. An empty text takes the field out. */
  readonly read: (text: string) => unknown;
  readonly onValue: (value: unknown) => void;
}) {
  const id = useId();
  const [typed, setTyped] = useState(text);
  useEffect(() => setTyped(text), [text]);
  const isWrong = typed.trim() !== "" && read(typed) === null;
  const tell = () => {
    if (typed === text || isWrong) return;
    onValue(typed.trim() === "" ? undefined : read(typed));
  };
  const props = {
    id,
    value: typed,
    "aria-invalid": isWrong,
    onChange: (event: { target: { value: string } }) => setTyped(event.target.value),
    onBlur: tell,
  };
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      {isLong ? (
        <textarea rows={2} {...props} />
      ) : (
        <input {...props} onKeyDown={(event) => event.key === "Enter" && tell()} />
      )}
      {isWrong && <span className="hint">{words("write/not-a-value")}</span>}
    </div>
  );
}

/** A value as the text of a field; empty for none. */
export const asText = (value: unknown) => (value === undefined ? "" : String(value));

/** A text of the author. */
export function TextField({ schema, path, label, value, onValue }: FieldProps) {
  const pattern = schema.pattern === undefined ? null : new RegExp(schema.pattern);
  return (
    <TypedField
      label={label}
      text={asText(value)}
      isLong={LONG.has(path.at(-1) ?? "")}
      read={(text) => (pattern && !pattern.test(text.trim()) ? null : pattern ? text.trim() : text)}
      onValue={onValue}
    />
  );
}

/** A number, with a point or a comma. */
export function NumberField({ label, value, onValue }: FieldProps) {
  const read = (text: string) => {
    const number = Number(text.trim().replace(",", "."));
    return Number.isFinite(number) ? number : null;
  };
  return <TypedField label={label} text={asText(value)} read={read} onValue={onValue} />;
}

/** A duration, typed in minutes. */
export function DurationField({ label, value, onValue }: FieldProps) {
  return (
    <TypedField
      label={words("write/in-minutes", { field: label })}
      text={typeof value === "string" ? minutesText(value) : ""}
      read={typedDuration}
      onValue={onValue}
    />
  );
}

/** The time of a step, as it is typed in the table: one, or low, likely and high. */
export function TimeField({ value, onValue }: FieldProps) {
  return (
    <TypedField
      label={words("write/step-time")}
      text={timeText(value as FileStep["time"])}
      read={typedTime}
      onValue={onValue}
    />
  );
}

/** Yes, or nothing. */
export function TickField({ label, value, onValue }: FieldProps) {
  return (
    <label className="write-tick">
      <input
        type="checkbox"
        checked={value === true}
        onChange={() => onValue(value === true ? undefined : true)}
      />
      {label}
    </label>
  );
}

/** One of a few values. */
export function EnumField({
  label,
  value,
  onValue,
  names,
}: FieldProps & { readonly names: readonly string[] }) {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        value={asText(value)}
        onChange={(event) => onValue(event.target.value === "" ? undefined : event.target.value)}
      >
        <option value="">–</option>
        {names.map((name) => (
          <option key={name} value={name}>
            {fieldWords(name)}
          </option>
        ))}
      </select>
    </div>
  );
}
