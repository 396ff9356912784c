import type { Review, StepReview } from "../../core/review/index.ts";
import { clockText, minus } from "../../core/units/index.ts";
import type { MessageKey } from "../../words/index.ts";
import { inWords, words } from "../../words/index.ts";
import { behindTone, callsOf, limitWords, locationWords, unitText } from "../parts/index.ts";
import { misplacedItems } from "./misplaced-items.ts";
import { ReviewTable } from "./review-table.tsx";
import { laterWords, petOf, stepWords, waitedFor } from "./review-words.ts";

/** Heads of columns, in the order of their keys. */
const columns = (...keys: readonly Extract<MessageKey, `review/column-${string}`>[]): readonly string[] =>
  keys.map((key) => words(key));

/** Everything a picture cannot say: what went otherwise than planned, and every step. */
export function ReviewTables({ review }: { readonly review: Review }) {
  const { outline } = review;
  return (
    <>
      <ReviewTable
        id="review-deviations"
        title={words("review/deviations")}
        columns={columns(
          "review/column-pet",
          "review/column-what",
          "review/column-step",
          "review/column-in-words",
        )}
        rows={review.deviations
          .toSorted((a, b) => a.at - b.at)
          .map(({ at, kind, step, text }, index) => ({
            key: `${index} ${kind}`,
            cells: [
              petOf(review, at),
              <b key="kind">{words(`review/kind-${kind}`)}</b>,
              stepWords(outline, step),
              inWords(text),
            ],
          }))}
        empty={words("review/no-deviations")}
      />
      <ReviewTable
        id="review-items"
        title={words("review/items")}
        columns={columns("review/column-item", "review/column-must-be", "review/column-was-last")}
        rows={misplacedItems(review).map(({ item, is, mustBe }) => ({
          key: item.id,
          cells: [
            <b key="item">{item.label ?? item.id}</b>,
            mustBe ? locationWords(outline, mustBe) : words("review/at-a-refuge"),
            locationWords(outline, is),
          ],
        }))}
        empty={
          outline.procedure.items.length === 0
            ? words("review/no-items")
            : words("review/all-items", { count: outline.procedure.items.length })
        }
      />
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
      <ReviewTable
        id="review-decisions"
        title={words("review/decisions")}
        columns={columns("review/column-asked", "review/column-came-out", "review/column-expected")}
        rows={review.decisions.map(({ decision, outcome, expected }) => ({
          key: decision,
          cells: [
            outline.decision(decision)?.decision.ask ?? decision,
            <b key="outcome">{outcome}</b>,
            words(expected ? "review/as-expected" : "review/not-as-expected"),
          ],
        }))}
        empty={words("review/no-decisions")}
      />
      <ReviewTable
        id="review-notes"
        title={words("review/notes")}
        columns={columns(
          "review/column-pet",
          "review/column-who",
          "review/column-note",
          "review/column-step",
        )}
        rows={noteRows(review)}
        empty={words("review/no-notes")}
      />
      <ReviewTable
        id="review-holds"
        title={words("review/holds")}
        columns={columns(
          "review/column-from",
          "review/column-to",
          "review/column-for",
          "review/column-reason",
        )}
        rows={review.holds.map(({ start, finish, reason, lifted }) => ({
          key: String(start),
          cells: [
            clockText(start),
            lifted ? clockText(finish) : words("review/not-lifted"),
            words("figures/length", { time: (finish - start) as typeof start }),
            reason || words("review/no-reason"),
          ],
        }))}
        empty={words("review/no-holds")}
      />
      <ReviewTable
        id="review-steps"
        title={words("review/steps")}
        columns={columns(
          "review/column-number",
          "review/column-who",
          "review/column-step",
          "review/column-planned",
          "review/column-as-flown",
          "review/column-over",
          "review/column-waits",
        )}
        rows={review.steps.map((step) => stepRow(review, step))}
        empty={words("review/no-steps")}
      />
      <ReviewTable
        id="review-ignored"
        title={words("review/ignored")}
        columns={columns("review/column-entry", "review/column-from", "review/column-why")}
        rows={review.ignored.map(({ source, id, reason }) => ({
          key: `${source} ${id} ${reason.key}`,
          cells: [id, source, inWords(reason)],
        }))}
        empty={words("review/none-ignored")}
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
    const allowed = (definition && limitWords(definition)) || words("review/no-limits");
    const name = `${entry.number} ${entry.step.do}`;
    const unit = unitText(record.unit);
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
        <b key="value">{words(outOfRange ? "review/taken-outside" : "review/taken", { value, unit })}</b>,
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
      planned ? `${clockText(planned.start)}–${clockText(planned.finish)}` : words("review/not-planned"),
      actual && ending === "done"
        ? `${clockText(actual.start)}–${clockText(actual.finish)}`
        : ending === "done"
          ? ""
          : words(`review/ending-${ending}`),
      <span key="difference" data-tone={behindTone(ending === "done" ? finishDifference : null)}>
        {ending === "done" ? laterWords(finishDifference) : "–"}
      </span>,
      step.waits
        .map(({ crew, from, to, on }) =>
          words("review/wait", {
            crew: callsOf(outline, [crew]),
            time: minus(to, from),
            reason: waitedFor(outline, on),
          }),
        )
        .join("; ") || "–",
    ],
  };
}
