import { memo } from "react";
import type { Task } from "../../core/procedure/index.ts";
import type { Duration } from "../../core/units/index.ts";
import type { ChartLayout } from "./chart-layout.ts";
import { SPAN_ROW } from "./chart-layout.ts";
import type { LaneBar } from "./lane-bar.ts";
import { shownFinish, shownStart } from "./lane-bar.ts";
import { stackSpans } from "./stack-spans.ts";
import { fittedText } from "./step-words.ts";
import type { TimeScale } from "./time-scale.ts";

/** A task from its first start to its last finish, in PET, with the row in which it is drawn. */
export interface TaskSpan {
  readonly task: Task;
  /** The number as printed, counted from 1. */
  readonly number: number;
  readonly from: Duration;
  readonly to: Duration;
  readonly row: number;
}

/** When each task is under way, as shown. Tasks without a bar are left out. */
export function taskSpansOf(tasks: readonly Task[], bars: readonly LaneBar[]): TaskSpan[] {
  const spans = tasks.flatMap((task, index) => {
    const own = bars.filter(({ entry }) => entry.task === task);
    if (own.length === 0) return [];
    const from = own.reduce((first, bar) => Math.min(first, shownStart(bar)), Number.POSITIVE_INFINITY);
    const to = own.reduce((last, bar) => Math.max(last, shownFinish(bar)), 0);
    return [{ task, number: index + 1, from: from as Duration, to: to as Duration }];
  });
  return stackSpans(spans);
}

interface TaskHeadsProps {
  readonly spans: readonly TaskSpan[];
  readonly scale: TimeScale;
  readonly layout: ChartLayout;
  /** The approximate x of the left edge of the visible part. Names move along with it. */
  readonly seenFrom: number;
}

/** The names of the tasks above the time they take. */
export function TaskHeads({ spans, scale, layout, seenFrom }: TaskHeadsProps) {
  return (
    <g>
      {spans.map(({ task, number, from, to, row }) => (
        <TaskHead
          key={task.id}
          left={scale.x(from)}
          nameLeft={Math.max(scale.x(from), Math.min(seenFrom, scale.x(to)))}
          right={scale.x(to)}
          top={layout.tasksTop + row * SPAN_ROW}
          number={number}
          title={task.title}
        />
      ))}
    </g>
  );
}

interface TaskHeadProps {
  readonly nameLeft: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly number: number;
  readonly title: string;
}

const LETTER = 8.2;

const TaskHead = memo(function TaskHead({ left, nameLeft, right, top, number, title }: TaskHeadProps) {
  const room = right - nameLeft - 10;
  const label = String(number);
  const words = fittedText(title, room - label.length * LETTER - 8, LETTER);
  return (
    <g className="timeline-task">
      <path
        d={`M${left + 1} ${top + SPAN_ROW - 2}V${top + 5}H${Math.max(left + 2, right - 1)}V${top + SPAN_ROW - 2}`}
      />
      {room >= label.length * LETTER && (
        <text x={nameLeft + 6} y={top + SPAN_ROW / 2 + 6}>
          <tspan className="timeline-number">{label}</tspan>
          {words && <tspan dx={7}>{words}</tspan>}
        </text>
      )}
    </g>
  );
});
