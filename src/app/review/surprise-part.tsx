import type { Review } from "../../core/review/index.ts";
import type { SurpriseReview, SurpriseSign } from "../../core/training/index.ts";
import { effectMessage } from "../../core/training/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { clockText, minus } from "../../core/units/index.ts";
import { inWords, words } from "../../words/index.ts";
import { callsOf } from "../parts/index.ts";
import { actorWords } from "./review-words.ts";

/**
 * The surprises of a rehearsal that is over, each with what was expected beside what the log tells ([TRN3]). Nothing is drawn for
 * a walk without any.
 */
export function SurprisePart({ review }: { readonly review: Review }) {
  if (review.surprises.length === 0) return null;
  return (
    <section className="review-part" aria-labelledby="review-surprises">
      <h2 id="review-surprises">
        {words("review/surprises")} <span className="review-count">{review.surprises.length}</span>
      </h2>
      <p className="hint">{words("review/surprises-how")}</p>
      <ol className="plain-list surprise-list">
        {review.surprises.map((one) => (
          <SurpriseItem key={one.surprise.id} review={review} one={one} />
        ))}
      </ol>
    </section>
  );
}

function SurpriseItem({ review, one }: { readonly review: Review; readonly one: SurpriseReview }) {
  const { surprise, began, isFired } = one;
  const { title, expect } = surprise;
  const came =
    began === null
      ? words("review/surprise-never")
      : words(isFired ? "review/surprise-fired" : "review/surprise-came", { at: clockText(began) });
  return (
    <li className="surprise-item">
      <h3>{title}</h3>
      <p>
        {came} {inWords(effectMessage(review.outline, surprise))}
      </p>
      {began !== null && (
        <div className="surprise-sides">
          <section aria-label={words("review/surprise-expected")}>
            <h4>{words("review/surprise-expected")}</h4>
            <p>
              {words("review/surprise-within", {
                crew: callsOf(review.outline, expect.who),
                time: expect.within,
              })}{" "}
              {expect.notice}
            </p>
            <p>{expect.act}</p>
          </section>
          <section aria-label={words("review/surprise-happened")}>
            <h4>{words("review/surprise-happened")}</h4>
            <Noticed review={review} one={one} began={began} />
            <Cost one={one} outline={review.outline} />
          </section>
        </div>
      )}
    </li>
  );
}

/** The first entry that shows that somebody noticed it, with how long after it came, and what was entered then. */
function Noticed({
  review,
  one: { noticed, done },
  began,
}: {
  readonly review: Review;
  readonly one: SurpriseReview;
  readonly began: Duration;
}) {
  if (noticed === null) return <p>{words("review/surprise-unnoticed")}</p>;
  return (
    <>
      <p>
        {words("review/surprise-noticed", {
          time: minus(noticed.at, began),
          who: actorWords(review, noticed.actor),
        })}
      </p>
      <ol className="plain-list surprise-signs">
        {done.map((sign, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: two entries may be alike, and the list never changes.
          <li key={index}>{signWords(review, sign)}</li>
        ))}
      </ol>
    </>
  );
}

function signWords(review: Review, { at, actor, what, said }: SurpriseSign): string {
  const entered = { at: clockText(at), who: actorWords(review, actor), what: inWords(what) };
  const why = inWords(said);
  return why === ""
    ? words("review/surprise-sign", entered)
    : words("review/surprise-sign-said", { ...entered, said: why });
}

function Cost({
  one: { cost },
  outline,
}: {
  readonly one: SurpriseReview;
  readonly outline: Review["outline"];
}) {
  if (cost === null) return <p>{words("review/surprise-no-forecast")}</p>;
  const { finish, margin, supplies } = cost;
  return (
    <dl className="surprise-cost">
      <div>
        <dt>{words("review/surprise-finish")}</dt>
        <dd>
          {Math.abs(finish) < 1_000
            ? words("review/surprise-no-later")
            : words(finish > 0 ? "review/surprise-later" : "review/surprise-earlier", { time: finish })}
        </dd>
      </div>
      {margin !== null && (
        <div>
          <dt>{words("review/surprise-margin")}</dt>
          <dd>{words("review/surprise-from-to", { before: margin.before, after: margin.after })}</dd>
        </div>
      )}
      {supplies.map(({ supply, before, after }) => (
        <div key={`${supply.crew} ${supply.id}`}>
          <dt>
            {words("review/surprise-supply", {
              supply: supply.label ?? supply.id,
              crew: callsOf(outline, [supply.crew]),
            })}
          </dt>
          <dd>
            {words("review/surprise-left", {
              before: { value: before, unit: supply.unit },
              after: { value: after, unit: supply.unit },
            })}
          </dd>
        </div>
      ))}
    </dl>
  );
}
