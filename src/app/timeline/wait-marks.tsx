import type { Wait } from "../../core/course/index.ts";
import type { ChartFrame } from "./chart-frame.ts";
import { laneTop } from "./chart-layout.ts";
import { waitReason } from "./step-words.ts";
import { WaitMark } from "./wait-mark.tsx";

interface WaitMarksProps {
  readonly frame: ChartFrame;
  readonly waits: readonly Wait[];
}

/** The marks of all waits, each in the lane of the crew member who waits. */
export function WaitMarks({ frame, waits }: WaitMarksProps) {
  const { outline, strands, scale, layout, seenFrom, visible, hatch } = frame;
  return (
    <>
      {waits.map((wait) => {
        const [from, to] = [scale.x(wait.from), scale.x(wait.to)];
        const lane = outline.lane(wait.crew);
        return (
          <WaitMark
            key={`${wait.crew} ${wait.step} ${wait.from}`}
            colour={strands[lane]?.colour ?? "currentColor"}
            dash={strands[lane]?.dash ?? "none"}
            pattern={`${hatch}${lane}`}
            top={laneTop(layout, lane) + layout.lane.barTop + 9}
            height={layout.lane.barHeight - 18}
            from={from}
            to={to}
            seenFrom={Math.min(Math.max(from, seenFrom), to)}
            seenTo={Math.max(Math.min(to, seenFrom + visible), from)}
            reason={waitReason(outline, wait.on)}
          />
        );
      })}
    </>
  );
}
