/** The callbacks that are told of one kind of event: the one way in which anything here is subscribed to. */
export class Listeners<Told extends readonly unknown[] = []> {
  readonly #all = new Set<{ readonly hear: (...told: Told) => void }>();

  /** How many callbacks there are. */
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

  /** Calls every callback, in the order they were added; one that is added meanwhile is not called this time. */
  readonly tell = (...told: Told): void => {
    for (const one of [...this.#all]) one.hear(...told);
  };

  /** Does the same once the code that runs at the moment has finished, for the callbacks that are there by then. */
  readonly tellSoon = (...told: Told): void => {
    queueMicrotask(() => this.tell(...told));
  };
}
