import type { Entry } from "../log/index.ts";
import type { Instant } from "../units/index.ts";
import { Listeners } from "../units/index.ts";
import type { AnswerLimits } from "./answer-time.ts";
import { AnswerTime } from "./answer-time.ts";
import type { Backoff } from "./backoff.ts";
import { waitAfter } from "./backoff.ts";
import type { BatchLimits } from "./first-batch.ts";
import { firstBatch } from "./first-batch.ts";
import { Inbox } from "./inbox.ts";
import type { LinkTime } from "./latch.ts";
import { aborted, Latch, OVER } from "./latch.ts";
import type { FarMessage, FarSide, NearSide, Settled } from "./link-sides.ts";
import { TurnedAwayError, UnreachableError } from "./link-sides.ts";
import type { LinkState } from "./link-status.ts";
import { UNLINKED } from "./link-status.ts";
import { pairedWith } from "./paired-with.ts";

/** How a link behaves; times in ms. */
export interface LinkSettings extends BatchLimits {
  /** Entries taken in at once, at most. */
  readonly intake: number;
  /** A stream on which nothing was heard for so long is given up. */
  readonly silence: number;
  readonly backoff: Backoff;
  readonly answer: AnswerLimits;
}

const USUAL: LinkSettings = {
  batch: 500,
  batchLength: 1_000_000,
  intake: 5000,
  silence: 40_000,
  backoff: { first: 1000, longest: 60_000 },
  answer: { first: 15_000, longest: 600_000 },
};

/** The other side may ask to be left alone for so long at most, in ms. */
const LONGEST_RETRY_AFTER = 600_000;

/** What a link is made of. */
export interface LinkParts {
  readonly near: NearSide;
  readonly far: FarSide;
  readonly time: LinkTime;
  /** Where it is to differ from the usual. */
  readonly settings?: Partial<LinkSettings>;
}

/**
 * Keeps this side and another one in agreement over a connection that comes and goes: offers what is in the outbox, takes
 * in what the other side got, each on its own and each again after any failure, until stopped or turned away.
 */
export class Link {
  readonly #near: NearSide;
  readonly #far: FarSide;
  readonly #time: LinkTime;
  readonly #settings: LinkSettings;
  readonly #stop = new AbortController();
  readonly #watchers = new Listeners();
  /** Raised when the outbox may have grown. */
  readonly #outbox = new Latch();
  /** Raised when there is hope: either direction stops waiting out its failures. */
  readonly #pushHope = new Latch();
  readonly #pullHope = new Latch();
  #stream: AbortController | null = null;
  /** What is offered now, and since when. */
  #offered: { readonly over: AbortController; readonly since: number } | null = null;
  /** How long the stream took for its first word, when it last came. */
  #trip = 0;
  #state = UNLINKED;
  /** When anything came down the stream there is, or it was opened. */
  #streamHeardAt = 0;
  #pushTrouble: string | null = null;
  #pullTrouble: string | null = null;
  #isCounting = false;
  #mustCount = false;
  #work: Promise<unknown> | null = null;

  constructor({ near, far, time, settings }: LinkParts) {
    this.#near = near;
    this.#far = far;
    this.#time = time;
    this.#settings = { ...USUAL, ...settings };
  }

  /** How the link stands; the same object until it changes. */
  readonly status = (): LinkState => this.#state;

  /** Calls back after each change of {@link status}; returns a function that ends it. */
  readonly watch = this.#watchers.add;

  /** Begins; once only. */
  start(): void {
    if (this.#work || this.#stop.signal.aborted) return;
    const unwatch = this.#near.watch(() => {
      this.#outbox.raise();
      void this.#count();
    });
    this.#work = this.#run().finally(unwatch);
  }

  async #run(): Promise<void> {
    // First, so that it is never said to be linked with nothing to send before that is known.
    await this.#count();
    await Promise.all([this.#pushOn(), this.#pullOn()]);
  }

  /** Ends the link for good; resolves once nothing of it is under way any more. */
  async stop(): Promise<void> {
    this.#stop.abort(OVER);
    await this.#work;
  }

  /** The network came back, or the device woke up: tries at once, and distrusts what nothing was heard of for long. */
  wake(): void {
    if (this.#time.now() - this.#streamHeardAt > this.#settings.silence / 2) this.#stream?.abort(OVER);
    this.#distrustOffer();
    this.#raiseHope();
  }

  /** Gives up an offer that seems to have been made into a gap: its answer may never come, and is waited for for minutes. */
  #distrustOffer(): void {
    if (!this.#offered) return;
    const { over, since } = this.#offered;
    if (this.#time.now() - since > Math.max(this.#settings.silence / 2, 3 * this.#trip)) over.abort(OVER);
  }

  #raiseHope(): void {
    this.#pushHope.raise();
    this.#pullHope.raise();
  }

  async #pushOn(): Promise<void> {
    const { signal } = this.#stop;
    const answerTime = new AnswerTime(this.#settings.answer);
    let failures = 0;
    while (!signal.aborted) {
      let retryAfter: number | null = null;
      this.#outbox.lower();
      try {
        const batch = firstBatch(await this.#near.outbox(this.#settings.batch), this.#settings);
        if (batch.length === 0) {
          this.#noteSent();
          await this.#outbox.wait(null, signal, this.#time);
          continue;
        }
        this.#pushHope.lower();
        const settled = await this.#offer(batch, answerTime);
        await this.#near.settle(settled);
        this.#noteSent();
        void this.#count();
        // Entries that are refused and stay would be offered again and again without a pause.
        const isStuck = settled.every(({ result }) => "reason" in result && result.reason === "ahead");
        failures = isStuck ? failures + 1 : 0;
        if (failures === 0) continue;
      } catch (error) {
        if (!this.#survives(error, "push")) return;
        failures += 1;
        if (error instanceof UnreachableError) retryAfter = error.retryAfter;
      }
      if (await this.#sitOut(this.#pushHope, failures, retryAfter)) failures = 0;
    }
  }

  async #offer(batch: readonly Entry[], answerTime: AnswerTime): Promise<readonly Settled[]> {
    const over = this.#within();
    const since = this.#time.now();
    this.#offered = { over, since };
    let isLate = false;
    void this.#time.wait(answerTime.allowed, over.signal).then(() => {
      isLate = !over.signal.aborted;
      over.abort(OVER);
    });
    try {
      const answer = await Promise.race([
        this.#far.push(batch, over.signal),
        aborted(over.signal).then((): never => {
          throw new UnreachableError("No answer came in time.");
        }),
      ]);
      answerTime.met(Math.max(0, this.#time.now() - since));
      this.#heard();
      return pairedWith(batch, answer);
    } catch (error) {
      if (isLate) answerTime.missed();
      throw error;
    } finally {
      this.#offered = null;
      over.abort(OVER);
    }
  }

  async #pullOn(): Promise<void> {
    const { signal } = this.#stop;
    const answerTime = new AnswerTime(this.#settings.answer);
    let failures = 0;
    while (!signal.aborted) {
      let retryAfter: number | null = null;
      this.#pullHope.lower();
      try {
        await this.#follow(answerTime);
      } catch (error) {
        if (!this.#survives(error, "pull")) return;
        if (error instanceof UnreachableError) retryAfter = error.retryAfter;
      }
      if (signal.aborted) return;
      failures = this.#state.kind === "linked" && this.#pullTrouble === null ? 1 : failures + 1;
      this.#set({ kind: "linking" });
      if (await this.#sitOut(this.#pullHope, failures, retryAfter)) failures = 0;
    }
  }

  /** Follows the other side until the stream ends or fails; resolves or rejects once all that was heard is kept. */
  async #follow(answerTime: AnswerTime): Promise<void> {
    const after = await this.#near.cursor();
    const over = this.#within();
    this.#stream = over;
    const since = this.#time.now();
    this.#streamHeardAt = since;
    let failure: unknown = null;
    const fail = (error: unknown) => {
      failure ??= error;
      over.abort(OVER);
    };
    const keep: ConstructorParameters<typeof Inbox>[0] = async (entries, cursor) => {
      await this.#near.takeIn(entries, cursor);
      this.#noteTrouble("pull", null);
    };
    const inbox = new Inbox(keep, fail, this.#settings.intake);
    let isFirst = true;
    const hear = (message: FarMessage) => {
      if (over.signal.aborted) return;
      if (isFirst) {
        this.#trip = Math.max(0, this.#time.now() - since);
        answerTime.met(this.#trip);
      }
      isFirst = false;
      this.#streamHeardAt = this.#time.now();
      this.#hear(message, inbox);
    };
    void this.#guard(over, answerTime, () => isFirst, fail);
    try {
      await Promise.race([this.#far.follow(after, hear, over.signal), aborted(over.signal)]);
    } catch (error) {
      failure ??= error;
    } finally {
      over.abort(OVER);
      this.#stream = null;
      await inbox.emptied();
    }
    if (failure) throw failure;
  }

  /** Gives a stream up once nothing was heard on it for too long; its first word may take as long as answers do. */
  async #guard(
    over: AbortController,
    answerTime: AnswerTime,
    isFirst: () => boolean,
    fail: (error: unknown) => void,
  ): Promise<void> {
    while (!over.signal.aborted) {
      const { silence } = this.#settings;
      const limit = isFirst() ? Math.max(silence, answerTime.allowed) : silence;
      const now = this.#time.now();
      // A clock that was set back must not make the patience endless.
      this.#streamHeardAt = Math.min(this.#streamHeardAt, now);
      const left = this.#streamHeardAt + limit - now;
      if (left > 0) await this.#time.wait(left, over.signal);
      else {
        if (isFirst()) answerTime.missed();
        fail(new UnreachableError(`Nothing was heard for ${Math.round(limit / 1000)} s.`));
      }
    }
  }

  #hear(message: FarMessage, inbox: Inbox): void {
    this.#heard();
    switch (message.kind) {
      case "alive":
        return;
      case "entry":
        inbox.put(message.entry, message.cursor);
        break;
      case "cursor":
        inbox.put(null, message.cursor);
        break;
      case "unreadable":
        if (message.cursor) inbox.put(null, message.cursor);
        this.#set({ unreadable: this.#state.unreadable + 1 });
        break;
      case "hello":
        this.#set({ hello: message.hello });
        break;
      case "presence":
        this.#set({ followers: message.followers });
        break;
      case "beyond":
        this.#set({ beyond: message.hubs });
    }
    if (this.#state.kind === "linking") {
      this.#set({ kind: "linked", words: null });
      this.#distrustOffer();
      this.#pushHope.raise();
    }
  }

  #heard(): void {
    const now = this.#time.now();
    const shown = this.#state.heardAt;
    if (shown === null || Math.abs(now - shown) >= 1000) this.#set({ heardAt: now as Instant });
  }

  /** Whether to try again after a failure, which is noted. */
  #survives(error: unknown, direction: "push" | "pull"): boolean {
    if (this.#stop.signal.aborted) return false;
    const words = error instanceof Error ? error.message : String(error);
    if (error instanceof TurnedAwayError) {
      this.#set({ kind: "ended", words });
      this.#stop.abort(OVER);
      return false;
    }
    if (error instanceof UnreachableError) this.#set({ words });
    else this.#noteTrouble(direction, words);
    return true;
  }

  /** Nothing keeps entries from being sent; what is said of the stream stays while that is missing. */
  #noteSent(): void {
    this.#noteTrouble("push", null);
    if (this.#state.kind === "linked") this.#set({ words: null });
  }

  #noteTrouble(direction: "push" | "pull", words: string | null): void {
    if (direction === "push") this.#pushTrouble = words;
    else this.#pullTrouble = words;
    this.#set({ trouble: this.#pushTrouble ?? this.#pullTrouble });
  }

  /** Waits after failures; true when there was reason to hope before the time was over. */
  #sitOut(hope: Latch, failures: number, retryAfter: number | null): Promise<boolean> {
    const own = waitAfter(failures, this.#time.random(), this.#settings.backoff);
    const asked = Math.min(retryAfter ?? 0, LONGEST_RETRY_AFTER);
    return hope.wait(Math.max(own, asked), this.#stop.signal, this.#time);
  }

  /** A controller that is aborted when the link is stopped. */
  #within(): AbortController {
    const over = new AbortController();
    const { signal } = this.#stop;
    const abort = () => over.abort(OVER);
    if (signal.aborted) abort();
    signal.addEventListener("abort", abort, { once: true, signal: over.signal });
    return over;
  }

  async #count(): Promise<void> {
    this.#mustCount = true;
    if (this.#isCounting) return;
    this.#isCounting = true;
    await this.#countOn();
  }

  async #countOn(): Promise<void> {
    while (this.#mustCount && !this.#stop.signal.aborted) {
      this.#mustCount = false;
      try {
        this.#set({ unsent: await this.#near.unsent() });
      } catch (error) {
        // What keeps it from being counted keeps it from being offered, which is tried again.
        this.#set({ trouble: error instanceof Error ? error.message : String(error) });
      }
    }
    this.#isCounting = false;
  }

  #set(change: Partial<LinkState>): void {
    const before = this.#state;
    const keys = Object.keys(change) as (keyof LinkState)[];
    if (before.kind === "ended" || keys.every((key) => change[key] === before[key])) return;
    this.#state = { ...before, ...change };
    this.#watchers.tell();
  }
}
