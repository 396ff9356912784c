import type { Entry, Fact } from "../../../src/core/log/index.ts";
import type { Location, Outline, OutlineStep } from "../../../src/core/procedure/index.ts";
import { nameOf, referenceDevice } from "./reference-log.ts";
import type { ReferenceDeviation, ReferenceStep } from "./reference-standing.ts";
import { isInside, ReferenceStanding } from "./reference-standing.ts";

/** Which facts need a running clock, by what is left out: the rest may come before the clock is started, or after closing. */
const BEFORE_START = [
  "clock.started",
  "item.moved",
  "supply.read",
  "state.set",
  "note.made",
  "walk.closed",
  "clock.compared",
  "clock.jumped",
  "alert.raised",
  "alert.seen",
];
const AFTER_CLOSING = [
  "walk.reopened",
  "note.made",
  "clock.compared",
  "clock.jumped",
  "alert.raised",
  "alert.seen",
];

/** One walk, changed in place by each entry in turn. */
export class ReferenceWalk extends ReferenceStanding {
  readonly #walk: string;

  constructor(walk: string, outline: Outline) {
    super(outline);
    this.#walk = walk;
  }

  /** Takes an entry in that happened at `at`. Returns whether it had an effect. */
  take(entry: Entry, fact: Fact, at: number): boolean {
    if (entry.wire.subject !== this.#walk || fact.name === "walk.opened") return false;
    if (this.phase === "prepared" && !BEFORE_START.includes(fact.name)) return false;
    if (this.phase === "closed" && !AFTER_CLOSING.includes(fact.name)) return false;
    const actor = entry.wire.actor ?? null;
    switch (fact.name) {
      case "clock.compared":
      case "clock.jumped":
        return true;
      // No tap amends the plan so that it counts; `amendments.test.ts` has those that do.
      case "light.chosen":
      case "plan.amended":
      case "amendment.seen":
      // Nor are these walks rehearsals, which alone carry surprises.
      case "surprise.laid":
      case "surprise.fired":
        return false;
      case "clock.started":
        return this.#start(at);
      case "hold.called":
        return this.#hold(at, fact.reason ?? "", actor);
      case "hold.lifted":
        return this.phase === "held" && this.#lift(at);
      case "walk.closed":
        this.closed = {
          at,
          end: fact.end,
          reason: fact.reason ?? "",
          stuck: fact.stuck ?? false,
          before: this.phase,
        };
        this.#lift(at);
        this.phase = "closed";
        return true;
      case "walk.reopened": {
        const { closed } = this;
        if (closed === null) return false;
        this.reopenings.push({ at, actor, reason: fact.reason, closed });
        this.phase = closed.before;
        this.closed = null;
        const last = this.holds.at(-1);
        if (closed.before === "held" && last) last.until = null;
        return true;
      }
      case "decision.taken":
        return this.#decide(fact.decision, fact.outcome, at);
      case "item.moved":
        return (
          this.#isSomewhere(fact.to) &&
          this.#move(fact.item, fact.to, null, at, entry.wire.actor, fact.reason)
        );
      case "state.set": {
        const { state, value, reason } = fact;
        const asked = this.outline.procedure.states.find(({ id }) => id === state);
        if (!asked || asked.values === "crew" || !asked.values.includes(value)) return false;
        this.stateSettings.push({ at, actor, state, value, reason });
        return true;
      }
      case "supply.read": {
        const { crew, supply, value } = fact;
        if (!this.outline.procedure.supplies.some((one) => one.crew === crew && one.id === supply))
          return false;
        this.readings.push({ at, crew, supply, value });
        return true;
      }
      case "watch.kept":
        if (!this.outline.procedure.watches.some(({ id }) => id === fact.watch)) return false;
        this.keptWatches.push({ at, watch: fact.watch });
        return true;
      case "note.made":
        if (fact.step !== undefined && !this.steps.has(fact.step)) return false;
        this.notes.push({ at, actor, text: fact.text, step: fact.step ?? null });
        return true;
      case "alert.raised": {
        const { alert, level, about = null } = fact;
        const isKnown = this.raised.some((one) => one.alert === alert && one.level === level);
        if (!isKnown) this.raised.push({ at, alert, level, about });
        return true;
      }
      case "alert.seen": {
        const raised = this.raised.filter(({ alert }) => alert === fact.alert);
        const level = fact.level ?? raised.at(-1)?.level ?? "act-now";
        this.seen.push({ at, alert: fact.alert, level, actor });
        return true;
      }
      case "revision.kept":
        return false;
      case "entry.struck":
        throw new Error("strikes are taken account of before");
      case "hub.named":
      case "device.admitted":
      case "hub.vouched":
      case "checkpoint.made":
        throw new Error("what hubs write of themselves is left out before");
      default:
        return this.#mark(entry, fact, at);
    }
  }

  #start(at: number): boolean {
    if (this.phase !== "prepared") return false;
    this.phase = "running";
    this.petZero = at;
    return true;
  }

  #hold(at: number, reason: string, actor: string | null): boolean {
    if (this.phase !== "running") return false;
    this.phase = "held";
    this.holds.push({ from: at, until: null, reason, actor });
    return true;
  }

  #lift(at: number): boolean {
    for (const hold of this.holds) hold.until ??= Math.max(at, hold.from);
    this.phase = "running";
    return true;
  }

  #decide(name: string, outcome: string, at: number): boolean {
    const found = this.outline.decision(name);
    if (!found?.decision.outcomes.includes(outcome) || !this.isActive(found.madeBy)) return false;
    if (this.outcomes.get(name) === outcome) return false;
    this.outcomes.set(name, outcome);
    this.everDecided.add(`${name} ${outcome}`);
    this.decidedAt.set(name, at);
    return true;
  }

  #isSomewhere(to: Location): boolean {
    const { crew, places, items } = this.outline.procedure;
    if ("crew" in to) return crew.some(({ id }) => id === to.crew);
    if ("crews" in to) return to.crews.every((one) => crew.some(({ id }) => id === one));
    return "place" in to ? places.some(({ id }) => id === to.place) : items.some(({ id }) => id === to.item);
  }

  #move(item: string, to: Location, step: string | null, at: number, actor?: string, reason = ""): boolean {
    const { items } = this;
    if (!items.has(item) || isInside(items, to, item)) return false;
    this.moves.push({ at, item, to, step, actor: actor ?? null, reason });
    return true;
  }

  /** An entry about a step, which must be performed as decisions were taken, or were before ([WLK5]). */
  #mark(entry: Entry, fact: Extract<Fact, { step: string }>, at: number): boolean {
    const one = this.outline.step(fact.step);
    const progress = this.steps.get(fact.step);
    if (!one || !progress || !(this.isActive(one) || this.isLeft(one))) return false;
    if (Object.keys(one.step.when ?? {}).some((decision) => !this.outcomes.has(decision))) return false;
    const actor = entry.wire.actor ?? null;
    switch (fact.name) {
      case "step.started":
        if (progress.status !== "open" || (this.isHeldUp(one) && !this.isLeft(one))) return false;
        progress.saidStart = at;
        return true;
      case "step.done":
        if (progress.status === "done") this.#confirmDone(entry, progress, at);
        return progress.status === "open" && this.#done(entry, one, { at, anyway: fact.outOfOrder });
      case "step.skipped":
        if (progress.status !== "open" || this.isLeft(one)) return false;
        Object.assign(progress, { status: "skipped", start: at, finish: at, skipReason: fact.reason });
        progress.completedBy = nameOf(entry);
        if (!one.getAhead) this.deviations.push({ kind: "skipped", step: fact.step, at });
        return true;
      case "step.reopened":
        return this.#reopen(progress, fact.step, { at, reason: fact.reason });
      case "check.counted":
        if (fact.check >= one.step.check.length || progress.counted.includes(fact.check)) return false;
        progress.counted.push(fact.check);
        return true;
      case "confirm.given":
        if (!one.step.confirm || progress.confirmed) return false;
        progress.confirmed = { at, actor };
        return true;
      case "record.taken": {
        const { record, value } = fact;
        const asked = one.step.records.find(({ id }) => id === record);
        if (!asked) return false;
        const outOfRange = value < (asked.min ?? -Infinity) || value > (asked.max ?? Infinity);
        progress.records.push({ record, value, at, actor, outOfRange });
        if (outOfRange) this.deviations.push({ kind: "record-out-of-range", step: fact.step, at, record });
        else this.#correct(fact.step, record);
        return true;
      }
    }
  }

  /** `step.done` of an open step ([WLK2], [WLK4]). */
  #done(entry: Entry, one: OutlineStep, { at, anyway }: { at: number; anyway: boolean }): boolean {
    const progress = this.steps.get(one.step.id);
    const isHeldUp = this.isHeldUp(one) && !this.isLeft(one);
    if (!progress || (isHeldUp && !anyway)) return false;
    const early = isHeldUp ? ["out-of-order"] : this.isLeft(one) ? [] : this.earlyAt(one, at);
    progress.start = Math.min(at, this.startOf(one, isHeldUp));
    progress.finish = at;
    progress.status = "done";
    progress.outOfOrder = isHeldUp;
    progress.completedBy = nameOf(entry);
    for (const { item, to } of one.step.moves) this.#move(item, to, one.step.id, at);
    for (const kind of early) this.deviations.push({ kind, step: one.step.id, at });
    return true;
  }

  /** A value within its limits makes those of the same record before it good. */
  #correct(step: string, record: string): void {
    for (const one of this.deviations) {
      if (one.kind === "record-out-of-range" && one.step === step && one.record === record)
        one.kind = "record-corrected";
    }
  }

  /** A step that is done marked done again: the first mark of each other device confirms it. */
  #confirmDone(entry: Entry, progress: ReferenceStep, at: number): void {
    const marks = [
      progress.completedBy?.split(" ")[0] ?? "",
      ...progress.alsoDone.map(({ source }) => source),
    ];
    const { source, actor } = entry.wire;
    if (marks.map(referenceDevice).includes(referenceDevice(source))) return;
    progress.alsoDone.push({ at, actor: actor ?? null, source });
  }

  #reopen(progress: ReferenceStep, id: string, opening: { at: number; reason: string }): boolean {
    if (progress.status === "open") return false;
    progress.saidStart = progress.status === "done" ? progress.start : opening.at;
    Object.assign(progress, { status: "open", start: null, finish: null, outOfOrder: false, skipReason: "" });
    Object.assign(progress, { confirmed: null, counted: [], completedBy: null, alsoDone: [] });
    progress.reopened.push(opening);
    this.moves = this.moves.filter(({ step }) => step !== id);
    const isUndone = ({ kind, step }: ReferenceDeviation) => step === id && !kind.startsWith("record");
    this.deviations = this.deviations.filter((one) => !isUndone(one));
    return true;
  }
}
