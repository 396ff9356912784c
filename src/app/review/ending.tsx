import type { Review } from "../../core/review/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { endingWords } from "./ending-words.ts";
import { onTrack, PetScale, PetTrack } from "./pet-track.tsx";

interface EndingProps {
  readonly review: Review;
  /** The PET at the right edge of every track. */
  readonly end: Duration;
}

/** How the walk ended: its finish against the plan and the limit, as one bar and in words. */
export function Ending({ review, end }: EndingProps) {
  const { headline, sentences } = endingWords(review);
  const { actualFinish, plannedFinish, limit } = review;
  const closed = review.end?.at ?? (0 as Duration);
  return (
    <section className="review-part" aria-labelledby="review-ending">
      <h2 id="review-ending">{headline}</h2>
      <p>{sentences.join(" ")}</p>
      {review.petZero !== null && (
        <>
          <div className="review-ending-track">
            <PetTrack end={end}>
              <i className="review-flown" style={onTrack(0, actualFinish ?? 0, end)} />
              {closed > (actualFinish ?? 0) && (
                <i className="review-closing" style={onTrack(actualFinish ?? 0, closed, end)} />
              )}
              {plannedFinish !== null && (
                <b
                  className="review-flag review-flag-plan"
                  style={{ left: onTrack(plannedFinish, 0, end).left }}
                />
              )}
              {limit !== null && (
                <b className="review-flag review-flag-limit" style={{ left: onTrack(limit, 0, end).left }} />
              )}
            </PetTrack>
            <PetScale end={end} />
          </div>
          <ul className="review-signs">
            <li>
              <i className="review-sign review-flown" />
              {actualFinish === null
                ? words("review/sign-flown")
                : words("review/sign-flown-until", { at: actualFinish })}
            </li>
            {closed > (actualFinish ?? 0) && (
              <li>
                <i className="review-sign review-closing" />
                {words("review/sign-closed", { at: closed })}
              </li>
            )}
            {plannedFinish !== null && (
              <li>
                <i className="review-sign review-sign-plan" />
                {words("review/sign-planned-finish", { at: plannedFinish })}
              </li>
            )}
            {limit !== null && (
              <li>
                <i className="review-sign review-sign-limit" />
                {words("review/sign-limit", { at: limit })}
              </li>
            )}
          </ul>
        </>
      )}
    </section>
  );
}
