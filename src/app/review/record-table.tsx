import type { Quantity } from "../../core/quantity/index.ts";
import { measuredAgainst } from "../../core/quantity/index.ts";
import type { Review, StepReview } from "../../core/review/index.ts";
import { words } from "../../words/index.ts";
import { limitWords, quantityWords } from "../parts/index.ts";
import { columns } from "./review-columns.ts";
import { ReviewTable } from "./review-table.tsx";
import { petOf } from "./review-words.ts";

/** The values that steps were to record, with the limits and what was taken. */
export function RecordTable({ review }: { readonly review: Review }) {
  return (
    <ReviewTable
      id="review-records"
      title={words("review/records")}
      columns={columns(
        "review/column-step",
        "review/column-record",
        "review/column-taken",
        "review/column-allowed",
        "review/column-pet",
      )}
      rows={review.steps.flatMap((step) => recordRows(review, step))}
      empty={words("review/no-records")}
    />
  );
}

function recordRows(review: Review, { step, ending, records }: StepReview) {
  const entry = review.outline.step(step);
  if (
    !entry ||
    ending === "not-performed" ||
    (ending === "open" && records.every(({ taken }) => taken.length === 0))
  )
    return [];
  return records.flatMap((record) => {
    const definition = entry.step.records.find(({ id }) => id === record.record);
    const allowed = (definition && limitWords(definition)) || words("review/no-limits");
    const name = `${entry.number} ${entry.step.do}`;
    if (record.taken.length === 0)
      return [
        {
          key: `${step} ${record.record}`,
          cells: [name, record.label, words("review/not-taken"), allowed, "–"],
        },
      ];
    return record.taken.map(({ value, at, outOfRange }, turn) => ({
      key: `${step} ${record.record} ${turn}`,
      cells: [
        name,
        record.label,
        <b key="value">
          {takenWords(measuredAgainst(definition ?? { unit: record.unit }, value), outOfRange)}
        </b>,
        allowed,
        petOf(review, at),
      ],
    }));
  });
}

const takenWords = (value: Quantity, isOutside: boolean): string =>
  isOutside ? words("review/taken-outside", { value }) : quantityWords(value);
