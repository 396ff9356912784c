/** A set of callbacks for one kind of event. Every subscription in the program goes through this class. */
export class Listeners<Told extends readonly unknown[] = []> {
  readonly #all = new Set<{ readonly hear: (...told: Told) => void }>();

  /** The number of callbacks. */
  get size(): number {
    return this.#all.size;
  }

  /** Adds a callback and returns a function that removes it. A callback that is added twice is called twice. */
  readonly add = (hear: (...told: Told) => void): (() => void) => {
    const one = { hear };
    this.#all.add(one);
    return () => {
      this.#all.delete(one);
    };
  };

  /**
   * Calls every callback in the order they were added. A callback that is added during the call is not called this
   * time.
   */
  readonly tell = (...told: Told): void => {
    for (const one of [...this.#all]) one.hear(...told);
  };

  /**
   * Calls every callback as {@link tell} does, once the code that is running has finished. Callbacks added by then are
   * called too.
   */
  readonly tellSoon = (...told: Told): void => {
    queueMicrotask(() => this.tell(...told));
  };
}
