import { Latch, TurnedAwayError, waitAfter } from "../../core/link/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import { inWords, saidBy, words } from "../../words/index.ts";
import { Scope } from "./scope.ts";
import { REFUSED_PAUSE, UpstreamLinks } from "./upstream-links.ts";
import type { UpstreamParts } from "./upstream-parts.ts";
import { GAP_BACKOFF, unlinkedHub } from "./walk-link.ts";

/** A hub's links with another one. */
export interface Upstream {
  stop(): Promise<void>;
}

/** New walks of the other hub are looked for so often, in ms. */
const LOOK_PAUSE = 5_000;

/** Links this hub with another one and keeps to it until stopped: whatever goes wrong is told, waited out and tried again. */
export function startUpstream(parts: UpstreamParts): Upstream {
  return new RunningUpstream(parts);
}

class RunningUpstream implements Upstream {
  readonly #parts: UpstreamParts;
  readonly #scope: Scope;
  readonly #links: UpstreamLinks;
  /** Raised when a walk got its first entry here, so that it is looked at without delay. */
  readonly #newWalk = new Latch();
  /** Walks that were looked at since they had their first entry. */
  readonly #seen = new Set<WalkId>();
  readonly #shown = new Map<WalkId, string>();
  readonly #work: Promise<void>;
  readonly #unfollow: () => void;
  readonly #unawait: () => void;
  #isAnotherLog = false;
  /** Whether the code is the owner's or an invitation; `null` until the other hub was heard. */
  #mode: "owner" | "invitation" | null = null;
  #refusal: string | null = null;
  #told: string | null = null;

  constructor(parts: UpstreamParts) {
    this.#parts = parts;
    this.#scope = new Scope(parts.time);
    this.#links = new UpstreamLinks(parts, this.#scope, (said) => this.#say(said));
    this.#unfollow = parts.engine.follow((walk) => {
      if (this.#seen.has(walk)) return;
      this.#seen.add(walk);
      this.#newWalk.raise();
    });
    this.#unawait = parts.engine.onEpoch(() => {
      this.#isAnotherLog = true;
      this.#newWalk.raise();
    });
    this.#work = this.#run();
  }

  async stop(): Promise<void> {
    this.#unfollow();
    this.#unawait();
    this.#scope.end();
    await this.#work;
    await this.#links.stop();
  }

  async #run(): Promise<void> {
    const { time } = this.#parts;
    const { signal } = this.#scope;
    let [failures, hasBegun] = [0, false];
    while (!signal.aborted) {
      let pause = LOOK_PAUSE;
      try {
        if (!hasBegun) await this.#links.resume();
        hasBegun = true;
        if (this.#isAnotherLog) await this.#links.beginAnew();
        this.#isAnotherLog = false;
        pause = await this.#look();
        [failures, this.#refusal] = [0, null];
        this.#say(null);
      } catch (cause) {
        if (signal.aborted) return;
        const said = inWords(saidBy(cause));
        const isTurnedAway = cause instanceof TurnedAwayError;
        this.#refusal = isTurnedAway ? said : null;
        this.#say(said);
        failures += 1;
        pause = isTurnedAway ? REFUSED_PAUSE : waitAfter(failures, time.random(), GAP_BACKOFF);
      }
      await this.#show().catch(() => {});
      await this.#newWalk.wait(pause, signal, time);
    }
  }

  /** Links with every walk that either hub has, or with the one of the invitation; resolves with the pause before the next look, in ms. */
  async #look(): Promise<number> {
    const { engine } = this.#parts;
    if (this.#mode === "invitation") return this.#lookByInvitation();
    let there: readonly WalkId[];
    try {
      there = await this.#links.walksThere();
    } catch (cause) {
      if (this.#mode === null && cause instanceof TurnedAwayError) return this.#lookByInvitation();
      throw cause;
    }
    this.#mode = "owner";
    const here = new Map((await engine.walks()).map(({ walk, entries }) => [walk, entries]));
    for (const walk of new Set([...there, ...here.keys()])) {
      if (this.#links.has(walk) || this.#links.mustWait(walk)) continue;
      try {
        await this.#links.join(walk);
      } catch (cause) {
        // The other walks are not to suffer from one that is turned away.
        if (!(cause instanceof TurnedAwayError)) throw cause;
        this.#showTurnedAway(walk, here.get(walk) ?? 0, inWords(cause.said));
      }
    }
    return LOOK_PAUSE;
  }

  async #lookByInvitation(): Promise<number> {
    // Its ticket from before is as good as the invitation, which may have expired since.
    if (!this.#links.isInvited) await this.#links.join(null);
    this.#mode = "invitation";
    return REFUSED_PAUSE;
  }

  #showTurnedAway(walk: WalkId, entries: number, said: string): void {
    const { board } = this.#parts;
    this.#links.noteTurnedAway(walk, said);
    const unlinked = unlinkedHub(this.#links.farName, entries, said);
    const [shown = unlinked] = board.of(walk);
    board.put(walk, [{ ...shown, state: "refused", words: said }]);
  }

  /** Shows how the walks stand that have no link (yet). */
  async #show(): Promise<void> {
    const { engine, board } = this.#parts;
    // An invitation is of one walk: the others are not this link's matter.
    if (this.#mode === "invitation" || (this.#mode === null && this.#links.size > 0)) return;
    for (const { walk, entries } of await engine.walks()) {
      if (this.#links.has(walk) || this.#links.wasTurnedAway(walk)) continue;
      const hub = unlinkedHub(this.#links.farName, entries, this.#refusal);
      const text = JSON.stringify(hub);
      if (this.#shown.get(walk) !== text) board.put(walk, [hub]);
      this.#shown.set(walk, text);
    }
  }

  #say(said: string | null): void {
    const { origin, tell } = this.#parts;
    if (said !== null && said !== this.#told) tell(words("far/other-hub", { origin, what: said }));
    this.#told = said;
  }
}
