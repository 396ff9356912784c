import type { Said } from "../../words/index.ts";
import type { Instant } from "../units/index.ts";
import { Listeners } from "../units/index.ts";
import type { LinkState } from "./link-state.ts";
import { UNLINKED } from "./link-state.ts";

/** The two directions of a link, each of which may be in trouble on its own. */
export type Direction = "push" | "pull";

/** What a link says of itself, put together from what its two directions find out. */
export class LinkReport {
  readonly #listeners = new Listeners();
  #state = UNLINKED;
  readonly #trouble: Record<Direction, Said | null> = { push: null, pull: null };

  /** How the link stands; the same object until it changes. */
  readonly state = (): LinkState => this.#state;

  /** Calls back after each change of {@link state}; returns a function that ends it. */
  readonly watch = this.#listeners.add;

  /** Changes the state and tells whoever watches; a link that has ended stays as it is. */
  set(change: Partial<LinkState>): void {
    const before = this.#state;
    const keys = Object.keys(change) as (keyof LinkState)[];
    if (before.kind === "ended" || keys.every((key) => isSame(change[key], before[key]))) return;
    this.#state = { ...before, ...change };
    this.#listeners.tell();
  }

  /** The other side was heard at this moment; told to the second. */
  heard(now: number): void {
    const { heardAt } = this.#state;
    if (heardAt === null || Math.abs(now - heardAt) >= 1000) this.set({ heardAt: now as Instant });
  }

  /** Sending works, so its error is cleared. An error about a missing stream stays until the stream is back. */
  sent(): void {
    this.setTrouble("push", null);
    if (this.#state.kind === "linked") this.set({ words: null });
  }

  /** What is wrong on this side in one direction; `null` for nothing. */
  setTrouble(direction: Direction, words: Said | null): void {
    this.#trouble[direction] = words;
    this.set({ trouble: this.#trouble.push ?? this.#trouble.pull });
  }

  /** Whether this side has no trouble in a direction. */
  isSound(direction: Direction): boolean {
    return this.#trouble[direction] === null;
  }
}

/** Whether two values of a part of the state are equal, even if they are different objects. */
function isSame(one: LinkState[keyof LinkState] | undefined, other: LinkState[keyof LinkState]): boolean {
  if (one === other) return true;
  return isMessage(one) && isMessage(other) && JSON.stringify(one) === JSON.stringify(other);
}

const isMessage = (part: unknown): boolean => typeof part === "object" && part !== null && "key" in part;
