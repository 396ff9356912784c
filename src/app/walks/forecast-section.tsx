import type { Duration } from "../../core/units/index.ts";
import type { ForecastScores } from "../../core/walks-compared/index.ts";
import { words } from "../../words/index.ts";

/** Whether the forecasts of these walks were right ([CMP2]); `null` while that is worked out. */
export function ForecastSection({ scores }: { readonly scores: ForecastScores | null }) {
  return (
    <section className="walks-part" aria-labelledby="walks-forecasts">
      <h2 id="walks-forecasts">{words("walks/forecasts")}</h2>
      {scores === null ? (
        <p role="status">{words("walks/forecasts-working")}</p>
      ) : (
        <ScoreWords scores={scores} />
      )}
      <p className="hint">{words("walks/forecasts-how")}</p>
    </section>
  );
}

function ScoreWords({ scores }: { readonly scores: ForecastScores }) {
  const { interval, held, forecasts, walks, crps, plannedCrps, verdict, leftOut, ofShorter } = scores;
  return (
    <>
      {interval ? (
        <>
          <p>
            {words("walks/bands-held", {
              held,
              count: forecasts,
              walks,
              from: Math.floor(interval.from * 100),
              to: Math.ceil(interval.to * 100),
            })}
          </p>
          {crps !== null && plannedCrps !== null && (
            <p>{words("walks/scores", { score: crps as Duration, planned: plannedCrps as Duration })}</p>
          )}
          <p>{words(`walks/verdict-${verdict}`)}</p>
        </>
      ) : (
        <p>{words("walks/forecasts-none")}</p>
      )}
      {leftOut > 0 && <p className="hint">{words("walks/forecasts-left-out", { count: leftOut })}</p>}
      {ofShorter > 0 && <p className="hint">{words("walks/forecasts-shorter", { count: ofShorter })}</p>}
    </>
  );
}
