import type { HubClient, Joined, LinkTime, Prover, Settled } from "../../core/link/index.ts";
import { HubRefusedError, TurnedAwayError, UnreachableError } from "../../core/link/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import type { Message } from "../../words/index.ts";
import { message, saidBy } from "../../words/index.ts";
import type { DeviceStore, HeldKey, NewLink } from "../store/index.ts";
import type { HubReach } from "./hub-reach.ts";
import type { Joining, JoinOutcome, Recovery, Sharing } from "./link-keeper.ts";
import { handOver } from "./sharing.ts";

/** What joining walks takes. */
export interface WalkJoinerParts {
  readonly store: DeviceStore;
  readonly reach: HubReach;
  readonly now: () => Instant;
  readonly time: Pick<LinkTime, "wait">;
  /** Called once a walk was joined and its link is stored. */
  readonly onJoined: (walk: WalkId) => Promise<void>;
}

/** The hub's words for a code that is not good for this. */
const OF_THE_CODE: ReadonlySet<string | null> = new Set(["bad-code", "bad-token"]);
/** What somebody at a tablet is told in place of the hub's words on names, which are for programs too. */
const OF_THE_NAME: Readonly<Record<string, Message>> = {
  "other-key": message("link/name-of-another"),
  "key-needed": message("link/name-of-another"),
  "device-taken": message("link/name-taken"),
  "device-left": message("link/name-left"),
  "device-elsewhere": message("link/name-elsewhere"),
};
const NOT_THE_OWNERS = message("link/not-the-owners-code");

/** Joins walks on a hub, and brings walks of this device there. */
export class WalkJoiner {
  readonly #parts: WalkJoinerParts;

  constructor(parts: WalkJoinerParts) {
    this.#parts = parts;
  }

  /** See `LinkKeeper.join`. */
  async join({ hub: said, code: entered, name, walk }: Joining): Promise<JoinOutcome> {
    const { store } = this.#parts;
    const code = bare(entered);
    const ofWalk = walk === undefined ? {} : { walk };
    const request = { code, device: store.device, name, ...ofWalk, use: this.#use };
    return this.#joined(name, said, async (hub, prover) => {
      try {
        return await hub.join(request, { prover });
      } catch (error) {
        if (!(error instanceof HubRefusedError) || error.reason !== "walk-needed") throw error;
        return { kind: "which", walks: await hub.walks({ credential: code }) };
      }
    });
  }

  /** See `LinkKeeper.share`. */
  share(sharing: Sharing): Promise<JoinOutcome> {
    const { store, now, time } = this.#parts;
    const { walk, name } = sharing;
    const code = bare(sharing.ownerCode);
    let refused: readonly Settled[] = [];
    const ask = async (hub: HubClient, prover: Prover | null) => {
      try {
        refused = await handOver({ walk, ownerCode: code, name }, { store, hub, now, wait: time.wait });
        return await hub.join({ code, device: store.device, name, walk, use: this.#use }, { prover });
      } catch (cause) {
        if (!(cause instanceof TurnedAwayError && OF_THE_CODE.has(cause.reason))) throw cause;
        throw new TurnedAwayError(NOT_THE_OWNERS, { cause });
      }
    };
    return this.#joined(name, sharing.hub, ask, async () => {
      if (refused.length > 0) await store.log.links.settle(walk, refused, 0);
    });
  }

  /** See `LinkKeeper.recover`. */
  async recover(walk: WalkId): Promise<Recovery> {
    const { store, reach } = this.#parts;
    if (await store.log.links.get(walk)) return "back";
    // A shell that has lost its store has lost its tokens with it.
    if (reach.home === null) return "not-a-member";
    try {
      const { name: hubName, device, user, ...session } = await reach.at(reach.home).session(walk);
      if (!(await store.become(device))) return "other-device";
      await this.#keep(
        { ...session, walk, device, hubName },
        { origin: reach.home, name: user, keyLack: null, isKeyCopyable: isCopyable(await store.key()) },
      );
      return "back";
    } catch (error) {
      if (error instanceof UnreachableError) return "unreachable";
      if (error instanceof TurnedAwayError || error instanceof HubRefusedError) return "not-a-member";
      throw error;
    }
  }

  /** How the token is to come: where no hub serves the page there is no cookie of its own. */
  get #use(): "bearer" | "cookie" {
    return this.#parts.reach.home === null ? "bearer" : "cookie";
  }

  async #joined(
    name: string,
    hub: string | undefined,
    ask: (hub: HubClient, prover: Prover | null) => Promise<Joined | Extract<JoinOutcome, { kind: "which" }>>,
    afterwards = async (): Promise<void> => {},
  ): Promise<JoinOutcome> {
    const { store, reach } = this.#parts;
    const origin = hub ?? reach.home;
    if (origin === null) return { kind: "refused", words: message("link/which-hub") };
    try {
      const held = await store.key();
      const { key, lack } = held;
      const joined = await ask(reach.at(origin), key && { key, host: new URL(origin).host });
      if ("kind" in joined) return joined;
      await this.#keep(joined, {
        origin,
        name,
        keyLack: lack,
        isKeyCopyable: isCopyable(held),
      });
      await afterwards();
      return { kind: "joined", walk: joined.walk as WalkId, role: joined.role };
    } catch (error) {
      const ofName = error instanceof TurnedAwayError ? OF_THE_NAME[error.reason ?? ""] : undefined;
      const words = ofName ?? saidBy(error);
      if (error instanceof UnreachableError) return { kind: "unreachable", words };
      const isSaid = error instanceof TurnedAwayError || error instanceof HubRefusedError;
      return { kind: "refused", words: isSaid ? words : message("link/not-kept", { why: words }) };
    }
  }

  async #keep(
    { key: deviceKey, token, ...joined }: Joined,
    as: Pick<NewLink, "origin" | "name" | "keyLack" | "isKeyCopyable">,
  ): Promise<void> {
    const { store, now, onJoined } = this.#parts;
    const { role, hub, hubName, device } = joined;
    const walk = joined.walk as WalkId;
    const kept = { hub, hubName, role, device, deviceKey, token: token ?? null };
    await store.log.links.join({ walk, joinedAt: now(), ...kept, ...as });
    await onJoined(walk);
  }
}

/** A code without the blanks and dashes that make it easier to read. */
function bare(code: string): string {
  return code.replaceAll(/[^\p{L}\p{N}]/gu, "");
}

/** Whether the key of a device could be copied off it; false without one. */
const isCopyable = (held: HeldKey): boolean => held.key !== null && held.isCopyable;
