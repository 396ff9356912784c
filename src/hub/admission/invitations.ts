import { z } from "zod";
import { ROLES, type Role } from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import type { Keep } from "../engine/index.ts";
import type { Surroundings } from "../surroundings/index.ts";
import { newCode } from "./codes.ts";
import { INVITATIONS, invitationKey } from "./kept-keys.ts";
import { walkSchema } from "./member.ts";

const keptSchema = z.object({ walk: walkSchema, role: z.enum(ROLES), expires: z.number() });

/** What an invitation lets in. */
export interface OpenInvitation {
  /** Under what it is kept. */
  readonly key: string;
  readonly walk: WalkId;
  readonly role: Role;
  readonly expires: Instant;
}

/** An invitation just made, with its code, which is told once and not kept. */
export interface MadeInvitation extends OpenInvitation {
  readonly code: string;
}

/** Codes that let devices into a walk, each for one role and a time. */
export class Invitations {
  readonly #keep: Keep;
  readonly #surroundings: Surroundings;

  constructor(keep: Keep, surroundings: Surroundings) {
    this.#keep = keep;
    this.#surroundings = surroundings;
  }

  async make(walk: WalkId, role: Role, minutes: number): Promise<MadeInvitation> {
    await this.#removeExpired();
    const code = newCode(this.#surroundings.randomBytes);
    const key = invitationKey(code);
    const expires = (this.#surroundings.now() + minutes * 60_000) as Instant;
    await this.#keep.put(key, JSON.stringify({ walk, role, expires }));
    return { code, key, walk, role, expires };
  }

  /** All that are still good, the first to expire before the others. */
  async all(): Promise<readonly OpenInvitation[]> {
    const kept = await this.#keep.list(INVITATIONS);
    return [...kept]
      .flatMap(([key, text]) => this.#read(key, text) ?? [])
      .sort((a, b) => a.expires - b.expires);
  }

  /** What a code lets in; `null` when it is unknown, withdrawn or has expired. */
  async open(code: string): Promise<OpenInvitation | null> {
    const key = invitationKey(code);
    return this.#read(key, await this.#keep.get(key));
  }

  async withdraw(key: string): Promise<void> {
    await this.#keep.remove(key);
  }

  #read(key: string, text: string | null): OpenInvitation | null {
    if (text === null) return null;
    const kept = keptSchema.safeParse(JSON.parse(text)).data;
    if (!kept || kept.expires <= this.#surroundings.now()) return null;
    return { key, walk: kept.walk, role: kept.role, expires: kept.expires as Instant };
  }

  async #removeExpired(): Promise<void> {
    for (const [key, text] of await this.#keep.list(INVITATIONS)) {
      if (this.#read(key, text) === null) await this.#keep.remove(key);
    }
  }
}
