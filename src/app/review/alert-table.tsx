import type { Review } from "../../core/review/index.ts";
import { isAsUrgent } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
import { columns } from "./review-columns.ts";
import { ReviewTable } from "./review-table.tsx";
import { actorWords, petOf } from "./review-words.ts";

/** The alerts that were raised, and who acknowledged each. */
export function AlertTable({ review }: { readonly review: Review }) {
  const { raised, seen } = review.alerts;
  return (
    <ReviewTable
      id="review-alerts"
      title={words("review/alerts")}
      columns={columns(
        "review/column-pet",
        "review/column-level",
        "review/column-alert",
        "review/column-seen-by",
      )}
      rows={raised.map(({ at, alert, level, about }) => {
        const by = seen.filter((one) => one.alert === alert && isAsUrgent(one.level, level));
        return {
          key: `${alert} ${level}`,
          cells: [
            petOf(review, at),
            <b key="level">{words(`handover/level-${level}`)}</b>,
            alertWords(review, alert, about),
            by.length === 0
              ? words("review/seen-by-nobody")
              : words("figures/list", {
                  items: by.map((one) =>
                    words("review/seen-at", {
                      who: actorWords(review, one.actor),
                      at: petOf(review, one.at),
                    }),
                  ),
                }),
          ],
        };
      })}
      empty={words("review/no-alerts")}
    />
  );
}

const KINDS = [
  "turn-back",
  "return",
  "supply",
  "reading",
  "record",
  "watch",
  "hold",
  "overtime",
  "limit",
  "forecast",
  "decision",
  "item",
] as const;

/** What an alert was on, and about what; an alert of a kind that this version does not know is shown by its key. */
function alertWords({ outline }: Review, alert: string, about: string | null): string {
  const kind = KINDS.find((one) => alert === one || alert.startsWith(`${one} `));
  if (!kind) return alert;
  const what = words(`review/alert-${kind}`);
  if (about === null) return what;
  const { watches } = outline.procedure;
  const entry = outline.steps.find(({ step }) => step.id === about);
  const named = entry ? `${entry.number} ${entry.step.do}` : watches.find(({ id }) => id === about)?.do;
  return words("review/alert-about", { what, about: named ?? about });
}
