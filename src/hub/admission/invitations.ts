import { z } from "zod";
import { ROLES, type Role } from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import type { Keep } from "../engine/index.ts";
import type { Surroundings } from "../surroundings/index.ts";
import { newCode } from "./codes.ts";
import { INVITATIONS, invitationKey, seatKey, seatsOf } from "./kept-keys.ts";
import { walkSchema } from "./member.ts";

const keptSchema = z.object({
  walk: walkSchema,
  role: z.enum(ROLES),
  expires: z.number(),
  /** Not said by earlier versions, whose codes were good for everybody. */
  devices: z.number().int().min(1).default(1),
});

/** What an invitation is to let in. */
export interface InvitationWish {
  readonly walk: WalkId;
  readonly role: Role;
  readonly minutes: number;
  readonly devices: number;
}

/** What an invitation lets in. */
export interface OpenInvitation {
  /** Under what it is kept. */
  readonly key: string;
  readonly walk: WalkId;
  readonly role: Role;
  readonly expires: Instant;
  /** How many devices may join by it. */
  readonly devices: number;
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

  async make({ walk, role, minutes, devices }: InvitationWish): Promise<MadeInvitation> {
    await this.#removeExpired();
    const code = newCode(this.#surroundings.randomBytes);
    const key = invitationKey(code);
    const expires = (this.#surroundings.now() + minutes * 60_000) as Instant;
    await this.#keep.put(key, JSON.stringify({ walk, role, expires, devices }));
    return { code, key, walk, role, expires, devices };
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

  /** Whether a device may join by an invitation, where it takes a seat unless it has one: on whichever hub of the engine it asks. */
  async admits({ key, devices }: OpenInvitation, device: string): Promise<boolean> {
    const taken = await this.#keep.list(seatsOf(key));
    if ([...taken.values()].includes(device)) return true;
    for (let seat = 1; seat <= devices; seat += 1) {
      const place = seatKey(key, seat);
      if (taken.has(place)) continue;
      if ((await this.#keep.create(place, device)) || (await this.#keep.get(place)) === device) return true;
    }
    return false;
  }

  /** How many more devices may join by an invitation. */
  async left({ key, devices }: OpenInvitation): Promise<number> {
    return Math.max(0, devices - (await this.#keep.list(seatsOf(key))).size);
  }

  async withdraw(key: string): Promise<void> {
    await this.#keep.remove(key);
    for (const [seat] of await this.#keep.list(seatsOf(key))) await this.#keep.remove(seat);
  }

  #read(key: string, text: string | null): OpenInvitation | null {
    if (text === null) return null;
    const kept = keptSchema.safeParse(JSON.parse(text)).data;
    if (!kept || kept.expires <= this.#surroundings.now()) return null;
    return { ...kept, key, expires: kept.expires as Instant };
  }

  async #removeExpired(): Promise<void> {
    for (const [key, text] of await this.#keep.list(INVITATIONS)) {
      if (this.#read(key, text) === null) await this.withdraw(key);
    }
  }
}
