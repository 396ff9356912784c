import type { Course, Stretch } from "../course/index.ts";
import { isCompleteBy, statesAt } from "../course/index.ts";
import type { Network } from "../order/index.ts";
import type { OutlineStep } from "../procedure/index.ts";
import type { Duration, StepId } from "../units/index.ts";
import { minus, plus } from "../units/index.ts";
import type { ReturnPlan } from "./return-plan.ts";
import { returnPlanAt, standingsAt } from "./return-plan.ts";

/** The most returns that are kept; then all are let go. */
const MOST_KEPT = 4_000;

/**
 * Keeps returns by what they were worked out from: where everybody stands, the states, what of closeout is done, and how long the rest takes.
 * Where nothing binds the way home to the clock, one that begins later is the same, later. It is for plans of one network and one set of
 * windows, whatever their steps take.
 */
export class ReturnMemory {
  readonly #kept = new Map<string, ReturnPlan | null>();
  #last: Asked | null = null;

  /** The return of a plan when the work is broken off at a PET, the same as {@link returnPlanAt} gives ([PLN6]). */
  at(course: Course, pet: Duration): ReturnPlan | null {
    const asked = this.#last?.course === course ? this.#last : askedOf(course);
    this.#last = asked;
    const told = asked.told.get(pet);
    if (told !== undefined) return told;
    const key = keyOf(asked, pet);
    const kept = this.#kept.get(key);
    const plan = kept === undefined ? returnPlanAt(course, pet) : kept && from(kept, pet);
    asked.told.set(pet, plan);
    if (kept !== undefined) return plan;
    if (this.#kept.size >= MOST_KEPT) this.#kept.clear();
    this.#kept.set(key, plan);
    return plan;
  }
}

/** A plan whose returns are asked for one after another. */
interface Asked {
  readonly course: Course;
  readonly closeout: Closeout;
  /** How long the steps of closeout take. */
  readonly times: string;
  /** The returns by the PETs that were asked for. */
  readonly told: Map<Duration, ReturnPlan | null>;
}

function askedOf(course: Course): Asked {
  const closeout = closeoutOf(course);
  const times = closeout.steps.map(({ index }) => course.whereabouts.times[index]?.likely).join();
  return { course, closeout, times, told: new Map() };
}

/** All that a return is worked out from, on one ground. */
function keyOf({ course, closeout, times }: Asked, pet: Duration): string {
  const { steps, waited, isTimed } = closeout;
  const finishOf = (id: StepId): Duration | null => {
    const step = course.steps.get(id);
    return step && isCompleteBy(course, step, pet) ? step.finish : null;
  };
  let key = isTimed ? `${times} ${pet}` : times;
  for (const one of standingsAt(course, pet)) {
    const standing = one?.standing;
    if (!standing) key += " -";
    else if ("place" in standing) key += ` ${standing.place}`;
    else {
      const { from, to, back, on, most, quickest } = standing;
      key += ` ${from}>${to},${back},${on},${most},${quickest}`;
    }
  }
  if (course.outline.procedure.states.length > 0) {
    for (const [, value] of statesAt(course, pet)) key += ` ${value}`;
  }
  key += " ";
  for (const { step } of steps) key += finishOf(step.id) === null ? "0" : "1";
  for (const { step, lag } of waited) {
    const finish = finishOf(step);
    // How long a lag behind what is done still goes on.
    key += ` ${finish === null ? "-" : isTimed ? finish : Math.max(0, minus(plus(finish, lag), pet))}`;
  }
  return key;
}

/** A return that begins at another PET. */
function from(plan: ReturnPlan, pet: Duration): ReturnPlan {
  const later = minus(pet, plan.from);
  if (later === 0) return plan;
  const shifted = ([id, { start, finish }]: [StepId, Stretch]): [StepId, Stretch] => [
    id,
    { start: plus(start, later), finish: plus(finish, later) },
  ];
  return {
    from: pet,
    finish: plus(plan.finish, later),
    total: plan.total,
    crew: plan.crew.map((one) => ({ ...one, home: plus(one.home, later) })),
    // Most who ask look at the times alone.
    get steps() {
      return new Map([...plan.steps].map(shifted));
    },
    broken: plan.broken,
  };
}

/** The closeout of a network, as far as a return reads it. */
interface Closeout {
  readonly steps: readonly OutlineStep[];
  /** What its steps come after. */
  readonly waited: readonly { readonly step: StepId; readonly lag: Duration }[];
  /** Whether the clock, a window or a bound on time keeps it from being the same at another PET. */
  readonly isTimed: boolean;
}

const knownCloseout = new WeakMap<Network, Closeout>();

/** Cached for each network, since a return is asked for at the end of every step. */
function closeoutOf({ outline, network, windows }: Course): Closeout {
  const known = knownCloseout.get(network);
  if (known) return known;
  const steps = outline.steps.filter(({ index, task }) => task.closeout && network.activity.active[index]);
  const found: Closeout = {
    steps,
    waited: steps.flatMap(({ step }) => step.after),
    isTimed: steps.some(
      ({ step }) =>
        step.notBefore !== undefined ||
        step.doneBy !== undefined ||
        step.after.some(({ within }) => within !== null) ||
        step.within.some((id) => windows.get(id)),
    ),
  };
  knownCloseout.set(network, found);
  return found;
}
