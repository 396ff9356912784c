import { useMemo, useState } from "react";
import type { Draft } from "../../core/log/index.ts";
import type { Outline } from "../../core/procedure/index.ts";
import type { Surprise, SurpriseReview } from "../../core/training/index.ts";
import { effectMessage, firedDraft, surprisesUnderWay, whenMessage } from "../../core/training/index.ts";
import type { Instant } from "../../core/units/index.ts";
import { clockText, minus } from "../../core/units/index.ts";
import type { Folded, Ledger } from "../../core/walk/index.ts";
import { walkMay } from "../../core/walk/index.ts";
import { inWords, words } from "../../words/index.ts";
import { callsOf } from "../parts/index.ts";

interface FireListProps {
  readonly folded: Folded;
  readonly ledger: Ledger;
  readonly at: Instant;
  /** The present time of the rehearsal, at which what is fired comes. */
  readonly clock: () => Instant;
  readonly surprises: readonly Surprise[];
  readonly onFire: (draft: Draft, title: string) => void;
}

/** The surprises of a file, each with what it does, what is expected and how it stands; one that has not come can be fired. */
export function FireList({ folded, ledger, at, clock, surprises, onFire }: FireListProps) {
  const [asked, setAsked] = useState<string | null>(null);
  const underWay = useMemo(() => surprisesUnderWay(folded, at), [folded, at]);
  const mayFire = walkMay(ledger.phase, "mark");
  const fire = (surprise: Surprise) => {
    setAsked(null);
    const by = { walk: ledger.opened.walk, at: clock(), actor: "trainer" };
    onFire(firedDraft(surprise, by), surprise.title);
  };
  return (
    <>
      {!mayFire && (
        <p className="hint">{words(ledger.closed ? "train/told-in-review" : "train/not-started")}</p>
      )}
      <ul className="plain-list train-list">
        {surprises.map((surprise) => {
          const state = underWay.find((one) => one.surprise.id === surprise.id) ?? null;
          return (
            <li key={surprise.id} className="train-item" data-came={state?.began != null || undefined}>
              <h3>{surprise.title}</h3>
              <p>{inWords(effectMessage(ledger.inForce.outline, surprise))}</p>
              <Expected outline={ledger.inForce.outline} surprise={surprise} />
              <Standing state={state} outline={ledger.inForce.outline} surprise={surprise} />
              {mayFire && state?.began == null && (
                <FireButton
                  title={surprise.title}
                  isAsked={asked === surprise.id}
                  onAsk={() => setAsked(surprise.id)}
                  onFire={() => fire(surprise)}
                  onLeave={() => setAsked(null)}
                />
              )}
            </li>
          );
        })}
      </ul>
    </>
  );
}

function Expected({
  outline,
  surprise: { expect },
}: {
  readonly outline: Outline;
  readonly surprise: Surprise;
}) {
  return (
    <p className="hint">
      {words("train/expected", {
        crew: callsOf(outline, expect.who),
        time: expect.within,
        notice: expect.notice,
        act: expect.act,
      })}
    </p>
  );
}

/** How a surprise stands: not come, laid, come, and who showed first that they noticed it. */
function Standing({
  state,
  outline,
  surprise,
}: {
  readonly state: SurpriseReview | null;
  readonly outline: Outline;
  readonly surprise: Surprise;
}) {
  if (state?.began == null) {
    return (
      <p>{words(state ? "train/laid-for" : "train/by-itself", { when: whenMessage(outline, surprise) })}</p>
    );
  }
  const { noticed, began } = state;
  return (
    <p>
      <b>{words(state.isFired ? "train/was-fired" : "train/came", { at: clockText(began) })}</b>{" "}
      {noticed === null
        ? words("train/nobody-yet")
        : words("train/first-sign", {
            who: outline.crew.find(({ id }) => id === noticed.actor)?.call ?? noticed.actor ?? "–",
            what: noticed.what,
            time: minus(noticed.at, began),
          })}
    </p>
  );
}

interface FireButtonProps {
  readonly title: string;
  readonly isAsked: boolean;
  readonly onAsk: () => void;
  readonly onFire: () => void;
  readonly onLeave: () => void;
}

/** What is fired cannot be taken back, so it takes a second tap. */
function FireButton({ title, isAsked, onAsk, onFire, onLeave }: FireButtonProps) {
  return (
    <div className="panel-acts">
      {isAsked ? (
        <>
          <button type="button" className="main-button" onClick={onFire}>
            {words("train/fire-now", { title })}
          </button>
          <button type="button" className="plain-button" onClick={onLeave}>
            {words("train/leave")}
          </button>
        </>
      ) : (
        <button
          type="button"
          className="plain-button"
          onClick={onAsk}
          aria-label={words("train/fire-which", { title })}
        >
          {words("train/fire")}
        </button>
      )}
    </div>
  );
}
