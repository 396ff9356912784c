import type { CSSProperties } from "react";
import type { LaneReview, Review } from "../../core/review/index.ts";
import { waitedMessage } from "../../core/review/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { inWords, words } from "../../words/index.ts";
import { strandsOf } from "../braid/index.ts";

const waitedTime = ({ waited }: LaneReview) => waited.reduce((sum, { time }) => sum + time, 0) as Duration;

/** How each crew member's time was spent: a bar for each, and the figures below it. */
export function LaneShares({ review }: { readonly review: Review }) {
  const { outline, lanes } = review;
  const strands = strandsOf(outline.crew);
  const longest = Math.max(1, ...lanes.map(({ until }) => until));
  return (
    <section className="review-part" aria-labelledby="review-lanes">
      <h2 id="review-lanes">{words("review/lanes")}</h2>
      <ul className="review-lanes">
        {lanes.map((lane, index) => {
          const strand = strands[index];
          const shares = [
            { kind: "worked", time: lane.worked },
            { kind: "translated", time: lane.translated },
            { kind: "waited", time: waitedTime(lane) },
            { kind: "idle", time: lane.idle },
          ].filter(({ time }) => time > 0);
          return (
            <li key={lane.crew} style={{ "--lane": strand?.colour } as CSSProperties}>
              <p className="review-lane-call">
                {strand?.call}
                <svg width="40" height="6" aria-hidden="true">
                  <line x1="0" x2="40" y1="3" y2="3" style={{ strokeDasharray: strand?.dash }} />
                </svg>
              </p>
              <div className="review-share-track" aria-hidden="true">
                {shares.map(({ kind, time }) => (
                  <i
                    key={kind}
                    className={`review-share review-share-${kind}`}
                    style={{ width: `${(time / longest) * 100}%` }}
                  />
                ))}
              </div>
              <dl className="review-lane-figures">
                <Share kind="worked" label={words("review/worked")} time={lane.worked} />
                <Share kind="translated" label={words("review/moved")} time={lane.translated} />
                <Share kind="waited" label={words("review/waited")} time={waitedTime(lane)}>
                  {lane.waited
                    .map((wait) => inWords(waitedMessage(outline, wait)))
                    .join(words("figures/between"))}
                </Share>
                <Share kind="idle" label={words("review/idle")} time={lane.idle} />
              </dl>
            </li>
          );
        })}
      </ul>
    </section>
  );
}

interface ShareProps {
  readonly kind: "worked" | "translated" | "waited" | "idle";
  readonly label: string;
  readonly time: Duration;
  readonly children?: string;
}

function Share({ kind, label, time, children }: ShareProps) {
  return (
    <div>
      <dt>
        <i className={`review-sign review-share-${kind}`} aria-hidden="true" />
        {label}
      </dt>
      <dd>
        <b>{time > 0 ? words("figures/length", { time }) : words("review/no-time")}</b>
        {children && <span>{children}</span>}
      </dd>
    </div>
  );
}
