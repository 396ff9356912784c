/** Work of which only one run is under way at a time. A request during a run causes one more run afterwards. */
export class OneAtATime {
  readonly #work: () => Promise<void>;
  #isWorking = false;
  #isWanted = false;
  #waiting: (() => void)[] = [];

  /** Failures of `work` are ignored; it runs again at the next request. */
  constructor(work: () => Promise<void>) {
    this.#work = work;
  }

  /** Resolves once a run that began after this call has finished or failed. Never rejects. */
  run(): Promise<void> {
    const done = new Promise<void>((resolve) => this.#waiting.push(resolve));
    this.#isWanted = true;
    if (!this.#isWorking) void this.#runOn();
    return done;
  }

  async #runOn(): Promise<void> {
    this.#isWorking = true;
    while (this.#isWanted) {
      this.#isWanted = false;
      const waiting = this.#waiting.splice(0);
      await this.#work().catch(() => {});
      for (const resolve of waiting) resolve();
    }
    this.#isWorking = false;
  }
}
