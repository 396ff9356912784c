import { useEffect, useId, useRef, useState } from "react";
import type { StepRecord } from "../../core/procedure/index.ts";
import { measuredAgainst } from "../../core/quantity/index.ts";
import type { StepId } from "../../core/units/index.ts";
import type { TakenRecord } from "../../core/walk/index.ts";
import { unitText, words } from "../../words/index.ts";
import { limitWords } from "../parts/index.ts";
import { TextInLanguage } from "../texts/index.ts";
import type { FollowActions } from "./follow-actions.ts";

interface RecordFieldProps {
  readonly step: StepId;
  readonly record: StepRecord;
  readonly taken: readonly TakenRecord[];
  readonly actions: FollowActions;
}

/** A number as typed, with a point or a comma before the decimals; `null` when the text is not a number. */
function numberOf(text: string): number | null {
  const trimmed = text.trim().replace(",", ".");
  if (!/^[+-]?(\d+\.?\d*|\.\d+)$/.test(trimmed)) return null;
  return Number(trimmed);
}

/**
 * A field for a value to record. The value is entered when the field is left or Enter is pressed, so that nothing typed
 * is lost.
 */
export function RecordField({ step, record, taken, actions }: RecordFieldProps) {
  const id = useId();
  const last = taken.findLast(({ record: of }) => of === record.id);
  const [text, setText] = useState<string | null>(null);
  const shown = text ?? (last ? String(last.value) : "");
  const value = numberOf(shown);
  const isWrong = shown.trim() !== "" && value === null;
  const limits = limitWords(record);
  // A step that is marked done takes its fields with it. What stands in one and is no number is kept as a note.
  const unkept = useRef(() => {});
  unkept.current = () => {
    if (isWrong) void actions.note(`${record.label ?? record.id}: ${shown.trim()}`, step);
  };
  useEffect(() => () => unkept.current(), []);
  const commit = async () => {
    if (value === null || value === last?.value) return;
    await actions.record(step, record.id, value);
    setText(null);
  };
  return (
    <label className="record-field" htmlFor={id}>
      <span>
        <TextInLanguage list="steps" id={step} field="records" part={record.id}>
          {record.label ?? record.id}
        </TextInLanguage>
      </span>
      <input
        id={id}
        inputMode="decimal"
        autoComplete="off"
        value={shown}
        aria-invalid={isWrong || last?.outOfRange || undefined}
        onChange={(event) => setText(event.target.value)}
        onBlur={() => void commit()}
        onKeyDown={(event) => {
          if (event.key === "Enter") void commit();
        }}
      />
      <span className="record-limits">
        {unitText(record.unit)}
        {limits && ` ${words("follow/allowed", { limits })}`}
        {isWrong && ` · ${words("follow/not-a-number")}`}
        {last && !last.outOfRange && value === last.value && ` · ${words("follow/recorded-already")}`}
      </span>
      {last?.outOfRange && (
        <span className="record-outside" role="status">
          {words("follow/outside-limits", { value: measuredAgainst(record, last.value) })}
        </span>
      )}
    </label>
  );
}
