import { createHash } from "node:crypto";
import type { LinkTime } from "../../core/link/index.ts";
import { AnswerTime, TurnedAwayError, UnreachableError, waitAfter } from "../../core/link/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import type { BeyondBoard } from "../beyond/index.ts";
import type { Engine } from "../engine/index.ts";
import type { FarClient } from "./far-client.ts";
import { Scope } from "./scope.ts";
import { type Ticket, type UpstreamBook, upstreamBook } from "./upstream-book.ts";
import { GAP_BACKOFF, LONGEST_ANSWER, startWalkLink, unlinkedHub, type WalkLink } from "./walk-link.ts";

/** What links this hub with another one. */
export interface UpstreamParts {
  readonly engine: Engine;
  readonly board: BeyondBoard;
  /** Name of this hub as a device, and what people call it. */
  readonly id: string;
  readonly name: string;
  readonly far: FarClient;
  /** Where the other hub is, for messages and to keep its tickets apart. */
  readonly origin: string;
  /** The other hub's owner's code, for all walks, or an invitation as relay, for one. */
  readonly code: string;
  readonly time: LinkTime;
  /** For the console. */
  readonly tell: (words: string) => void;
}

/** A hub's links with another one. */
export interface Upstream {
  stop(): Promise<void>;
}

/** New walks of the other hub are looked for so often, in ms. */
const LOOK_PAUSE = 5_000;
/** A code or token that was turned away is tried again after so long, in ms: more often would be taken for guessing. */
const REFUSED_PAUSE = 60_000;
const NO_RELAY = "The invitation is not one for a hub: make one of the role relay.";
const ANOTHER_WALK = "What answers there is no hub that this one knows.";
const ITSELF = "That is this hub itself: give the address of another one.";

/** Links this hub with another one and keeps to it until stopped: whatever goes wrong is told, waited out and tried again. */
export function startUpstream(parts: UpstreamParts): Upstream {
  return new UpstreamLinks(parts);
}

class UpstreamLinks implements Upstream {
  readonly #parts: UpstreamParts;
  readonly #book: UpstreamBook;
  readonly #scope: Scope;
  readonly #links = new Map<WalkId, WalkLink>();
  /** When a walk may be tried again that was turned away. */
  readonly #notBefore = new Map<WalkId, number>();
  readonly #answerTime = new AnswerTime({ first: 15_000, longest: LONGEST_ANSWER });
  /** Walks that were looked at since they had their first entry. */
  readonly #seen = new Set<WalkId>();
  readonly #shown = new Map<WalkId, string>();
  readonly #work: Promise<void>;
  readonly #unfollow: () => void;
  /** Whether the code is the owner's or an invitation; `null` until the other hub was heard. */
  #mode: "owner" | "invitation" | null = null;
  /** What an invitation is known by where it must not be written down. */
  readonly #invitation: string;
  /** Whether the invitation has let this hub in, now or before. */
  #isInvited = false;
  #farName: string;
  #refusal: string | null = null;
  #told: string | null = null;
  #endPause: () => void = () => {};

  constructor(parts: UpstreamParts) {
    this.#parts = parts;
    this.#book = upstreamBook(parts.engine.keep, parts.origin);
    this.#invitation = createHash("sha256").update(`${parts.origin} ${parts.code}`).digest("base64url");
    this.#scope = new Scope(parts.time);
    this.#farName = new URL(parts.origin).host;
    this.#unfollow = parts.engine.follow((walk) => {
      if (this.#seen.has(walk)) return;
      this.#seen.add(walk);
      this.#endPause();
    });
    this.#work = this.#keepOn();
  }

  async stop(): Promise<void> {
    this.#unfollow();
    this.#scope.end();
    await this.#work;
    await Promise.all([...this.#links.values()].map((link) => link.stop()));
  }

  async #keepOn(): Promise<void> {
    const { time } = this.#parts;
    let [failures, hasBegun] = [0, false];
    while (!this.#scope.isOver) {
      let pause = LOOK_PAUSE;
      try {
        // A restart needs no contact to be ready for it.
        if (!hasBegun) for (const [walk, ticket] of await this.#book.all()) await this.#begin(walk, ticket);
        hasBegun = true;
        pause = await this.#look();
        [failures, this.#refusal] = [0, null];
        this.#say(null);
      } catch (cause) {
        if (this.#scope.isOver) return;
        const words = cause instanceof Error ? cause.message : String(cause);
        const isTurnedAway = cause instanceof TurnedAwayError;
        this.#refusal = isTurnedAway ? words : null;
        this.#say(words);
        failures += 1;
        pause = isTurnedAway ? REFUSED_PAUSE : waitAfter(failures, time.random(), GAP_BACKOFF);
      }
      await this.#show().catch(() => {});
      await this.#scope.within((controller) => {
        this.#endPause = () => controller.abort();
        return time.wait(pause, controller.signal);
      });
    }
  }

  /** Links with every walk that either hub has, or with the one of the invitation; how long to wait before the next look. */
  async #look(): Promise<number> {
    const { far, code, engine, board } = this.#parts;
    if (this.#mode === "invitation") return this.#lookByInvitation();
    let there: readonly WalkId[];
    try {
      there = await this.#ask((signal) => far.walks(code, signal));
    } catch (cause) {
      if (this.#mode === null && cause instanceof TurnedAwayError) return this.#lookByInvitation();
      throw cause;
    }
    this.#mode = "owner";
    const here = new Map((await engine.walks()).map(({ walk, entries }) => [walk, entries]));
    for (const walk of new Set([...there, ...here.keys()])) {
      if (this.#links.has(walk) || this.#mustWait(walk)) continue;
      try {
        await this.#join(walk);
      } catch (cause) {
        // The other walks are not to suffer from one that is turned away.
        if (!(cause instanceof TurnedAwayError)) throw cause;
        this.#turnedAway(walk, cause.message);
        const unlinked = unlinkedHub(this.#farName, here.get(walk) ?? 0, cause.message);
        const [shown = unlinked] = board.of(walk);
        board.put(walk, [{ ...shown, state: "refused", words: cause.message }]);
      }
    }
    return LOOK_PAUSE;
  }

  async #lookByInvitation(): Promise<number> {
    // Its ticket from before is as good as the invitation, which may have expired since.
    if (!this.#isInvited) await this.#join(null);
    this.#mode = "invitation";
    return REFUSED_PAUSE;
  }

  async #join(walk: WalkId | null): Promise<void> {
    const { far, code, id, name } = this.#parts;
    const joined = await this.#ask((signal) => far.join(code, walk, { device: id, name }, signal));
    const { token, hub, hubName, role } = joined;
    if (role !== "relay" || token === undefined) throw new TurnedAwayError(NO_RELAY);
    if (hub === id) throw new TurnedAwayError(ITSELF);
    if (walk !== null && joined.walk !== walk) throw new UnreachableError(ANOTHER_WALK);
    const joinedWalk = joined.walk as WalkId;
    const before = this.#links.get(joinedWalk);
    this.#links.delete(joinedWalk);
    await before?.stop();
    const ticket = { token, hub, hubName, invitation: walk === null ? this.#invitation : null };
    await this.#begin(joinedWalk, ticket);
    await this.#book.put(joinedWalk, ticket);
  }

  async #begin(walk: WalkId, ticket: Ticket): Promise<void> {
    const { engine, board, far, time } = this.#parts;
    if (this.#links.has(walk)) return;
    this.#farName = ticket.hubName;
    const link = await startWalkLink({
      engine,
      walk,
      far: ticket.hub,
      farName: ticket.hubName,
      board,
      time,
      later: this.#scope.later,
      now: () => time.now() as Instant,
      side: far.side(walk, ticket.token),
      seen: (cursor) => this.#ask((signal) => far.seen(walk, ticket.token, cursor, signal)),
    });
    this.#links.set(walk, link);
    const isInvited = ticket.invitation === this.#invitation;
    this.#isInvited ||= isInvited;
    void link.turnedAway.then(async (words) => {
      // Another one has taken its place, for which it was turned away.
      if (this.#links.get(walk) !== link) return;
      this.#turnedAway(walk, words);
      await link.stop();
      if (this.#links.get(walk) !== link) return;
      this.#links.delete(walk);
      if (isInvited) this.#isInvited = false;
      await this.#book.remove(walk).catch(() => {});
    });
  }

  #mustWait(walk: WalkId): boolean {
    const left = (this.#notBefore.get(walk) ?? 0) - this.#parts.time.now();
    // Longer than that only a clock that was set back makes it.
    return left > 0 && left <= REFUSED_PAUSE;
  }

  #turnedAway(walk: WalkId, words: string): void {
    this.#notBefore.set(walk, this.#parts.time.now() + REFUSED_PAUSE);
    this.#say(words);
  }

  /** Shows how the walks stand that have no link (yet). */
  async #show(): Promise<void> {
    const { engine, board } = this.#parts;
    // An invitation is of one walk: the others are not this link's matter.
    if (this.#mode === "invitation" || (this.#mode === null && this.#links.size > 0)) return;
    for (const { walk, entries } of await engine.walks()) {
      if (this.#links.has(walk) || this.#notBefore.has(walk)) continue;
      const hub = unlinkedHub(this.#farName, entries, this.#refusal);
      const text = JSON.stringify(hub);
      if (this.#shown.get(walk) !== text) board.put(walk, [hub]);
      this.#shown.set(walk, text);
    }
  }

  /** Asks within the time that answers take by now. */
  #ask<T>(work: (signal: AbortSignal) => Promise<T>): Promise<T> {
    const { time } = this.#parts;
    return this.#scope.within(async (controller) => {
      const since = time.now();
      let isLate = false;
      const cancel = this.#scope.later(this.#answerTime.allowed, () => {
        isLate = true;
        controller.abort();
      });
      try {
        const answer = await work(controller.signal);
        this.#answerTime.met(Math.max(0, time.now() - since));
        return answer;
      } catch (cause) {
        if (isLate) this.#answerTime.missed();
        throw cause;
      } finally {
        cancel();
      }
    });
  }

  #say(words: string | null): void {
    const { origin, tell } = this.#parts;
    if (words !== null && words !== this.#told) tell(`Other hub at ${origin}: ${words}`);
    this.#told = words;
  }
}
