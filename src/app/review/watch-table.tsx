import type { Review } from "../../core/review/index.ts";
import { clockText } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { callsOf } from "../parts/index.ts";
import { columns } from "./review-columns.ts";
import { ReviewTable } from "./review-table.tsx";

/** Each round of a watch that fell due, kept or missed. */
export function WatchTable({ review }: { readonly review: Review }) {
  const { outline, watches } = review;
  return (
    <ReviewTable
      id="review-watches"
      title={words("review/watches")}
      columns={columns(
        "review/column-due",
        "review/column-who",
        "review/column-watch",
        "review/column-came-out",
      )}
      rows={watches.map(({ watch: id, due, isKept }) => {
        const watch = outline.procedure.watches.find((one) => one.id === id);
        return {
          key: `${id} ${due}`,
          cells: [
            clockText(due),
            watch ? callsOf(outline, watch.by) : "–",
            watch?.do ?? id,
            isKept ? words("review/kept") : <b key="missed">{words("review/missed")}</b>,
          ],
        };
      })}
      empty={words("review/no-watches")}
    />
  );
}
