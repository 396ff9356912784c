import { useId } from "react";
import type { Fields, ListName } from "../../core/procedure/index.ts";
import { words } from "../../words/index.ts";
import type { Choice, FieldSchema } from "./field-schema.ts";
import { firstValue, formOf, isDuration, isLike, listNamedBy } from "./field-schema.ts";
import { fieldWords } from "./field-words.ts";
import type { FieldProps, FormContext } from "./typed-fields.tsx";
import {
  asText,
  DurationField,
  EnumField,
  NumberField,
  TextField,
  TickField,
  TimeField,
  TypedField,
} from "./typed-fields.tsx";

const namedIn =
  ({ list, choicesOf }: FormContext) =>
  (path: readonly string[]): readonly Choice[] | null => {
    const of = listNamedBy(list, path);
    return of && choicesOf(of, path).choices;
  };

/** All fields of a member of a list, made from the schema of the file ([WRT5]). Each edit is told by itself. */
export function MemberFields({
  context,
  schema,
  value,
  without,
  onField,
}: {
  readonly context: FormContext;
  readonly schema: FieldSchema;
  readonly value: Fields;
  /** Fields that stand elsewhere. */
  readonly without: ReadonlySet<string>;
  readonly onField: (key: string, value: unknown) => void;
}) {
  const keys = Object.keys(schema.properties ?? {})
    .filter((key) => !without.has(key))
    .toSorted((a, b) => placeOf(a) - placeOf(b));
  const required = new Set(schema.required ?? []);
  const shown = keys.filter(
    (key) => required.has(key) || value[key] !== undefined || isPlain(schema.properties?.[key]),
  );
  const more = keys.filter((key) => !shown.includes(key));
  return (
    <>
      {shown.map((key) => (
        <div key={key} data-field={key}>
          <AnyField
            context={context}
            schema={schema.properties?.[key] ?? {}}
            path={[key]}
            label={fieldWords(key)}
            value={value[key]}
            onValue={(next) => onField(key, next)}
          />
        </div>
      ))}
      {more.length > 0 && (
        <fieldset className="write-more">
          <legend>{words("write/more-fields")}</legend>
          {more.map((key) => (
            <div key={key} data-field={key}>
              <button
                type="button"
                className="plain-button"
                onClick={() =>
                  onField(key, firstValue(schema.properties?.[key] ?? {}, [key], namedIn(context)))
                }
              >
                {words("write/add-field", { field: fieldWords(key) })}
              </button>
            </div>
          ))}
        </fieldset>
      )}
    </>
  );
}

/** The fields that stand first, as the columns of the table do. */
const FIRST = ["title", "do", "call", "label", "by", "time", "at", "to", "after", "moves", "within"];

/** Where a field stands in a form: the id comes last, since few ever change it. */
const placeOf = (key: string) => {
  const at = FIRST.indexOf(key);
  return key === "id" ? FIRST.length + 1 : at === -1 ? FIRST.length : at;
};

/** Fields that are shown empty, so that they can be filled in without being added first. */
const isPlain = (schema: FieldSchema | undefined) =>
  schema !== undefined &&
  schema.properties === undefined &&
  schema.anyOf === undefined &&
  schema.type !== "array" &&
  schema.type !== "object";

function AnyField(props: FieldProps) {
  const { schema, context, path } = props;
  const of = listNamedBy(context.list, path);
  if (path.length === 1 && path[0] === "time" && schema.anyOf) return <TimeField {...props} />;
  if (schema.anyOf) return <FormsField {...props} />;
  if (schema.prefixItems) return <PairField {...props} />;
  if (schema.type === "array")
    return of && isNames(schema) ? <TicksField {...props} of={of} /> : <ListField {...props} />;
  if (schema.type === "object")
    return schema.properties ? <GroupField {...props} /> : <ValuesField {...props} />;
  if (schema.type === "boolean") return <TickField {...props} />;
  if (schema.enum) return <EnumField {...props} names={schema.enum} />;
  if (schema.const !== undefined) return null;
  if (isDuration(schema)) return <DurationField {...props} />;
  if (schema.type === "number") return <NumberField {...props} />;
  return of ? <NameField {...props} of={of} /> : <TextField {...props} />;
}

const isNames = ({ items }: FieldSchema) => items !== false && items?.type === "string";

function NameField({ context, path, label, value, onValue, of }: FieldProps & { readonly of: ListName }) {
  const id = useId();
  const { choices, possible } = context.choicesOf(of, path);
  const isKnown = value === undefined || choices.some((one) => one.id === value);
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        value={asText(value)}
        onChange={(event) => onValue(event.target.value === "" ? undefined : event.target.value)}
      >
        <option value="">–</option>
        {!isKnown && <option value={asText(value)}>{asText(value)}</option>}
        {choices.map((one) => (
          <option key={one.id} value={one.id}>
            {possible?.has(one.id) === false
              ? words(of === "items" ? "write/not-held-then" : "write/not-reached-then", { what: one.name })
              : one.name}
          </option>
        ))}
      </select>
    </div>
  );
}

function TicksField({ context, path, label, value, onValue, of }: FieldProps & { readonly of: ListName }) {
  const { choices } = context.choicesOf(of, path);
  const chosen = Array.isArray(value) ? (value as readonly string[]) : [];
  const unknown = chosen.filter((id) => !choices.some((one) => one.id === id));
  return (
    <fieldset className="write-ticks">
      <legend>{label}</legend>
      {choices.length === 0 && <p className="hint">{words("write/none-yet")}</p>}
      {[...choices, ...unknown.map((id) => ({ id, name: id }))].map(({ id, name }) => (
        <button
          key={id}
          type="button"
          className="plain-button"
          aria-pressed={chosen.includes(id)}
          onClick={() => {
            const next = chosen.includes(id) ? chosen.filter((one) => one !== id) : [...chosen, id];
            onValue(next.length === 0 ? undefined : next);
          }}
        >
          {name}
        </button>
      ))}
    </fieldset>
  );
}

function PairField({ schema, value, onValue, ...props }: FieldProps) {
  const both = Array.isArray(value) ? (value as readonly unknown[]) : [];
  return (
    <fieldset className="write-group">
      <legend>{props.label}</legend>
      {(schema.prefixItems ?? []).map((inner, index) => (
        <AnyField
          // biome-ignore lint/suspicious/noArrayIndexKey: the two ends have no other name.
          key={index}
          {...props}
          label={words(index === 0 ? "write/one-end" : "write/other-end")}
          schema={inner}
          value={both[index]}
          onValue={(next) => next !== undefined && onValue(both.with(index, next))}
        />
      ))}
    </fieldset>
  );
}

function ListField({ schema, path, label, value, onValue, context }: FieldProps) {
  const entries = Array.isArray(value) ? (value as readonly unknown[]) : [];
  const inner = schema.items === false ? {} : (schema.items ?? {});
  const tell = (next: readonly unknown[]) => onValue(next.length === 0 ? undefined : next);
  return (
    <fieldset className="write-group">
      <legend>{label}</legend>
      {entries.map((entry, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: entries have no other name.
        <div key={index} className="write-entry">
          <AnyField
            context={context}
            schema={inner}
            path={[...path, "*"]}
            label={words("write/entry", { field: label, number: index + 1 })}
            value={entry}
            onValue={(next) =>
              tell(next === undefined ? entries.toSpliced(index, 1) : entries.with(index, next))
            }
          />
          <button type="button" className="plain-button" onClick={() => tell(entries.toSpliced(index, 1))}>
            {words("write/take-entry-out", { field: label, number: index + 1 })}
          </button>
        </div>
      ))}
      <button
        type="button"
        className="plain-button"
        onClick={() => tell([...entries, firstValue(inner, [...path, "*"], namedIn(context))])}
      >
        {words("write/add-field", { field: label })}
      </button>
    </fieldset>
  );
}

function GroupField({ schema, path, label, value, onValue, context }: FieldProps) {
  const fields = (typeof value === "object" && value !== null ? value : {}) as Fields;
  const required = new Set(schema.required ?? []);
  return (
    <fieldset className="write-group">
      <legend>{label}</legend>
      {Object.entries(schema.properties ?? {}).map(([key, inner]) => (
        <AnyField
          key={key}
          context={context}
          schema={inner}
          path={[...path, key]}
          label={fieldWords(key)}
          value={fields[key]}
          onValue={(next) => {
            if (next === undefined && required.has(key)) return;
            onValue(
              next === undefined
                ? Object.fromEntries(Object.entries(fields).filter(([other]) => other !== key))
                : { ...fields, [key]: next },
            );
          }}
        />
      ))}
      {path.at(-1) !== "*" && value !== undefined && (
        <button type="button" className="plain-button" onClick={() => onValue(undefined)}>
          {words("write/take-out-field", { field: label })}
        </button>
      )}
    </fieldset>
  );
}

/** Values by name, such as the states that a step needs: `hatch: open`, one a line. */
function ValuesField({ label, value, onValue }: FieldProps) {
  const fields = (typeof value === "object" && value !== null ? value : {}) as Fields;
  const text = Object.entries(fields)
    .map(([key, one]) => `${key}: ${String(one)}`)
    .join("\n");
  const read = (typed: string) => {
    const lines = typed.split("\n").flatMap((line) => (line.trim() === "" ? [] : [line.split(":")]));
    const isRight = lines.every(([key, one, ...more]) => key?.trim() && one?.trim() && more.length === 0);
    return isRight ? Object.fromEntries(lines.map(([key = "", one = ""]) => [key.trim(), one.trim()])) : null;
  };
  return (
    <TypedField
      label={words("write/values", { field: label })}
      text={text}
      isLong
      read={read}
      onValue={onValue}
    />
  );
}

/** The name of a form: what it holds, in the order of the schema. */
function nameOfForm(schema: FieldSchema): string {
  if (schema.properties)
    return words("figures/list", { items: Object.keys(schema.properties).map(fieldWords) });
  if (schema.const !== undefined) return fieldWords(String(schema.const));
  return words(schema.type === "array" ? "write/form-list" : "write/form-one");
}

function FormsField({ schema, path, label, value, onValue, context }: FieldProps) {
  const id = useId();
  const forms = schema.anyOf ?? [];
  const at = formOf(schema, value);
  const form = forms[at];
  if (value === undefined || !form)
    return (
      <fieldset className="write-group">
        <legend>{label}</legend>
        <button
          type="button"
          className="plain-button"
          onClick={() => onValue(firstValue(schema, path, namedIn(context)))}
        >
          {words("write/add-field", { field: label })}
        </button>
      </fieldset>
    );
  // A form of one text or number is named by its field alone.
  return (
    <div className="write-forms">
      <div className="field">
        <label htmlFor={id}>{words("write/form-of", { field: label })}</label>
        <select
          id={id}
          value={String(at)}
          onChange={(event) => {
            const next = forms[Number(event.target.value)];
            if (next && !isLike(next, value)) onValue(firstValue(next, path, namedIn(context)));
          }}
        >
          {forms.map((one, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: forms have no other name.
            <option key={index} value={String(index)}>
              {nameOfForm(one)}
            </option>
          ))}
        </select>
      </div>
      <AnyField context={context} schema={form} path={path} label={label} value={value} onValue={onValue} />
    </div>
  );
}
