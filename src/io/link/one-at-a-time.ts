/** Work that is done once at a time, and once more for whoever asks while it is being done. */
export class OneAtATime {
  readonly #work: () => Promise<void>;
  #isWorking = false;
  #isWanted = false;
  #waiting: (() => void)[] = [];

  /** What makes `work` fail is passed over: it is done anew when somebody asks again. */
  constructor(work: () => Promise<void>) {
    this.#work = work;
  }

  /** Resolves once the work was done, or failed, that began after this call. Never rejects. */
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
