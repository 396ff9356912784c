import type { Instant, WalkId } from "../../core/units/index.ts";
import type { Engine } from "../engine/index.ts";
import type { DeviceNames } from "./device-names.ts";
import type { Caller, Member } from "./member.ts";
import type { MemberBook } from "./member-book.ts";

/** Somebody who wants to be in a walk under a name. */
export interface Claimant {
  readonly walk: WalkId;
  readonly device: string;
  /** The key that was proved; `null` for none. */
  readonly key: string | null;
  /** Who asks, when it has a good token already. */
  readonly caller: Caller | null;
  /** Under what the invitation is kept that it has; `null` for the owner's code. */
  readonly invitation: string | null;
}

/**
 * Why a name is not given. `other-key`: it belongs to another key. `key-needed`: it belongs to a key, and none was proved.
 * `device-taken`: a device without a key has it, whose token is good. `device-left`: a device without a key wrote under it
 * and is out. `device-elsewhere`: it belongs to a device of another hub.
 */
export type NameRefusal = "other-key" | "key-needed" | "device-taken" | "device-left" | "device-elsewhere";

/** What names are judged by. */
export interface NameClaimsParts {
  readonly engine: Engine;
  readonly names: DeviceNames;
  readonly members: MemberBook;
  readonly now: () => Instant;
}

/** Judges who may have which name ([SEL3], [SEL4]). */
export class NameClaims {
  readonly #parts: NameClaimsParts;

  constructor(parts: NameClaimsParts) {
    this.#parts = parts;
  }

  /** `null` when the claimant may have the name. */
  async refusal(claimant: Claimant): Promise<NameRefusal | null> {
    const { engine, names } = this.#parts;
    const { walk, device, key } = claimant;
    const name = await names.ask(walk, device);
    if (name && name.key !== null) {
      if (key === name.key) return null;
      return key === null ? "key-needed" : "other-key";
    }
    if (!name && (await engine.cameThrough(walk, device)) !== null) return "device-elsewhere";
    return this.#withoutKey(claimant);
  }

  /** A name without a key is kept by its token alone. The owner may put any device out anyway, and gives such a name anew. */
  async #withoutKey({ walk, device, caller, invitation }: Claimant): Promise<NameRefusal | null> {
    const { engine, members, now } = this.#parts;
    const member = await members.ask(walk, device);
    if (invitation === null || isItself(caller, member)) return null;
    const hasWritten = (await engine.lengthOf(walk, device)) > 0;
    if (!member || member.expires <= now()) return hasWritten ? "device-left" : null;
    // The same code again: the answer to the first request may have been lost.
    return !hasWritten && member.invitation === invitation ? null : "device-taken";
  }
}

function isItself(caller: Caller | null, member: Member | null): boolean {
  return caller?.kind === "member" && member !== null && caller.member.token === member.token;
}
