import type { Review } from "../../core/review/index.ts";
import { words } from "../../words/index.ts";
import { stepWords } from "../parts/index.ts";
import { columns } from "./review-columns.ts";
import { ReviewTable } from "./review-table.tsx";
import { actorWords, petOf } from "./review-words.ts";

/** All notes of the walk, those of steps included, in order of time. */
export function NoteTable({ review }: { readonly review: Review }) {
  return (
    <ReviewTable
      id="review-notes"
      title={words("review/notes")}
      columns={columns("review/column-pet", "review/column-who", "review/column-note", "review/column-step")}
      rows={noteRows(review)}
      empty={words("review/no-notes")}
    />
  );
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
