import type { Review, StepReview } from "../../core/review/index.ts";
import { clockText, lengthText, minus } from "../../core/units/index.ts";
import { behindTone, callsOf, limitWords, locationWords, unitText } from "../parts/index.ts";
import { misplacedItems } from "./misplaced-items.ts";
import { ReviewTable } from "./review-table.tsx";
import { laterWords, petOf, stepWords, waitedFor } from "./review-words.ts";

const KINDS = {
  skipped: "skipped",
  "out-of-order": "out of order",
  "record-out-of-range": "record outside its limits",
  amended: "amended",
  struck: "entry struck",
} as const;

/** Everything a picture cannot say: what went otherwise than planned, and every step. */
export function ReviewTables({ review }: { readonly review: Review }) {
  const { outline } = review;
  return (
    <>
      <ReviewTable
        id="review-deviations"
        title="Deviations"
        columns={["PET", "What", "Step", "In words"]}
        rows={review.deviations
          .toSorted((a, b) => a.at - b.at)
          .map(({ at, kind, step, text }, index) => ({
            key: `${index} ${kind}`,
            cells: [petOf(review, at), <b key="kind">{KINDS[kind]}</b>, stepWords(outline, step), text],
          }))}
        empty="Nothing was done otherwise than planned: no step skipped or out of order, no record outside its limits, no entry struck."
      />
      <ReviewTable
        id="review-items"
        title="Items not at their end"
        columns={["Item", "Must be", "Was last"]}
        rows={misplacedItems(review).map(({ item, is, mustBe }) => ({
          key: item.id,
          cells: [
            <b key="item">{item.label ?? item.id}</b>,
            mustBe ? locationWords(outline, mustBe) : "at a refuge, or with somebody who is at one",
            locationWords(outline, is),
          ],
        }))}
        empty={
          outline.procedure.items.length === 0
            ? "The procedure lists no items."
            : `All ${outline.procedure.items.length} items are where they must be.`
        }
      />
      <ReviewTable
        id="review-records"
        title="Records"
        columns={["Step", "Record", "Taken", "Allowed", "PET"]}
        rows={review.steps.flatMap((step) => recordRows(review, step))}
        empty="No step that was done asks for a record."
      />
      <ReviewTable
        id="review-decisions"
        title="Decisions"
        columns={["Asked", "Came out", "Expected"]}
        rows={review.decisions.map(({ decision, outcome, expected }) => ({
          key: decision,
          cells: [
            outline.decision(decision)?.decision.ask ?? decision,
            <b key="outcome">{outcome}</b>,
            expected ? "as expected" : "not as expected",
          ],
        }))}
        empty="No decision was taken."
      />
      <ReviewTable
        id="review-notes"
        title="Notes"
        columns={["PET", "Who", "Note", "Step"]}
        rows={noteRows(review)}
        empty="Nobody made a note."
      />
      <ReviewTable
        id="review-holds"
        title="Holds"
        columns={["From", "To", "For", "Reason"]}
        rows={review.holds.map(({ start, finish, reason, lifted }) => ({
          key: String(start),
          cells: [
            clockText(start),
            lifted ? clockText(finish) : "not lifted",
            lengthText((finish - start) as typeof start),
            reason || "none given",
          ],
        }))}
        empty="The walk was never held."
      />
      <ReviewTable
        id="review-steps"
        title="Steps"
        columns={["No.", "Who", "Step", "Planned", "As flown", "Over", "Waits before it"]}
        rows={review.steps.map((step) => stepRow(review, step))}
        empty="The procedure has no steps."
      />
      <ReviewTable
        id="review-ignored"
        title="Entries without effect"
        columns={["Entry", "From", "Why"]}
        rows={review.ignored.map(({ source, id, reason }) => ({
          key: `${source} ${id} ${reason}`,
          cells: [id, source, reason],
        }))}
        empty="Every entry of the log had its effect."
      />
    </>
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
    const allowed = (definition && limitWords(definition)) || "no limits";
    const name = `${entry.number} ${entry.step.do}`;
    const unit = unitText(record.unit);
    if (record.taken.length === 0)
      return [{ key: `${step} ${record.record}`, cells: [name, record.label, "not taken", allowed, "–"] }];
    return record.taken.map(({ value, at, outOfRange }, turn) => ({
      key: `${step} ${record.record} ${turn}`,
      cells: [
        name,
        record.label,
        <b key="value">
          {value} {unit}
          {outOfRange && ", outside"}
        </b>,
        allowed,
        petOf(review, at),
      ],
    }));
  });
}

function noteRows(review: Review) {
  const ofSteps = review.steps.flatMap(({ step, notes }) => notes.map((note) => ({ ...note, step })));
  const all = [...ofSteps, ...review.notes.map((note) => ({ ...note, step: null }))];
  return all
    .sort((a, b) => a.at - b.at)
    .map(({ at, actor, text, step }, index) => ({
      key: String(index),
      cells: [petOf(review, at), actorWords(review, actor), text, stepWords(review.outline, step)],
    }));
}

function actorWords({ outline }: Review, actor: string | null): string {
  return outline.crew.find(({ id }) => id === actor)?.call ?? actor ?? "–";
}

const ENDINGS = {
  done: "",
  skipped: "skipped",
  "in-work": "in work",
  open: "not done",
  "not-performed": "branch not taken",
} as const;

function stepRow(review: Review, step: StepReview) {
  const { outline } = review;
  const entry = outline.step(step.step);
  const { planned, actual, ending, finishDifference } = step;
  return {
    key: step.step,
    cells: [
      <b key="number">{entry?.number}</b>,
      entry ? callsOf(outline, entry.step.by) : "",
      entry?.step.do,
      planned ? `${clockText(planned.start)}–${clockText(planned.finish)}` : "not planned",
      actual && ending === "done"
        ? `${clockText(actual.start)}–${clockText(actual.finish)}`
        : ENDINGS[ending],
      <span key="difference" data-tone={behindTone(ending === "done" ? finishDifference : null)}>
        {ending === "done" ? laterWords(finishDifference) : "–"}
      </span>,
      step.waits
        .map(
          ({ crew, from, to, on }) =>
            `${callsOf(outline, [crew])} ${lengthText(minus(to, from))} ${waitedFor(outline, on)}`,
        )
        .join("; ") || "–",
    ],
  };
}
