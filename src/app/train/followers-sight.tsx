import { useMemo } from "react";
import type { Instant } from "../../core/units/index.ts";
import { clockText } from "../../core/units/index.ts";
import type { Ledger } from "../../core/walk/index.ts";
import { alertsOf, walkStateAt } from "../../core/walk/index.ts";
import { inWords, words } from "../../words/index.ts";
import { behindWords, stepWords } from "../parts/index.ts";

interface FollowersSightProps {
  readonly ledger: Ledger;
  readonly at: Instant;
}

/** What the followers see at the moment: the clock, what each of the crew does, the alerts and who has seen them. */
export function FollowersSight({ ledger, at }: FollowersSightProps) {
  const state = useMemo(() => walkStateAt(ledger, at), [ledger, at]);
  const alerts = useMemo(() => alertsOf(state), [state]);
  const { outline } = ledger.inForce;
  return (
    <section className="train-sight" aria-labelledby="train-sight">
      <h2 id="train-sight">{words("train/sight")}</h2>
      <p>
        <b>{words(`follow/phase-${state.phase}-rehearsal`)}</b>{" "}
        {state.pet !== null && words("train/at", { at: clockText(state.pet) })}
      </p>
      <h3>{words("train/crew")}</h3>
      <ul className="plain-list">
        {state.lanes.map(({ crew, status, step, behind }) => (
          <li key={crew}>
            <b>{outline.crewMember(crew)?.call ?? crew}</b> {words(`train/lane-${status}`)}
            {step !== null && ` · ${stepWords(outline, step)}`}
            {behind !== null && ` · ${behindWords(behind)}`}
          </li>
        ))}
      </ul>
      <h3>{words("alert/alerts")}</h3>
      {alerts.length === 0 ? (
        <p className="hint">{words("alert/none")}</p>
      ) : (
        <ul className="plain-list">
          {alerts.map(({ alert, level, text, seen }) => (
            <li key={`${alert} ${level}`}>
              <b>{words(`handover/level-${level}`)}</b> {inWords(text)}
              <span className="hint">
                {" · "}
                {seen === null
                  ? words("train/unseen")
                  : words("train/seen", { who: callOf(ledger, seen.actor) })}
              </span>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

const callOf = ({ inForce: { outline } }: Ledger, actor: string | null) =>
  outline.crew.find(({ id }) => id === actor)?.call ?? actor ?? "–";
