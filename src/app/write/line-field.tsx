import { useId } from "react";

/** A field for one line of text, told letter by letter; `inputMode` is the keyboard that a tablet shows for it. */
export function LineField({
  label,
  value,
  inputMode,
  onValue,
}: {
  readonly label: string;
  readonly value: string;
  readonly inputMode?: "decimal";
  readonly onValue: (text: string) => void;
}) {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <input id={id} inputMode={inputMode} value={value} onChange={(event) => onValue(event.target.value)} />
    </div>
  );
}
