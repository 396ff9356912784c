import type { Duration } from "../units/index.ts";
import { earliestFit } from "../window/index.ts";
import type { ModelStep, SplitModel } from "./split-model.ts";

/** Who does what and in which order: the tasks in order, and the choice of each group. */
export interface Split {
  readonly order: Int32Array;
  readonly choice: Int32Array;
}

/** What a layout costs that cannot be laid out. */
export const IMPOSSIBLE = Number.POSITIVE_INFINITY;

/** A deadline missed by some time weighs so many times that time in the finish: nothing gained makes up for it. */
const LATE = 10_000;

const NOT_YET = -1;

/**
 * Lays the steps of a model out one after another, each as early as its performers, what it waits for, what it uses and
 * its windows let it: what {@link planOf} does with the procedure that is made of it. One layout is used over and over.
 */
export class Layout {
  /** PET of each step in ms; −1 before it is laid out. */
  readonly start: Float64Array;
  readonly finish: Float64Array;
  /** The step that lets each one start last; −1 when none does. */
  readonly because: Int32Array;
  readonly laneReady: Float64Array;
  readonly laneLast: Int32Array;
  readonly lanePlace: Int32Array;
  readonly laneAnchor: Int32Array;
  readonly held: Int32Array;
  /** When the last step that changed a thing is complete, and the last of those that only needed it since. */
  readonly changedAt: Float64Array;
  readonly neededTo: Float64Array;
  readonly changedBy: Int32Array;
  readonly neededBy: Int32Array;
  /** For each lane the steps that have begun and are not laid out yet. */
  readonly begunLeft: Int32Array;
  /** PET at which all that is laid out is complete. */
  end = 0;
  /** By how much deadlines are missed, in ms together. */
  late = 0;
  readonly #model: SplitModel;
  readonly #blocked: Uint8Array;
  readonly #waiting: number[] = [];

  constructor(model: SplitModel) {
    this.#model = model;
    const { steps, laneCount, held } = model;
    this.start = new Float64Array(steps.length);
    this.finish = new Float64Array(steps.length);
    this.because = new Int32Array(steps.length);
    this.laneReady = new Float64Array(laneCount);
    this.laneLast = new Int32Array(laneCount);
    this.lanePlace = new Int32Array(laneCount);
    this.laneAnchor = new Int32Array(laneCount);
    this.held = new Int32Array(held.length);
    this.changedAt = new Float64Array(held.length);
    this.neededTo = new Float64Array(held.length);
    this.changedBy = new Int32Array(held.length);
    this.neededBy = new Int32Array(held.length);
    this.begunLeft = new Int32Array(laneCount);
    this.#blocked = new Uint8Array(laneCount);
    this.reset();
  }

  /** Nothing is laid out, and everybody is at their start. */
  reset(): void {
    const { starts, tethers, held, now, begunIn } = this.#model;
    this.finish.fill(NOT_YET);
    this.start.fill(NOT_YET);
    this.because.fill(-1);
    this.laneReady.fill(now);
    this.laneLast.fill(-1);
    this.lanePlace.set(starts);
    for (let lane = 0; lane < tethers.length; lane += 1) this.laneAnchor[lane] = tethers[lane]?.anchor ?? -1;
    this.held.set(held);
    this.changedAt.fill(0);
    this.neededTo.fill(0);
    this.changedBy.fill(-1);
    this.neededBy.fill(-1);
    this.begunLeft.set(begunIn);
    this.end = 0;
    this.late = 0;
  }

  /** Becomes the same as another layout of the model. */
  become(other: Layout): void {
    this.start.set(other.start);
    this.finish.set(other.finish);
    this.because.set(other.because);
    this.laneReady.set(other.laneReady);
    this.laneLast.set(other.laneLast);
    this.lanePlace.set(other.lanePlace);
    this.laneAnchor.set(other.laneAnchor);
    this.held.set(other.held);
    this.changedAt.set(other.changedAt);
    this.neededTo.set(other.neededTo);
    this.changedBy.set(other.changedBy);
    this.neededBy.set(other.neededBy);
    this.begunLeft.set(other.begunLeft);
    this.end = other.end;
    this.late = other.late;
  }

  /** Lays a whole split out. Returns its finish in ms, with what it misses deadlines by; {@link IMPOSSIBLE} when it cannot be. */
  costOf({ order, choice }: Split): number {
    const { tasks, hasForward } = this.#model;
    this.reset();
    if (hasForward) return this.#inTurns({ order, choice });
    for (let at = 0; at < order.length; at += 1) {
      const own = (tasks[order[at] as number] as { readonly steps: readonly number[] }).steps;
      for (let each = 0; each < own.length; each += 1)
        if (!this.append(own[each] as number, choice)) return IMPOSSIBLE;
    }
    return this.cost;
  }

  /** The finish of what is laid out, with what it misses deadlines by. */
  get cost(): number {
    return this.end + this.late * LATE;
  }

  /** Goes over the steps again and again, past those that wait for one that stands behind them. */
  #inTurns({ order, choice }: Split): number {
    const { tasks, steps } = this.#model;
    let left = [...order].flatMap((task) => tasks[task]?.steps ?? []);
    while (left.length > 0) {
      this.#blocked.fill(0);
      this.#waiting.length = 0;
      for (const step of left) {
        const lanes = this.#standOf(step, choice).lanes;
        const own = steps[step] as ModelStep;
        const waits =
          lanes.some((lane) => this.#blocked[lane] === 1) ||
          (own.past === null && own.after.some((from) => this.finish[from] === NOT_YET));
        if (!waits) {
          if (!this.append(step, choice)) return IMPOSSIBLE;
          continue;
        }
        for (const lane of lanes) this.#blocked[lane] = 1;
        this.#waiting.push(step);
      }
      if (this.#waiting.length === left.length) return IMPOSSIBLE;
      left = [...this.#waiting];
    }
    return this.cost;
  }

  #standOf(step: number, choice: Int32Array) {
    const { steps, groups, groupOf, seatOf } = this.#model;
    const group = groupOf[step] as number;
    const option = groups[group]?.options[choice[group] as number] as readonly number[];
    const own = steps[step] as ModelStep;
    return own.stands[option[seatOf[step] as number] as number] as ModelStep["stands"][number];
  }

  /** Lays out the next step of its lanes, in the stand that the choices of the groups say; false when that is impossible. */
  append(step: number, choice: Int32Array): boolean {
    const model = this.#model;
    const own = model.steps[step] as ModelStep;
    const { lanes, needs, time, uses } = this.#standOf(step, choice);
    if (own.hasBegun) this.#takeUp(lanes);
    else for (const lane of lanes) if (this.#wouldComeBefore(own, lane)) return false;
    if (own.past) {
      const { start, finish } = own.past;
      this.start[step] = start;
      this.finish[step] = finish;
      if (finish > this.end) this.end = finish;
      this.#leave(step, { lanes, needs, uses, done: finish, own });
      return true;
    }
    const { travel, reach, placeCount, tethers } = model;
    let begins = own.notBefore;
    let because = -1;
    let length = time;
    for (let seat = 0; seat < lanes.length; seat += 1) {
      const lane = lanes[seat] as number;
      const need = needs[seat] as number;
      const at = this.lanePlace[lane] as number;
      let ready = this.laneReady[lane] as number;
      if (need >= 0 && at >= 0 && need !== at) ready += travel[at * placeCount + need] as number;
      if (ready === IMPOSSIBLE) return false;
      if (ready >= begins) {
        begins = ready;
        because = this.laneLast[lane] as number;
      }
      const place = need >= 0 ? need : at;
      if (time < 0 && place >= 0) length = Math.max(length, travel[place * placeCount + own.to] as number);
      const tether = tethers[lane];
      if (tether && place >= 0) {
        const anchor = this.laneAnchor[lane] as number;
        if (anchor >= 0 && (reach[anchor * placeCount + place] as number) > tether.length) return false;
        if (anchor >= 0 && own.to >= 0 && (reach[anchor * placeCount + own.to] as number) > tether.length)
          return false;
      }
    }
    if (length < 0 || length === IMPOSSIBLE) return false;
    const { after, lags, within } = own;
    for (let link = 0; link < after.length; link += 1) {
      const from = after[link] as number;
      const done = this.finish[from] as number;
      if (done === NOT_YET) return false;
      if (done + (lags[link] as number) > begins) {
        begins = done + (lags[link] as number);
        because = from;
      }
    }
    for (let use = 0; use < uses.length; use += 3) {
      const thing = uses[use] as number;
      if (this.held[thing] !== uses[use + 1]) return false;
      if ((this.changedAt[thing] as number) > begins) {
        begins = this.changedAt[thing] as number;
        because = this.changedBy[thing] as number;
      }
      if (uses[use + 1] !== uses[use + 2] && (this.neededTo[thing] as number) > begins) {
        begins = this.neededTo[thing] as number;
        because = this.neededBy[thing] as number;
      }
    }
    if (own.windows.length > 0) {
      const fit = earliestFit(begins as Duration, length as Duration, own.windows, model.spans);
      if (!fit) return false;
      if (fit.start > begins) because = -1;
      begins = fit.start;
    }
    for (let link = 0; link < after.length; link += 1) {
      const most = (this.finish[after[link] as number] as number) + (within[link] as number);
      if (begins > most) this.late += begins - most;
    }
    const done = begins + length;
    if (done > own.doneBy) this.late += done - own.doneBy;
    this.start[step] = begins;
    this.finish[step] = done;
    this.because[step] = because;
    if (done > this.end) this.end = done;
    this.#leave(step, { lanes, needs, uses, done, own });
    return true;
  }

  /** Counts off a step that has begun. */
  #takeUp(lanes: Int32Array): void {
    for (const lane of lanes) this.begunLeft[lane] = (this.begunLeft[lane] as number) - 1;
  }

  /** Whether a step would come before one that has begun in a lane, and does not in the file ([WLK6]). */
  #wouldComeBefore({ ahead }: ModelStep, lane: number): boolean {
    return (this.begunLeft[lane] as number) > (ahead[lane] as number);
  }

  /** Notes where everybody and everything is when a step is complete. */
  #leave(
    step: number,
    {
      lanes,
      needs,
      uses,
      done,
      own,
    }: Pick<ModelStep["stands"][number], "lanes" | "needs" | "uses"> & {
      readonly done: number;
      readonly own: ModelStep;
    },
  ): void {
    for (let seat = 0; seat < lanes.length; seat += 1) {
      const lane = lanes[seat] as number;
      // What was done out of order lets nobody go before what is still to come.
      if (done > (this.laneReady[lane] as number)) this.laneReady[lane] = done;
      this.laneLast[lane] = step;
      if ((needs[seat] as number) >= 0) this.lanePlace[lane] = needs[seat] as number;
      // Whoever's place is not followed is nowhere, also when the others go somewhere.
      if (own.to >= 0 && this.#model.isPlaced[lane] === 1) this.lanePlace[lane] = own.to;
      if (own.anchor >= 0) this.laneAnchor[lane] = own.anchor;
    }
    for (let use = 0; use < uses.length; use += 3) {
      const thing = uses[use] as number;
      if (uses[use + 1] === uses[use + 2]) {
        if (done > (this.neededTo[thing] as number)) {
          this.neededTo[thing] = done;
          this.neededBy[thing] = step;
        }
        continue;
      }
      this.held[thing] = uses[use + 2] as number;
      this.changedAt[thing] = done;
      this.changedBy[thing] = step;
      this.neededTo[thing] = 0;
      this.neededBy[thing] = -1;
    }
  }
}

/** The split that the file has. */
export function splitAsWritten({ tasks, groups }: SplitModel): Split {
  return { order: Int32Array.from(tasks, (_, index) => index), choice: new Int32Array(groups.length) };
}
