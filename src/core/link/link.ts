import type { LinkTime } from "./latch.ts";
import { OVER } from "./latch.ts";
import type { LinkContext } from "./link-context.ts";
import { LinkReport } from "./link-report.ts";
import type { LinkSettings } from "./link-settings.ts";
import { USUAL_SETTINGS } from "./link-settings.ts";
import type { FarSide, NearSide } from "./link-sides.ts";
import { Puller } from "./puller.ts";
import { Pusher } from "./pusher.ts";

/** What a link is made of. */
export interface LinkParts {
  readonly near: NearSide;
  readonly far: FarSide;
  readonly time: LinkTime;
  /** Where it is to differ from the usual. */
  readonly settings?: Partial<LinkSettings>;
}

/**
 * Keeps this side and another one in agreement over a connection that comes and goes: it offers what is in the outbox and
 * takes in what the other side got. Each direction works on its own and tries again after every failure, until the link is
 * stopped or the other side turns it away.
 */
export class Link {
  readonly #context: LinkContext;
  readonly #pusher: Pusher;
  readonly #puller: Puller;
  readonly #report = new LinkReport();
  #work: Promise<unknown> | null = null;

  constructor({ near, far, time, settings }: LinkParts) {
    const stop = new AbortController();
    this.#context = {
      near,
      far,
      time,
      settings: { ...USUAL_SETTINGS, ...settings },
      stop,
      report: this.#report,
    };
    this.#pusher = new Pusher(this.#context);
    this.#puller = new Puller(this.#context, (trip) => {
      this.#pusher.distrustOffer(trip);
      this.#pusher.raiseHope();
    });
  }

  /** How the link stands; the same object until it changes. */
  readonly status = this.#report.state;

  /** Calls back after each change of {@link status}; returns a function that ends it. */
  readonly watch = this.#report.watch;

  /** Begins; once only. */
  start(): void {
    const { near, stop } = this.#context;
    if (this.#work || stop.signal.aborted) return;
    const unwatch = near.watch(() => this.#pusher.noteOutbox());
    this.#work = this.#run().finally(unwatch);
  }

  async #run(): Promise<void> {
    // Count first, so that the link never reports an empty outbox before the real number is known.
    await this.#pusher.count();
    await Promise.all([this.#pusher.run(), this.#puller.run()]);
  }

  /** Ends the link for good; resolves once nothing of it is under way any more. */
  async stop(): Promise<void> {
    this.#context.stop.abort(OVER);
    await this.#work;
  }

  /** The network came back, or the device woke up: tries at once, and drops any stream or offer that was silent for long. */
  wake(): void {
    this.#puller.distrustStream();
    this.#pusher.distrustOffer(this.#puller.trip);
    this.#pusher.raiseHope();
    this.#puller.raiseHope();
  }
}
