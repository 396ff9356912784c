import { useDeferredValue, useMemo } from "react";
import { lightFor } from "../../core/light/index.ts";
import { lightSourceOf, scanStarts, startMatters } from "../../core/plan/index.ts";
import type { Outline } from "../../core/procedure/index.ts";
import type { Duration, Instant } from "../../core/units/index.ts";
import { formatInstant, parseInstant, plus } from "../../core/units/index.ts";
import { HORIZON } from "../../core/window/index.ts";
import { words } from "../../words/index.ts";
import { LightField } from "./light-field.tsx";
import { StartScanChart } from "./start-scan-chart.tsx";
import type { ProcedureLight } from "./use-procedure-light.ts";

interface LightAndStartProps {
  readonly outline: Outline;
  readonly source: ProcedureLight;
  readonly start: Instant;
  readonly onStart: (start: Instant) => void;
}

const DAY = 86_400_000 as Duration;
const MINUTE = 60_000 as Duration;

/** Fields for the source of day and night and the instant of PET 0, with a chart of the best starts. */
export function LightAndStart({ outline, source: chosen, start, onStart }: LightAndStartProps) {
  const { choice } = chosen;
  const day = (Math.floor(useDeferredValue(start) / DAY) * DAY) as Instant;
  const light = useMemo(() => {
    const source = choice && lightSourceOf(choice);
    return source && lightFor(source, day, plus(DAY, HORIZON));
  }, [choice, day]);
  const matters = startMatters(outline, light);
  const scan = useMemo(
    () => (matters === "yes" ? scanStarts(outline, light, day, DAY / MINUTE, MINUTE) : null),
    [outline, light, day, matters],
  );
  const opens = firstOpening(outline);
  return (
    <section className="light-and-start" aria-label={words("light/light-and-start")}>
      <label className="field light-start">
        <span>{words("light/start")}</span>
        <input
          type="datetime-local"
          value={formatInstant(start).slice(0, 16)}
          onChange={(event) => {
            const next = parseInstant(`${event.target.value.slice(0, 16)}:00Z`);
            if (next !== null) onStart(next);
          }}
        />
      </label>
      <LightField procedure={outline.procedure} at={start} source={chosen} />
      {scan && (
        <StartScanChart
          outline={outline}
          scan={scan}
          light={light}
          limit={outline.procedure.limits.elapsed ?? null}
          start={start}
          onStart={onStart}
        />
      )}
      {scan && opens && Math.floor(opens.at / DAY) * DAY !== day && (
        <p>
          {words("light/first-opens", { window: opens.window, at: opens.at })}{" "}
          <button type="button" className="plain-button" onClick={() => onStart(opens.at)}>
            {words("light/go-there")}
          </button>
        </p>
      )}
      {matters === "yes" && !scan && <p>{words("light/scan-none")}</p>}
      {matters === "no" && <p>{words("light/start-no-matter")}</p>}
      {matters === "unknown" && <p>{words("light/start-unknown")}</p>}
    </section>
  );
}

/** The window with an instant of its own that opens first, and when, to the minute; `null` without one. */
function firstOpening({ procedure }: Outline): { readonly window: string; readonly at: Instant } | null {
  const all = procedure.windows.flatMap(({ id, label, spans = [] }) =>
    spans.flatMap((span) =>
      span.clock === "utc"
        ? [{ window: label ?? id, at: (Math.floor(span.from / MINUTE) * MINUTE) as Instant }]
        : [],
    ),
  );
  return all.reduce<(typeof all)[number] | null>(
    (first, one) => (first && first.at <= one.at ? first : one),
    null,
  );
}
