import { useState } from "react";
import type { Outline } from "../../core/procedure/index.ts";
import type { Duration, StepId, WalkId } from "../../core/units/index.ts";
import { inMinutes } from "../../core/units/index.ts";
import type { ComparedStep } from "../../core/walks-compared/index.ts";
import { words } from "../../words/index.ts";
import type { WalksTold } from "../learn/index.ts";
import { StepStrip, StripLegend, WalkMarks } from "../learn/index.ts";
import { trackTicks } from "../review/index.ts";
import { StepName } from "../texts/index.ts";
import { ComparedWalkItem } from "./compared-walk-item.tsx";
import { ForecastSection } from "./forecast-section.tsx";
import { GroupSection } from "./group-section.tsx";
import { TimeAxis } from "./time-axis.tsx";
import "./walks.css";

interface WalksViewProps {
  readonly outline: Outline;
  readonly told: WalksTold;
  /** Opens the review of a walk, at a step where there is one. */
  readonly onOpen: (walk: WalkId, step: StepId | null) => void;
}

/** So many walks are drawn at first. */
const FIRST = 25;

/** Many walks of one procedure on one time axis, step by step, in two groups, and whether their forecasts were right ([CMP1], [CMP2]). */
export function WalksView({ outline, told, onOpen }: WalksViewProps) {
  const { walks, steps } = told.compared;
  const [chosen, setChosen] = useState<ReadonlySet<WalkId> | null>(null);
  const [isWhole, setWhole] = useState(false);
  if (walks.length === 0) {
    return (
      <p role="status" className="page-message">
        {words("learn/no-walks")}
      </p>
    );
  }
  const rehearsals = walks.flatMap(({ mode, walk }) => (mode === "rehearsal" ? [walk] : []));
  const second = chosen ?? new Set(rehearsals.length < walks.length ? rehearsals : []);
  const end = endOf(walks.map(({ finish }) => finish ?? 0));
  const drawn = isWhole ? walks : walks.slice(0, FIRST);
  const beganAt = new Map(walks.map(({ walk, began }) => [walk, began]));
  const performed = steps.filter(({ observations }) => observations.length > 0);
  return (
    <article className="of-walks walks">
      <section className="walks-part" aria-labelledby="walks-all">
        <h2 id="walks-all">{words("walks/all", { count: walks.length })}</h2>
        <p className="hint">{words("walks/all-how")}</p>
        <TimeAxis end={end} ticks={trackTicks(end)} />
        <ol className="of-walks-rows compared-walks">
          {drawn.map((walk) => (
            <ComparedWalkItem
              key={walk.walk}
              outline={outline}
              walk={walk}
              end={end}
              isSecond={second.has(walk.walk)}
              onSecond={(isSecond) => {
                const next = new Set(second);
                if (isSecond) next.add(walk.walk);
                else next.delete(walk.walk);
                setChosen(next);
              }}
              onOpen={onOpen}
            />
          ))}
        </ol>
        {drawn.length < walks.length && (
          <button type="button" className="plain-button" onClick={() => setWhole(true)}>
            {words("walks/show-rest", { count: walks.length - drawn.length })}
          </button>
        )}
      </section>
      <section className="walks-part" aria-labelledby="walks-steps">
        <h2 id="walks-steps">{words("walks/steps")}</h2>
        <StripLegend hasPlan={false} />
        <ul className="of-walks-rows compared-steps">
          {performed.map((step) => (
            <li key={step.entry.step.id} className="of-walks-row compared-step">
              <div>
                <h3>
                  <b>{step.entry.number}</b> <StepName outline={outline} step={step.entry.step} />
                </h3>
                <p>{stepWords(step)}</p>
              </div>
              <StepStrip
                likely={inMinutes(step.planned.likely)}
                planned={null}
                found={
                  step.quantiles && {
                    from: step.quantiles.p10,
                    middle: step.quantiles.p50,
                    to: step.quantiles.p90,
                  }
                }
                observations={step.observations}
              />
              <WalkMarks
                step={step.entry.step.id}
                observations={step.observations}
                beganAt={beganAt}
                onOpen={onOpen}
              />
            </li>
          ))}
        </ul>
        {performed.length === 0 && <p className="hint">{words("walks/no-steps")}</p>}
      </section>
      <GroupSection outline={outline} steps={steps} walks={walks.length} second={second} />
      <ForecastSection scores={told.scores} />
      <p className="hint">{words("follow/advises")}</p>
    </article>
  );
}

const QUARTER = 15 * 60_000;

/** The right edge of the axis: the last finish, up to a quarter of an hour. */
const endOf = (finishes: readonly number[]): Duration =>
  (Math.max(1, Math.ceil(Math.max(...finishes) / QUARTER)) * QUARTER) as Duration;

const ofMinutes = (minutes: number) => (minutes * 60_000) as Duration;

function stepWords({ quantiles, spread, observations }: ComparedStep): string {
  if (!quantiles || spread === null) return words("walks/too-few", { count: observations.length });
  return words("walks/quantiles", {
    middle: ofMinutes(quantiles.p50),
    from: ofMinutes(quantiles.p10),
    to: ofMinutes(quantiles.p90),
    factor: spread,
  });
}
