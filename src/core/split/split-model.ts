import type { OutlineStep } from "../procedure/index.ts";
import type { PlaceId, StepId, WindowId } from "../units/index.ts";
import type { WindowSpans } from "../window/index.ts";
import type { Stand } from "./stand.ts";

/** A stand of a step, by indices: lanes, places, and what it takes from one value to another. */
export interface ModelStand {
  readonly lanes: Int32Array;
  /** For each lane the place where the step begins; −1 where it does not matter. */
  readonly needs: Int32Array;
  /** In ms; −1 for a translation that takes as long as the way. */
  readonly time: number;
  /** Things used, three numbers each: which, the value found, the value left. */
  readonly uses: Int32Array;
}

/** When a step began that has begun, in ms of PET. */
export interface Past {
  readonly start: number;
  /** When it was complete, or is expected to be. */
  readonly finish: number;
  /** False while it is in work. */
  readonly isOver: boolean;
}

/** A step of the plan by indices. Places are −1 where there is none. */
export interface ModelStep {
  /** Reading order index in the outline. */
  readonly index: number;
  readonly id: StepId;
  readonly task: number;
  readonly stands: readonly ModelStand[];
  /** Who could do it, as in the file; the first are those who do it there. */
  readonly writtenStands: readonly Stand[];
  readonly to: number;
  readonly anchor: number;
  readonly notBefore: number;
  readonly doneBy: number;
  /** The steps that must be complete before, with the lag of each, and the longest time that may pass. */
  readonly after: Int32Array;
  readonly lags: Float64Array;
  readonly within: Float64Array;
  readonly windows: readonly WindowId[];
  /** `null` for a step to come. */
  readonly past: Past | null;
  /** True for a step that nothing new may come before in a lane ([WLK6]). */
  readonly hasBegun: boolean;
  /** For each lane that it is in in the file: the steps that have begun and stand behind it there. */
  readonly ahead: Int32Array;
}

/** Steps that change hands together, since what they hold passes between them. */
export interface Group {
  readonly steps: readonly number[];
  /** For each choice the stands of the steps, in their order. The first choice is the file's. */
  readonly options: readonly (readonly number[])[];
}

/** A task of the procedure; its steps are those of the plan that are not laid anew. */
export interface ModelTask {
  readonly steps: readonly number[];
  /** Its place among the tasks may be changed. */
  readonly isFree: boolean;
}

/** A crew member's tether, by indices. */
interface ModelTether {
  readonly anchor: number;
  readonly length: number;
}

/** The plan of a procedure by indices, made once, for laying it out many times ([FIT3]). */
export interface SplitModel {
  readonly steps: readonly ModelStep[];
  readonly tasks: readonly ModelTask[];
  readonly groups: readonly Group[];
  /** The group of each step, and its position there. */
  readonly groupOf: Int32Array;
  readonly seatOf: Int32Array;
  readonly laneCount: number;
  /** PET in ms before which nothing more begins. */
  readonly now: number;
  /** For each lane the steps that have begun. */
  readonly begunIn: Int32Array;
  /** Where each lane is at PET 0; −1 where that is not known. */
  readonly starts: Int32Array;
  /** 1 for each lane whose place is followed. */
  readonly isPlaced: Uint8Array;
  readonly tethers: readonly (ModelTether | null)[];
  readonly placeCount: number;
  /** The time of the quickest way from one place to another, in ms; infinite where none leads there. Row by row. */
  readonly travel: Float64Array;
  /** The length of the shortest way, in metres. */
  readonly reach: Float64Array;
  /** What each thing that is used is at PET 0. */
  readonly held: Int32Array;
  readonly spans: WindowSpans;
  /** True where one task must stay before another: row by row. */
  readonly stays: Uint8Array;
  /** True when a step may wait for one of a task that stands behind its own. */
  readonly hasForward: boolean;
  /** The steps of the outline that are laid anew. */
  readonly relaid: ReadonlySet<number>;
  /** The place where each performer of a step of the outline has to be, by seat. */
  readonly needOf: (entry: OutlineStep, seat: number) => PlaceId | null;
}
