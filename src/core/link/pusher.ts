import { message, saidBy } from "../../words/index.ts";
import type { Entry } from "../log/index.ts";
import { AnswerTime } from "./answer-time.ts";
import { firstBatch } from "./first-batch.ts";
import { aborted, Latch } from "./latch.ts";
import type { LinkContext } from "./link-context.ts";
import { retryAfterSaidBy, sitOut, survives } from "./link-context.ts";
import type { Settled } from "./link-sides.ts";
import { UnreachableError } from "./link-sides.ts";
import { pairedWith } from "./paired-with.ts";
import type { TimeLimit } from "./time-limit.ts";
import { timeLimit } from "./time-limit.ts";

/** The direction of a link in which entries are offered to the other side. */
export class Pusher {
  readonly #context: LinkContext;
  /** Raised when the outbox may have grown. */
  readonly #outbox = new Latch();
  /** Raised when there is reason to try again at once. */
  readonly #hope = new Latch();
  /** The offer that is under way, and when it was made. */
  #offered: { readonly limit: TimeLimit; readonly since: number } | null = null;
  #isCounting = false;
  #mustCount = false;

  constructor(context: LinkContext) {
    this.#context = context;
  }

  /** The outbox may have grown. */
  noteOutbox(): void {
    this.#outbox.raise();
    void this.count();
  }

  /** There is reason to try again at once. */
  raiseHope(): void {
    this.#hope.raise();
  }

  /**
   * Drops an offer that was probably made while the other side was out of reach: its answer may never come, and the wait
   * could last minutes. `trip` is how long the other side last took to say its first word, in ms.
   */
  distrustOffer(trip: number): void {
    if (!this.#offered) return;
    const { time, settings } = this.#context;
    const { limit, since } = this.#offered;
    if (time.now() - since > Math.max(settings.silence / 2, 3 * trip)) limit.end();
  }

  /** Offers what is in the outbox, and what comes into it, until the link ends. */
  async run(): Promise<void> {
    const { near, report, settings, stop, time } = this.#context;
    const answerTime = new AnswerTime(settings.answer);
    let failures = 0;
    while (!stop.signal.aborted) {
      let retryAfter: number | null = null;
      this.#outbox.lower();
      try {
        const batch = firstBatch(await near.outbox(settings.batch), settings);
        if (batch.length === 0) {
          report.sent();
          await this.#outbox.wait(null, stop.signal, time);
          continue;
        }
        this.#hope.lower();
        const settled = await this.#offer(batch, answerTime);
        await near.settle(settled);
        report.sent();
        void this.count();
        // Refused entries that stay in the outbox would otherwise be offered again and again without a pause.
        const isStuck = settled.every(({ result }) => "reason" in result && result.reason === "ahead");
        failures = isStuck ? failures + 1 : 0;
        if (failures === 0) continue;
      } catch (error) {
        if (!survives(this.#context, error, "push")) return;
        failures += 1;
        retryAfter = retryAfterSaidBy(error);
      }
      if (await sitOut(this.#context, this.#hope, failures, retryAfter)) failures = 0;
    }
  }

  async #offer(batch: readonly Entry[], answerTime: AnswerTime): Promise<readonly Settled[]> {
    const { far, report, stop, time } = this.#context;
    if (far.ready) {
      const ready = await Promise.race([far.ready(), aborted(stop.signal).then(() => 0)]);
      if (stop.signal.aborted) throw new UnreachableError(message("link/no-answer"));
      answerTime.expect(ready);
    }
    const since = time.now();
    const limit = timeLimit(answerTime.allowed, time, stop.signal);
    this.#offered = { limit, since };
    try {
      const answer = await Promise.race([
        far.push(batch, limit.signal),
        aborted(limit.signal).then((): never => {
          throw new UnreachableError(message("link/no-answer"));
        }),
      ]);
      answerTime.met(Math.max(0, time.now() - since));
      report.heard(time.now());
      return pairedWith(batch, answer);
    } catch (error) {
      if (limit.isLate()) answerTime.missed();
      throw error;
    } finally {
      this.#offered = null;
      limit.end();
    }
  }

  /** Counts the outbox and reports the number. A call during a count causes one more count. */
  async count(): Promise<void> {
    this.#mustCount = true;
    if (this.#isCounting) return;
    this.#isCounting = true;
    const { near, report, stop } = this.#context;
    while (this.#mustCount && !stop.signal.aborted) {
      this.#mustCount = false;
      try {
        report.set({ unsent: await near.unsent() });
      } catch (error) {
        // Whatever prevents counting also prevents offering, and offering is retried.
        report.set({ trouble: saidBy(error) });
      }
    }
    this.#isCounting = false;
  }
}
