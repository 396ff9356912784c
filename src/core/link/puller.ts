import { message } from "../../words/index.ts";
import { AnswerTime } from "./answer-time.ts";
import { Inbox } from "./inbox.ts";
import { aborted, Latch, OVER } from "./latch.ts";
import type { LinkContext } from "./link-context.ts";
import { retryAfterSaidBy, sitOut, survives } from "./link-context.ts";
import type { FarMessage } from "./link-sides.ts";
import { UnreachableError } from "./link-sides.ts";

/** A stream of the other side that is open, or about to be. */
interface OpenStream {
  readonly over: AbortController;
  /** Is aborted with `over`, and when the link ends. */
  readonly signal: AbortSignal;
  readonly since: number;
  /** When anything came down the stream, or it was opened. */
  heardAt: number;
  /** Whether nothing has come down the stream yet. */
  isSilent: boolean;
  /** What ended the stream; `null` for nothing. */
  failure: unknown;
}

/** The direction of a link in which the log of the other side is taken in. */
export class Puller {
  readonly #context: LinkContext;
  readonly #answerTime: AnswerTime;
  readonly #onLinked: (trip: number) => void;
  /** Raised when there is reason to try again at once. */
  readonly #hope = new Latch();
  #stream: OpenStream | null = null;
  #trip = 0;

  /** `onLinked` is called whenever the other side is heard again, with its {@link trip}. */
  constructor(context: LinkContext, onLinked: (trip: number) => void) {
    this.#context = context;
    const { answer, silence } = context.settings;
    // Over a slow link the first word takes as long as a stream may be silent.
    this.#answerTime = new AnswerTime({ ...answer, first: Math.max(answer.first, 1.5 * silence) });
    this.#onLinked = onLinked;
  }

  /** How long the latest stream that answered took to send its first event, in ms. */
  get trip(): number {
    return this.#trip;
  }

  /** There is reason to try again at once. */
  raiseHope(): void {
    this.#hope.raise();
  }

  /** Drops the stream when it has been silent for half the time that a stream may be silent. */
  distrustStream(): void {
    const { time, settings } = this.#context;
    if (this.#stream && time.now() - this.#stream.heardAt > settings.silence / 2) this.#end(this.#stream);
  }

  /** Follows the log of the other side, again after each failure, until the link ends. */
  async run(): Promise<void> {
    const { report, stop } = this.#context;
    let failures = 0;
    while (!stop.signal.aborted) {
      let retryAfter: number | null = null;
      this.#hope.lower();
      try {
        await this.#follow();
      } catch (error) {
        if (!survives(this.#context, error, "pull")) return;
        retryAfter = retryAfterSaidBy(error);
      }
      if (stop.signal.aborted) return;
      failures = report.state().kind === "linked" && report.isSound("pull") ? 1 : failures + 1;
      report.set({ kind: "linking" });
      if (await sitOut(this.#context, this.#hope, failures, retryAfter)) failures = 0;
    }
  }

  /** Follows the other side until the stream ends or fails; resolves or rejects once all that was heard is kept. */
  async #follow(): Promise<void> {
    const { far, near, report, settings } = this.#context;
    const after = await near.cursor();
    const stream = this.#open();
    const inbox = new Inbox({
      keep: async (entries, cursor) => {
        await near.takeIn(entries, cursor);
        report.setTrouble("pull", null);
        const { fetching } = report.state();
        if (fetching) {
          report.set({
            fetching: { ...fetching, come: Math.min(fetching.of, fetching.come + entries.length) },
          });
        }
      },
      onFailure: (error) => this.#end(stream, error),
      largest: settings.intake,
    });
    void this.#guard(stream);
    try {
      const hear = (message: FarMessage) => this.#hearOn(stream, message, inbox);
      await Promise.race([far.follow(after, hear, stream.signal), aborted(stream.signal)]);
    } catch (error) {
      stream.failure ??= error;
    } finally {
      this.#end(stream);
      this.#stream = null;
      await inbox.emptied();
    }
    if (stream.failure) throw stream.failure;
  }

  #open(): OpenStream {
    const over = new AbortController();
    const signal = AbortSignal.any([over.signal, this.#context.stop.signal]);
    const since = this.#context.time.now();
    this.#stream = { over, signal, since, heardAt: since, isSilent: true, failure: null };
    return this.#stream;
  }

  #end(stream: OpenStream, failure: unknown = null): void {
    stream.failure ??= failure;
    stream.over.abort(OVER);
  }

  /** Gives a stream up once nothing was heard on it for too long; its first word may take as long as answers do. */
  async #guard(stream: OpenStream): Promise<void> {
    const { time, settings } = this.#context;
    while (!stream.signal.aborted) {
      const { silence } = settings;
      const limit = stream.isSilent ? Math.max(silence, this.#answerTime.allowed) : silence;
      const now = time.now();
      // If the clock was set back, the wait must not grow without limit.
      stream.heardAt = Math.min(stream.heardAt, now);
      const left = stream.heardAt + limit - now;
      // The first word may come meanwhile, from which on less is allowed.
      if (left > 0) await time.wait(Math.min(left, silence), stream.signal);
      else {
        if (stream.isSilent) this.#answerTime.missed();
        this.#end(
          stream,
          new UnreachableError(message("link/nothing-heard", { seconds: Math.round(limit / 1000) })),
        );
      }
    }
  }

  #hearOn(stream: OpenStream, message: FarMessage, inbox: Inbox): void {
    if (stream.signal.aborted) return;
    const { time, report } = this.#context;
    if (stream.isSilent) {
      this.#trip = Math.max(0, time.now() - stream.since);
      this.#answerTime.met(this.#trip);
    }
    stream.isSilent = false;
    stream.heardAt = time.now();
    report.heard(time.now());
    if (message.kind === "alive") return;
    this.#take(message, inbox);
    if (report.state().kind !== "linking") return;
    report.set({ kind: "linked", words: null });
    this.#onLinked(this.#trip);
  }

  /** All that was stored over there has come, and is here once what came is kept. */
  async #fetched(inbox: Inbox): Promise<void> {
    const stream = this.#stream;
    await inbox.emptied();
    if (this.#stream === stream && stream?.failure === null) this.#context.report.set({ fetching: null });
  }

  #take(message: FarMessage, inbox: Inbox): void {
    const { report } = this.#context;
    switch (message.kind) {
      case "entry":
        inbox.put(message.entry, message.cursor);
        break;
      case "cursor":
        inbox.put(null, message.cursor);
        break;
      case "unreadable":
        if (message.cursor) inbox.put(null, message.cursor);
        report.set({ unreadable: report.state().unreadable + 1 });
        break;
      case "hello": {
        const { toCome: of } = message.hello;
        report.set({ hello: message.hello, fetching: of ? { come: 0, of } : null });
        break;
      }
      case "presence":
        report.set({ followers: message.followers });
        void this.#fetched(inbox);
        break;
      case "beyond":
        report.set({ beyond: message.hubs });
    }
  }
}
