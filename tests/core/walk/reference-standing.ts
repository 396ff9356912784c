import type { Location, Outline, OutlineStep } from "../../../src/core/procedure/index.ts";

/** A step as the reference has it; times in milliseconds since 1970. */
export interface ReferenceStep {
  status: "open" | "done" | "skipped";
  saidStart: number | null;
  start: number | null;
  finish: number | null;
  outOfOrder: boolean;
  skipReason: string;
  reopened: { at: number; reason: string }[];
  records: { record: string; value: number; at: number; actor: string | null; outOfRange: boolean }[];
  confirmed: { at: number; actor: string | null } | null;
  counted: number[];
  completedBy: string | null;
  alsoDone: { at: number; actor: string | null; source: string }[];
}

/** How a walk was closed. */
export interface ReferenceClosing {
  at: number;
  end: string;
  reason: string;
  stuck: boolean;
  before: "prepared" | "running" | "held" | "closed";
}

/** A hold; `until` is `null` while it lasts. */
export interface ReferenceHold {
  from: number;
  until: number | null;
  reason: string;
  actor: string | null;
}

/** Something done otherwise than planned. */
export interface ReferenceDeviation {
  kind: string;
  step: string | null;
  at: number;
  record?: string;
}

/**
 * How a walk stands, and what can be asked of it. Nothing is kept that could be worked out: every answer is found anew from
 * the steps as they are.
 */
export class ReferenceStanding {
  phase: "prepared" | "running" | "held" | "closed" = "prepared";
  petZero: number | null = null;
  closed: ReferenceClosing | null = null;
  readonly reopenings: { at: number; actor: string | null; reason: string; closed: ReferenceClosing }[] = [];
  readonly steps = new Map<string, ReferenceStep>();
  readonly outcomes = new Map<string, string>();
  /** Every outcome that a decision ever got, as `decision outcome`. */
  readonly everDecided = new Set<string>();
  readonly decidedAt = new Map<string, number>();
  readonly holds: ReferenceHold[] = [];
  readonly notes: { at: number; actor: string | null; text: string; step: string | null }[] = [];
  readonly readings: { at: number; crew: string; supply: string; value: number }[] = [];
  readonly stateSettings: {
    at: number;
    actor: string | null;
    state: string;
    value: string;
    reason: string;
  }[] = [];
  readonly keptWatches: { at: number; watch: string }[] = [];
  readonly raised: { at: number; alert: string; level: string; about: string | null }[] = [];
  readonly seen: { at: number; alert: string; level: string; actor: string | null }[] = [];
  moves: {
    at: number;
    item: string;
    to: Location;
    step: string | null;
    actor: string | null;
    reason: string;
  }[] = [];
  deviations: ReferenceDeviation[] = [];
  protected readonly outline: Outline;

  constructor(outline: Outline) {
    this.outline = outline;
    for (const { step } of outline.steps) {
      this.steps.set(step.id, {
        status: "open",
        saidStart: null,
        start: null,
        finish: null,
        outOfOrder: false,
        skipReason: "",
        reopened: [],
        records: [],
        confirmed: null,
        counted: [],
        completedBy: null,
        alsoDone: [],
      });
    }
  }

  /** Where every item is: all moves that were made, one after another from the start. Those that cannot be are passed over. */
  get items(): Map<string, Location> {
    const items = new Map<string, Location>(this.outline.procedure.items.map(({ id, start }) => [id, start]));
    for (const { item, to } of this.moves) if (!isInside(items, to, item)) items.set(item, to);
    return items;
  }

  /** The first open step of each lane, by the index of its crew member; `null` when none is left. */
  get next(): (string | null)[] {
    return this.outline.crew.map(
      (_, lane) => this.laneOf(lane).find((one) => this.isOpen(one))?.step.id ?? null,
    );
  }

  /** Performed, with decisions that have not been taken coming out as expected. */
  protected isActive({ step }: OutlineStep): boolean {
    return Object.entries(step.when ?? {}).every(([name, outcome]) => {
      const made = this.outline.decision(name);
      return (
        made && this.isActive(made.madeBy) && (this.outcomes.get(name) ?? made.decision.expect) === outcome
      );
    });
  }

  /** On a branch that was in force once and is not any more. */
  protected isLeft(one: OutlineStep): boolean {
    const needed = Object.entries(one.step.when ?? {});
    if (this.isActive(one)) return false;
    return (
      needed.every(([name, outcome]) => this.everDecided.has(`${name} ${outcome}`)) &&
      needed.some(([name, outcome]) => this.outcomes.get(name) !== outcome)
    );
  }

  protected isOpen({ step }: OutlineStep): boolean {
    return this.steps.get(step.id)?.status === "open";
  }

  /** The steps that a crew member performs, in reading order. */
  protected laneOf(lane: number): OutlineStep[] {
    return this.outline.steps.filter((one) => one.performers.includes(lane) && this.isActive(one));
  }

  /** The steps that have to be complete before a step, as its `after` names them, with their lags. */
  #predecessors({ step }: OutlineStep): { one: OutlineStep; lag: number }[] {
    return step.after.flatMap(({ step: id, lag }) => {
      const one = this.outline.step(id);
      return one && this.isActive(one) ? [{ one, lag }] : [];
    });
  }

  /** Whether somebody has yet to come to a step, or a predecessor is not complete. */
  protected isHeldUp(one: OutlineStep): boolean {
    const isEarlier = ({ index }: OutlineStep) => index < one.index;
    const earlier = one.performers.flatMap((lane) => this.laneOf(lane).filter(isEarlier));
    const open = [...earlier, ...this.#predecessors(one).map((before) => before.one)];
    return open.some((before) => this.isOpen(before)) || this.#isAskedAgainFor(one);
  }

  /** Whether a step hangs on a decision whose step was opened again after it was taken, and is open still. */
  #isAskedAgainFor({ step }: OutlineStep): boolean {
    return Object.keys(step.when ?? {}).some((name) => {
      const made = this.outline.decision(name)?.madeBy;
      const reopened = (made && this.steps.get(made.step.id)?.reopened.at(-1)?.at) ?? null;
      const decidedAt = this.decidedAt.get(name) ?? null;
      if (!made || reopened === null || decidedAt === null) return false;
      return this.isOpen(made) && this.isActive(made) && reopened > decidedAt;
    });
  }

  /** When each performer had last completed everything up to its first open step; without those who had completed nothing. */
  #freeOf({ performers }: OutlineStep): number[] {
    return performers.flatMap((lane) => {
      const steps = this.laneOf(lane);
      const firstOpen = steps.findIndex((one) => this.isOpen(one));
      const past = firstOpen === -1 ? steps : steps.slice(0, firstOpen);
      return past.flatMap(({ step }) => this.steps.get(step.id)?.finish ?? []);
    });
  }

  /** When a step started that somebody says is done: as said, else as soon as it could ([WLK2]). */
  protected startOf(one: OutlineStep, isHeldUp: boolean): number {
    const said = this.steps.get(one.step.id)?.saidStart ?? null;
    if (said !== null) return said;
    const soonest = isHeldUp || this.isLeft(one) ? null : this.#letFrom(one, this.#readyFor(one));
    return soonest ?? Math.max(this.petZero ?? 0, ...this.#freeOf(one));
  }

  #readyFor(one: OutlineStep): number {
    const decided = Object.keys(one.step.when ?? {}).flatMap((name) => this.decidedAt.get(name) ?? []);
    return Math.max(this.petZero ?? 0, ...this.#freeOf(one), ...this.#lagsOf(one, 0), ...decided);
  }

  /** When the time after each predecessor is over, where it lasts no less than `shortest`. */
  #lagsOf(one: OutlineStep, shortest: number): number[] {
    return this.#predecessors(one).flatMap(({ one: { step }, lag }) => {
      const finish = this.steps.get(step.id)?.finish ?? null;
      return finish === null || lag < shortest ? [] : [finish + lag];
    });
  }

  /** What was not over when a step was marked that nobody holds up: running times first, then a window or a hold. */
  protected earlyAt(one: OutlineStep, at: number): string[] {
    const lags = this.#lagsOf(one, 1).filter((over) => over > at);
    const found = lags.map(() => "lag-not-over");
    const ready = this.#readyFor(one);
    const start = this.#letFrom(one, ready);
    const isHeld = this.holds.some(({ from, until }) => until === null && from <= (start ?? 0));
    const withoutWindows = this.#letFrom({ ...one, step: { ...one.step, within: [] } }, ready);
    if (start === null || (start > at && start !== withoutWindows)) return [...found, "window-not-over"];
    return isHeld && start <= at ? [...found, "hold-not-over"] : found;
  }

  /** From a time on, the first outside every hold and so that the step fits its windows; `null` when no window fits any more. */
  #letFrom(one: OutlineStep, from: number): number | null {
    for (let at = from; ; ) {
      const over = this.holds.find((hold) => hold.until !== null && hold.from <= at && at < hold.until);
      const opening = this.#fitFrom(one, at);
      if (over?.until) at = over.until;
      // The hold has not been lifted: whoever marks the step done now knows that it was begun.
      else if (this.holds.some((hold) => hold.until === null && hold.from <= at)) return at;
      else if (opening === at || opening === null) return opening;
      else at = opening;
    }
  }

  #fitFrom({ step }: OutlineStep, from: number): number | null {
    const zero = this.petZero ?? 0;
    const windows = step.within.map((id) => {
      const spans = this.outline.procedure.windows.find((window) => window.id === id)?.spans ?? [];
      return spans.map((span) =>
        span.clock === "pet" ? { from: zero + span.from, to: zero + span.to } : span,
      );
    });
    const times = [from, ...windows.flat().map((span) => span.from)].filter((time) => time >= from);
    const length = step.time?.likely ?? 0;
    const isFit = (at: number) =>
      windows.every((spans) => spans.some((span) => span.from <= at && at + length <= span.to));
    return times.sort((a, b) => a - b).find(isFit) ?? null;
  }
}

/** Whether a location is an item, or is packed in it, however deep. */
export function isInside(items: ReadonlyMap<string, Location>, location: Location, item: string): boolean {
  if (!("item" in location)) return false;
  const holder = items.get(location.item);
  return location.item === item || (holder !== undefined && isInside(items, holder, item));
}
