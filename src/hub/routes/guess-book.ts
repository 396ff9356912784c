import { createHash } from "node:crypto";
import type { Instant } from "../../core/units/index.ts";

/** How wrong codes are answered. */
export interface GuessBookParts {
  /** Wrong codes of one address before it has to wait. */
  readonly free: number;
  readonly now: () => Instant;
}

/** What came of a code: what judging it gave, or for how many seconds its address has to wait, unjudged. */
export type Guessed<T> =
  | { readonly kind: "judged"; readonly value: T }
  | { readonly kind: "wait"; readonly seconds: number };

/** The wait after one wrong code too many, which doubles with each further one, in ms; more would lock out everybody behind an address. */
const FIRST_WAIT = 1_000;
const LONGEST_WAIT = 10_000;
/** Wrong codes are forgotten when no other one came for so long, in ms. */
const FORGOTTEN = 15 * 60_000;
/** Wrong codes of one address that are known again: who enters one twice guesses nothing. */
const KNOWN_AGAIN = 50;
/** Addresses at once, the first of which are forgotten when there are more. */
const MOST_ADDRESSES = 5_000;

interface Guesses {
  count: number;
  notBefore: number;
  last: number;
  readonly wrong: Set<string>;
  /** Resolves when the code before was judged. */
  turn: Promise<unknown>;
}

/** Judges the codes of one address one at a time, and makes it wait after too many wrong ones. */
export class GuessBook {
  readonly #parts: GuessBookParts;
  readonly #guesses = new Map<string, Guesses>();

  constructor(parts: GuessBookParts) {
    this.#parts = parts;
  }

  /** Judges a code of an address in its turn. `judge` says what comes of it, `isWrong` whether that is a wrong guess. */
  async judged<T>(
    address: string,
    code: string,
    judge: () => Promise<T>,
    isWrong: (value: T) => boolean,
  ): Promise<Guessed<T>> {
    const guesses = this.#of(address);
    const turn = guesses.turn.then(async (): Promise<Guessed<T>> => {
      const left = guesses.notBefore - this.#parts.now();
      // Longer than that only a clock that was set back makes it.
      if (left > 0 && left <= LONGEST_WAIT) return { kind: "wait", seconds: Math.ceil(left / 1000) };
      const value = await judge();
      if (isWrong(value)) this.#count(guesses, code);
      return { kind: "judged", value };
    });
    guesses.turn = turn.catch(() => {});
    return turn;
  }

  #of(address: string): Guesses {
    const now = this.#parts.now();
    const there = this.#guesses.get(address);
    if (there && Math.abs(now - there.last) < FORGOTTEN) return there;
    const fresh = {
      count: 0,
      notBefore: 0,
      last: now,
      wrong: new Set<string>(),
      turn: there?.turn ?? Promise.resolve(),
    };
    this.#guesses.delete(address);
    this.#guesses.set(address, fresh);
    const [first] = this.#guesses.keys();
    if (this.#guesses.size > MOST_ADDRESSES && first !== undefined) this.#guesses.delete(first);
    return fresh;
  }

  #count(guesses: Guesses, code: string): void {
    const hash = createHash("sha256").update(code).digest("base64url");
    if (guesses.wrong.has(hash)) return;
    if (guesses.wrong.size < KNOWN_AGAIN) guesses.wrong.add(hash);
    guesses.count += 1;
    guesses.last = this.#parts.now();
    const beyond = guesses.count - this.#parts.free;
    if (beyond > 0) guesses.notBefore = guesses.last + Math.min(LONGEST_WAIT, FIRST_WAIT * 2 ** (beyond - 1));
  }
}
