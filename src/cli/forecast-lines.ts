import type { Duration } from "../core/units/index.ts";
import type { ForecastScores } from "../core/walks-compared/index.ts";
import { words } from "../words/index.ts";

/** How forecasts did, one line each ([CMP2]). */
export function forecastLines(scores: ForecastScores): readonly string[] {
  const { forecasts, walks, held, interval, crps, plannedCrps, verdict } = scores;
  if (!interval) return [`${words("cli/no-forecasts")}\n`];
  const share = words("cli/forecasts", {
    held,
    count: forecasts,
    from: Math.floor(interval.from * 100),
    to: Math.ceil(interval.to * 100),
    walks,
  });
  const lines = [share];
  if (crps !== null && plannedCrps !== null)
    lines.push(words("cli/forecast-scores", { score: crps as Duration, planned: plannedCrps as Duration }));
  lines.push(words(`cli/forecast-${verdict}`));
  return lines.map((line) => `${line}\n`);
}
