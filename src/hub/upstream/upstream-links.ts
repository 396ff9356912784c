import { createHash } from "node:crypto";
import { AnswerTime, TurnedAwayError, UnreachableError } from "../../core/link/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import { message } from "../../words/index.ts";
import type { Scope } from "./scope.ts";
import { type Ticket, type UpstreamBook, upstreamBook } from "./upstream-book.ts";
import type { UpstreamParts } from "./upstream-parts.ts";
import { LONGEST_ANSWER, startWalkLink, type WalkLink } from "./walk-link.ts";

/** A code or token that was turned away is tried again after so long, in ms: more often would be taken for guessing. */
export const REFUSED_PAUSE = 60_000;

const NO_RELAY = message("far/no-relay");
const ANOTHER_WALK = message("far/unknown-hub");
const ITSELF = message("far/itself");

/** The links of walks with one other hub, and the tickets that they need. */
export class UpstreamLinks {
  readonly #parts: UpstreamParts;
  readonly #scope: Scope;
  readonly #book: UpstreamBook;
  readonly #say: (words: string) => void;
  readonly #links = new Map<WalkId, WalkLink>();
  /** When a walk may be tried again that was turned away. */
  readonly #notBefore = new Map<WalkId, number>();
  readonly #answerTime = new AnswerTime({ first: 15_000, longest: LONGEST_ANSWER });
  /** What an invitation is known by where it must not be written down. */
  readonly #invitation: string;
  #isInvited = false;
  #farName: string;

  /** `say` is told why a walk was turned away. */
  constructor(parts: UpstreamParts, scope: Scope, say: (words: string) => void) {
    this.#parts = parts;
    this.#scope = scope;
    this.#say = say;
    this.#book = upstreamBook(parts.engine.keep, parts.origin);
    this.#invitation = createHash("sha256").update(`${parts.origin} ${parts.code}`).digest("base64url");
    this.#farName = new URL(parts.origin).host;
  }

  /** What people call the other hub; its address until it was heard. */
  get farName(): string {
    return this.#farName;
  }

  /** How many walks are linked. */
  get size(): number {
    return this.#links.size;
  }

  /** Whether the invitation has let this hub in, at this start or an earlier one. */
  get isInvited(): boolean {
    return this.#isInvited;
  }

  /** Whether a walk is linked. */
  has(walk: WalkId): boolean {
    return this.#links.has(walk);
  }

  /** Whether a walk was ever turned away. */
  wasTurnedAway(walk: WalkId): boolean {
    return this.#notBefore.has(walk);
  }

  /** Whether a walk was turned away so lately that it is not to be tried yet. */
  mustWait(walk: WalkId): boolean {
    const left = (this.#notBefore.get(walk) ?? 0) - this.#parts.time.now();
    // Longer than that only a clock that was set back makes it.
    return left > 0 && left <= REFUSED_PAUSE;
  }

  /** Notes that a walk was turned away, and says why. */
  noteTurnedAway(walk: WalkId, words: string): void {
    this.#notBefore.set(walk, this.#parts.time.now() + REFUSED_PAUSE);
    this.#say(words);
  }

  /** Links the walks of which there are tickets from before: a restart needs no contact to be ready for it. */
  async resume(): Promise<void> {
    for (const [walk, ticket] of await this.#book.all()) await this.#begin(walk, ticket);
  }

  /** The walks of the other hub, for its owner's code. */
  walksThere(): Promise<readonly WalkId[]> {
    return this.#ask((signal) => this.#parts.far.walks(this.#parts.code, signal));
  }

  /** Asks to be let into a walk, or with `null` into the one of the invitation, and links it. */
  async join(walk: WalkId | null): Promise<void> {
    const { far, key, origin, code, id, name } = this.#parts;
    const prover = { key, host: new URL(origin).host };
    const joined = await this.#ask((signal) => far.join(code, walk, { device: id, name, prover }, signal));
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

  /** Ends all links and forgets how far each had got, since the log here is another one. */
  async beginAnew(): Promise<void> {
    const links = [...this.#links.values()];
    this.#links.clear();
    await Promise.all(links.map((link) => link.stop()));
    await this.resume();
  }

  /** Ends all links. */
  async stop(): Promise<void> {
    await Promise.all([...this.#links.values()].map((link) => link.stop()));
  }

  async #begin(walk: WalkId, ticket: Ticket): Promise<void> {
    const { engine, board, isOwn, say, journal, far, time } = this.#parts;
    if (this.#links.has(walk)) return;
    this.#farName = ticket.hubName;
    const link = await startWalkLink({
      engine,
      walk,
      far: ticket.hub,
      farName: ticket.hubName,
      board,
      isOwn,
      vouch: (source, key) => say(walk, { name: "hub.vouched", data: { source, key } }),
      journal,
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
      this.noteTurnedAway(walk, words);
      await link.stop();
      if (this.#links.get(walk) !== link) return;
      this.#links.delete(walk);
      if (isInvited) this.#isInvited = false;
      await this.#book.remove(walk).catch(() => {});
    });
  }

  #ask<Answer>(work: (signal: AbortSignal) => Promise<Answer>): Promise<Answer> {
    return this.#scope.ask(this.#answerTime, work);
  }
}
