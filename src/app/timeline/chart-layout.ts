/** The heights of the parts of a lane, in px from the lane's top. */
export interface LaneLayout {
  readonly height: number;
  readonly plannedTop: number;
  readonly plannedHeight: number;
  /** The upper of the two lines below a bar on the critical path. */
  readonly underline: number;
  readonly tail: number;
  /** The bar with the words: as flown in a walk, otherwise as planned. */
  readonly barTop: number;
  readonly barHeight: number;
}

const PLAN_LANE: LaneLayout = {
  height: 78,
  plannedTop: 12,
  plannedHeight: 38,
  underline: 53,
  tail: 64,
  barTop: 12,
  barHeight: 38,
};

const LIVE_LANE: LaneLayout = {
  height: 98,
  plannedTop: 10,
  plannedHeight: 14,
  underline: 26.5,
  tail: 34,
  barTop: 42,
  barHeight: 38,
};

/** Heights of the whole chart, in px. */
export interface ChartLayout {
  readonly axis: number;
  readonly tasksTop: number;
  readonly windowsTop: number;
  readonly lanesTop: number;
  readonly lane: LaneLayout;
  readonly footTop: number;
  readonly height: number;
}

export const SPAN_ROW = 28;
const AXIS = 34;
const FOOT_ROW = 26;

/** What the heights of a chart depend on. */
interface ChartContent {
  /** True when the chart shows a walk as flown above the plan. */
  readonly live: boolean;
  readonly lanes: number;
  readonly taskRows: number;
  readonly windowRows: number;
  readonly footRows: number;
}

/**
 * Stacks the axis, the rows of tasks and windows, the lanes, and the foot in which the finish and the limit are named.
 */
export function chartLayoutOf({ live, lanes, taskRows, windowRows, footRows }: ChartContent): ChartLayout {
  const lane = live ? LIVE_LANE : PLAN_LANE;
  const windowsTop = AXIS + taskRows * SPAN_ROW;
  const lanesTop = windowsTop + windowRows * SPAN_ROW;
  const footTop = lanesTop + lanes * lane.height;
  return {
    axis: AXIS,
    tasksTop: AXIS,
    windowsTop,
    lanesTop,
    lane,
    footTop,
    height: footTop + footRows * FOOT_ROW + 6,
  };
}

/** The top of a lane. */
export function laneTop({ lanesTop, lane }: ChartLayout, index: number): number {
  return lanesTop + index * lane.height;
}

/** The baseline of a row of the foot. */
export function footLine({ footTop }: ChartLayout, row: number): number {
  return footTop + row * FOOT_ROW + 19;
}
