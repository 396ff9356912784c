import { useId } from "react";

/** One of several that can be chosen. */
export interface SelectChoice<Id extends string> {
  readonly id: Id;
  readonly name: string;
}

/** A labelled choice of one of several. */
export function SelectField<Id extends string>({
  label,
  choices,
  value,
  onValue,
}: {
  readonly label: string;
  readonly choices: readonly SelectChoice<Id>[];
  readonly value: Id;
  readonly onValue: (id: Id) => void;
}) {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <select id={id} value={value} onChange={(event) => onValue(event.target.value as Id)}>
        {choices.map((one) => (
          <option key={one.id} value={one.id}>
            {one.name}
          </option>
        ))}
      </select>
    </div>
  );
}
