import type { HalfTyped } from "../../io/store/index.ts";

/** How long what is typed waits at most until it is kept, in ms: nothing older than a second is lost ([WRT1]). */
const WAITS = 300;

/** Keeps what stands in a field while it is typed, at most once in a while, and forgets it once it is taken or left. */
export class HalfTypedKeeper {
  readonly #keep: (typed: HalfTyped | null) => void;
  #latest: HalfTyped | null = null;
  #timer: ReturnType<typeof setTimeout> | null = null;
  #isKept = false;

  constructor(keep: (typed: HalfTyped | null) => void) {
    this.#keep = keep;
  }

  note(typed: HalfTyped): void {
    this.#latest = typed;
    this.#timer ??= setTimeout(() => {
      this.#timer = null;
      this.#isKept = true;
      this.#keep(this.#latest);
    }, WAITS);
  }

  forget(): void {
    if (this.#timer !== null) clearTimeout(this.#timer);
    [this.#timer, this.#latest] = [null, null];
    if (!this.#isKept) return;
    this.#isKept = false;
    this.#keep(null);
  }
}
