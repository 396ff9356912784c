import type { CSSProperties } from "react";
import type { LaneReview, Review } from "../../core/review/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { lengthText } from "../../core/units/index.ts";
import { strandsOf } from "../braid/index.ts";
import { waitedOn } from "./review-words.ts";

const waitedTime = ({ waited }: LaneReview) => waited.reduce((sum, { time }) => sum + time, 0) as Duration;

/** What became of everybody's time: a bar each, and the figures under it. */
export function LaneShares({ review }: { readonly review: Review }) {
  const { outline, lanes } = review;
  const strands = strandsOf(outline.crew);
  const longest = Math.max(1, ...lanes.map(({ until }) => until));
  return (
    <section className="review-part" aria-labelledby="review-lanes">
      <h2 id="review-lanes">Where everybody’s time went</h2>
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
                <Share kind="worked" words="worked" time={lane.worked} />
                <Share kind="translated" words="moved" time={lane.translated} />
                <Share kind="waited" words="waited" time={waitedTime(lane)}>
                  {lane.waited
                    .map(({ on, time }) => `${lengthText(time)} ${waitedOn(outline, on)}`)
                    .join(", ")}
                </Share>
                <Share kind="idle" words="idle" time={lane.idle} />
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
  readonly words: string;
  readonly time: Duration;
  readonly children?: string;
}

function Share({ kind, words, time, children }: ShareProps) {
  return (
    <div>
      <dt>
        <i className={`review-sign review-share-${kind}`} aria-hidden="true" />
        {words}
      </dt>
      <dd>
        <b>{time > 0 ? lengthText(time) : "none"}</b>
        {children && <span>{children}</span>}
      </dd>
    </div>
  );
}
