import type { Ways } from "../place/index.ts";
import { waysOf, waysWhile } from "../place/index.ts";
import type { Procedure, StateValues, Step } from "../procedure/index.ts";
import type { Duration, StateId } from "../units/index.ts";
import { NO_TIME, plus } from "../units/index.ts";

/** A move or a step on the way home, with the PETs at which it begins and ends. */
export interface Leg {
  readonly start: Duration;
  readonly finish: Duration;
}

/** A value that a state should have, and the one that it has. */
export interface UnmetState {
  readonly state: StateId;
  readonly value: string;
  readonly is: string;
}

/**
 * The values of states on the way home ([PRO13]): as they stand when the work is broken off, then what the closeout
 * steps set. Steps and moves that rely on a value are entered too, so that nothing sets it otherwise before they are
 * done with it.
 */
export class StatesHome {
  readonly #procedure: Procedure;
  readonly #start: ReadonlyMap<StateId, string> | null;
  /** What was set, in order of time; of two at one time the one that was entered later comes later. */
  readonly #set = new Map<StateId, { readonly at: Duration; readonly value: string }[]>();
  readonly #used = new Map<StateId, { readonly value: string; readonly until: Duration }[]>();
  /** The PETs at which something was set, each once, in order of time. */
  #changes: readonly Duration[] = [];
  /** The states that some route needs. */
  readonly #ofRoutes: readonly StateId[];

  /** Without `values` the states keep nothing from being done. */
  constructor(procedure: Procedure, values: ReadonlyMap<StateId, string> | null) {
    this.#procedure = procedure;
    this.#start = values;
    this.#ofRoutes = statesOfRoutes(procedure);
  }

  #holds(needs: StateValues, from: Duration, until: Duration): boolean {
    const start = this.#start;
    if (start === null) return true;
    return (Object.entries(needs) as [StateId, string][]).every(([state, value]) => {
      let is = start.get(state);
      for (const { at, value: next } of this.#set.get(state) ?? []) {
        if (at <= from) is = next;
        else if (at < until && next !== value) return false;
      }
      return is === value;
    });
  }

  /** The first of the needs that is not met after all that has been set so far; `null` when all are. */
  unmetAtLast(needs: StateValues): UnmetState | null {
    for (const [state, value] of Object.entries(needs) as [StateId, string][]) {
      const is = this.#set.get(state)?.at(-1)?.value ?? this.#start?.get(state);
      if (is !== undefined && is !== value) return { state, value, is };
    }
    return null;
  }

  /** The PETs from `ready` on at which it may come out otherwise whether something can begin: `ready`, then each change. */
  momentsFrom(ready: Duration): readonly Duration[] {
    const next = this.#changes.findIndex((at) => at > ready);
    return next < 0 ? [ready] : [ready, ...this.#changes.slice(next)];
  }

  /**
   * True when the states let a step start at a PET. A state that it would only bring to the value that it has already
   * does not keep it: what was never opened need not be open to be closed.
   */
  letsStart({ needs = {}, sets = {} }: Pick<Step, "needs" | "sets">, pet: Duration): boolean {
    return (Object.entries(needs) as [StateId, string][]).every(
      ([state, value]) =>
        this.#holds({ [state]: value }, pet, pet) ||
        (sets[state] !== undefined && this.#holds({ [state]: sets[state] }, pet, pet)),
    );
  }

  /**
   * The ways that are open for the whole of a move that begins at a PET, and the time that it takes; `null` when there
   * is none. `timeBy` gives the time over some ways.
   */
  openFrom(
    start: Duration,
    timeBy: (ways: Ways) => Duration | null,
  ): { readonly ways: Ways; readonly time: Duration } | null {
    let until = start;
    // A longer move needs its routes for longer, which may leave fewer of them; so this comes to an end.
    for (;;) {
      const end = until;
      const ways = this.#waysWhile((needs) => this.#holds(needs, start, end));
      const time = timeBy(ways);
      if (time === null) return null;
      if (plus(start, time) <= until) return { ways, time };
      until = plus(start, time);
    }
  }

  #waysWhile(holds: (needs: StateValues) => boolean): Ways {
    return this.#ofRoutes.length === 0 ? waysOf(this.#procedure) : waysWhile(this.#procedure, holds);
  }

  /** Enters a move: the states of the routes without which it would take longer are relied on until it ends. */
  moved({ start, finish }: Leg, timeBy: (ways: Ways) => Duration | null): void {
    if (this.#start === null) return;
    const time = finish - start;
    for (const state of this.#ofRoutes) {
      const without = timeBy(
        this.#waysWhile((needs) => !(state in needs) && this.#holds(needs, start, finish)),
      );
      const value = this.#valueAt(state, start);
      if ((without === null || without > time) && value !== undefined) this.#use(state, value, finish);
    }
  }

  #valueAt(state: StateId, pet: Duration): string | undefined {
    return this.#set.get(state)?.findLast(({ at }) => at <= pet)?.value ?? this.#start?.get(state);
  }

  #use(state: StateId, value: string, until: Duration): void {
    this.#used.set(state, [...(this.#used.get(state) ?? []), { value, until }]);
  }

  /** The PET before which a step must not set states otherwise, because steps and moves so far rely on them. */
  mayBeSetFrom(sets: StateValues): Duration {
    const uses = (Object.entries(sets) as [StateId, string][]).flatMap(([state, value]) =>
      (this.#used.get(state) ?? []).filter((use) => use.value !== value),
    );
    return uses.reduce<Duration>((latest, { until }) => (until > latest ? until : latest), NO_TIME);
  }

  /** Enters a step: it relies on what it needs when it starts, and sets what it sets when it is done. */
  did({ start, finish }: Leg, needs: StateValues, sets: StateValues): void {
    if (this.#start === null) return;
    for (const [state, value] of Object.entries(needs) as [StateId, string][]) this.#use(state, value, start);
    for (const [state, value] of Object.entries(sets) as [StateId, string][]) {
      const known = this.#set.get(state) ?? [];
      this.#set.set(
        state,
        [...known, { at: finish, value }].sort((a, b) => a.at - b.at),
      );
      if (!this.#changes.includes(finish)) this.#changes = [...this.#changes, finish].sort((a, b) => a - b);
    }
  }
}

const knownStates = new WeakMap<Procedure, readonly StateId[]>();

/** The states that some route of a procedure needs. Cached for each procedure, since a return is planned from every step. */
function statesOfRoutes(procedure: Procedure): readonly StateId[] {
  const kept = knownStates.get(procedure);
  if (kept) return kept;
  const states = [...new Set(procedure.routes.flatMap(({ needs }) => Object.keys(needs ?? {}) as StateId[]))];
  knownStates.set(procedure, states);
  return states;
}
