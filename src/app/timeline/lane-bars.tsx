import type { StepId } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { barLabel } from "./bar-label.ts";
import type { ChartFrame } from "./chart-frame.ts";
import { laneTop } from "./chart-layout.ts";
import type { LaneBar } from "./lane-bar.ts";
import { shownFinish, shownStart } from "./lane-bar.ts";
import { StepBar } from "./step-bar.tsx";
import type { TimeScale } from "./time-scale.ts";

interface LaneBarsProps {
  readonly frame: ChartFrame;
  readonly lanes: readonly (readonly LaneBar[])[];
  readonly chosen: LaneBar | null;
  /** The bar that the Tab key reaches; `null` without bars. */
  readonly reachable: LaneBar | null;
  /** The steps that get a mark of their own, with what it means in words; none unless given. */
  readonly marked?: ReadonlyMap<StepId, string>;
}

const NONE: ReadonlyMap<StepId, string> = new Map();

/** The bars of all lanes. */
export function LaneBars({ frame, lanes, chosen, reachable, marked = NONE }: LaneBarsProps) {
  const { outline, strands, scale, layout, seenFrom, now } = frame;
  return (
    <>
      {lanes.map((laneBars, lane) => {
        const strand = strands[lane];
        if (!strand) return null;
        return laneBars.map((bar) => {
          const { planned, slack, flown, entry, key } = bar;
          const inWork = flown?.stage === "in-work";
          return (
            <StepBar
              key={key}
              barKey={key}
              strand={strand}
              top={laneTop(layout, lane)}
              layout={layout.lane}
              label={[barLabel(outline, bar), marked.get(entry.step.id) ?? []]
                .flat()
                .join(words("figures/between"))}
              marked={marked.has(entry.step.id)}
              number={entry.number}
              action={entry.step.do}
              joint={entry.performers.length > 1}
              onCriticalPath={bar.onCriticalPath}
              selected={chosen?.key === key}
              reachable={reachable?.key === key}
              plannedFrom={planned ? scale.x(planned.start) : null}
              plannedTo={planned ? scale.x(planned.finish) : 0}
              latest={slack ? scale.x(slack.latestFinish) : 0}
              flownFrom={flown ? scale.x(flown.start) : null}
              flownTo={flown ? scale.x(flown.finish) : 0}
              stage={flown?.stage ?? null}
              seenFrom={straddles(seenFrom, bar, scale) ? seenFrom : 0}
              now={inWork && now !== null ? scale.x(now) : 0}
            />
          );
        });
      })}
    </>
  );
}

/** True when the left edge of the visible part lies within a bar. */
const straddles = (x: number, bar: LaneBar, scale: TimeScale) =>
  scale.x(shownStart(bar)) < x && x < scale.x(shownFinish(bar));
