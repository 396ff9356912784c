import { seededSource } from "../plan/index.ts";
import type { Split } from "./layout.ts";
import { IMPOSSIBLE, Layout, splitAsWritten } from "./layout.ts";
import type { Offered } from "./offered.ts";
import type { SplitModel } from "./split-model.ts";
import { copyOf, Moves } from "./split-moves.ts";

/** The rules of a search. */
export interface SearchRules {
  readonly model: SplitModel;
  readonly seed: number;
  /** How many splits may be laid out. */
  readonly tries: number;
  /** No split costs less: the search ends when one costs as much. */
  readonly bound: number;
  /** Plans and checks a split; `null` when it may not be offered. */
  offer(split: Split): Offered | null;
}

/** What a search found. */
export interface Searched {
  /** The best split that may be offered; `null` when none is better than the file's. */
  readonly best: Offered | null;
  /** The cost of the best, or of the file's split. */
  readonly cost: number;
  /** How many splits were laid out. */
  readonly tried: number;
}

/** So many costs of the past are kept, each of which a try has to beat (Burke and Bykov 2017). */
const PAST = 100;
/** Two searches take turns of so many tries; what they found is then planned and checked. */
const TURN = 500;
/** After so many tries without a better split a search begins elsewhere. */
const STALE = 4_000;

/**
 * Looks for the split that is complete first, by late acceptance (Burke and Bykov 2017): one search begins with the
 * file's split, another beside it with a split of its own. A try gives a step to others or puts a task elsewhere, mostly
 * one that the finish hangs on. It goes by the count of tries: the same seed gives the same answer, and more tries begin
 * with the same ones, so that they never give a worse one.
 */
export function searchSplits({ model, seed, tries, bound, offer }: SearchRules): Searched {
  const random = seededSource(seed);
  const asWritten = splitAsWritten(model);
  const first = new Layout(model).costOf(asWritten);
  let best: { readonly offered: Offered | null; readonly split: Split; readonly cost: number } = {
    offered: null,
    split: asWritten,
    cost: first,
  };
  const barred = model.groups.map(({ options }) => new Uint8Array(options.length));
  const moves = new Moves(model, barred, random);
  if (moves.isEmpty || tries === 0) return { best: null, cost: first, tried: 1 };
  let found: { readonly split: Split; readonly cost: number }[] = [];
  let least = first;
  const note = (split: Split, cost: number) => {
    if (cost >= least) return;
    least = cost;
    found.push({ split: { order: split.order.slice(), choice: split.choice.slice() }, cost });
  };
  const warm = new Chain(model, moves, asWritten, note);
  const cold = new Chain(model, moves, moves.scattered(asWritten), note);
  let tried = 2;
  for (let turn = 0; tried < tries && best.cost > bound; turn += 1) {
    const chain = turn % 2 === 0 ? warm : cold;
    const count = Math.min(TURN, tries - tried);
    chain.run(count);
    tried += count;
    const refused: Split[] = [];
    for (const one of found.toReversed()) {
      if (one.cost >= best.cost) break;
      const offered = offer(one.split);
      if (offered) best = { offered, split: one.split, cost: one.cost };
      else refused.push(one.split);
    }
    found = [];
    least = best.cost;
    const isBarred = refused.some((split) => bar(split, asWritten, barred, offer));
    if (isBarred || refused.length > 0) {
      warm.restart(best.split);
      cold.restart(moves.scattered(asWritten));
    } else if (chain.stale >= STALE) {
      chain.restart(chain === warm ? moves.shaken(best.split) : moves.scattered(asWritten));
    }
  }
  return { best: best.offered, cost: best.cost, tried };
}

/** Bars each choice of a split that may not be offered even alone. Returns whether there is one. */
function bar(
  split: Split,
  asWritten: Split,
  barred: readonly Uint8Array[],
  offer: (split: Split) => Offered | null,
): boolean {
  let isAny = false;
  for (const [group, option] of split.choice.entries()) {
    if (option === 0 || barred[group]?.[option] === 1) continue;
    const alone = { order: asWritten.order, choice: asWritten.choice.slice() };
    alone.choice[group] = option;
    if (offer(alone)) continue;
    const own = barred[group];
    if (own) own[option] = 1;
    isAny = true;
  }
  return isAny;
}

/** One search from a split on. */
class Chain {
  /** How many tries ago the last better split was found. */
  stale = 0;
  readonly #moves: Moves;
  readonly #note: (split: Split, cost: number) => void;
  readonly #layout: Layout;
  readonly #past = new Float64Array(PAST);
  #at = 0;
  #now: Split;
  #next: Split;
  #cost = IMPOSSIBLE;
  #least = IMPOSSIBLE;
  #critical: readonly number[] = [];

  constructor(model: SplitModel, moves: Moves, from: Split, note: (split: Split, cost: number) => void) {
    this.#moves = moves;
    this.#note = note;
    this.#layout = new Layout(model);
    this.#now = copyOf(from);
    this.#next = copyOf(from);
    this.restart(from);
  }

  restart(from: Split): void {
    this.#now = copyOf(from);
    this.#next = copyOf(from);
    this.#cost = this.#layout.costOf(from);
    this.#least = this.#cost;
    this.#critical = criticalIn(this.#layout);
    this.#past.fill(this.#cost);
    this.stale = 0;
    this.#note(this.#now, this.#cost);
  }

  run(count: number): void {
    for (let each = 0; each < count; each += 1) {
      this.#next.order.set(this.#now.order);
      this.#next.choice.set(this.#now.choice);
      this.#moves.change(this.#next, this.#critical, this.#layout);
      const cost = this.#layout.costOf(this.#next);
      const isTaken = cost <= this.#cost || cost <= (this.#past[this.#at] as number);
      if (isTaken) {
        [this.#now, this.#next] = [this.#next, this.#now];
        this.#cost = cost;
        this.#critical = cost === IMPOSSIBLE ? [] : criticalIn(this.#layout);
      }
      this.stale += 1;
      if (this.#cost < this.#least) {
        this.#least = this.#cost;
        this.stale = 0;
        this.#note(this.#now, this.#cost);
      }
      if (this.#cost < (this.#past[this.#at] as number)) this.#past[this.#at] = this.#cost;
      this.#at = (this.#at + 1) % PAST;
    }
  }
}

/** The steps that the finish of a layout hangs on, the last first. */
function criticalIn({ finish, because, end }: Layout): readonly number[] {
  const path: number[] = [];
  let at = finish.indexOf(end);
  while (at >= 0 && path.length <= finish.length) {
    path.push(at);
    at = because[at] ?? -1;
  }
  return path;
}
