import type { Cursor } from "../../core/link/index.ts";
import { formatInstant, type Instant, Listeners, type WalkId } from "../../core/units/index.ts";
import type { Admission, Member } from "../admission/index.ts";
import type { Engine } from "../engine/index.ts";
import type { Surroundings } from "../surroundings/index.ts";
import { type DeviceSign, deviceSignSchema, mergedSign } from "./device-sign.ts";

const TOPIC = "presence";
/** How long it counts what another hub process said of its streams, in ms: three of its signs of life. */
const HOLDS = 45_000;

/** A device that says how far it has read says so every ten to fifteen seconds: after so long a silence it is away, whatever its stream looks like, in ms. */
const AWAY_AFTER = 22_000;

/** Everybody in a walk, as sent: instants as text. */
export interface PresenceDocument {
  readonly followers: readonly {
    readonly device: string;
    readonly name: string;
    readonly role: Member["role"];
    readonly present: boolean;
    readonly seenUpTo: string | null;
    readonly heardAt: string | null;
  }[];
}

/** Who follows each walk and how far each has read, over all hubs on the same engine. */
export class PresenceBoard {
  readonly #engine: Engine;
  readonly #admission: Admission;
  readonly #surroundings: Surroundings;
  /** This process among those on the engine. */
  readonly #hub: string;
  readonly #here = new Map<string, DeviceSign>();
  readonly #elsewhere = new Map<string, DeviceSign & { readonly came: Instant }>();
  /** When the entry behind an offset of a walk came, which never changes: a device that has read up to that offset has yet to read it. */
  readonly #unread = new Map<string, Instant>();
  readonly #listeners = new Listeners<[walk: WalkId]>();
  /** Who was there when {@link look} looked last, by walk. */
  readonly #there = new Map<WalkId, string>();
  readonly #stopHearing: () => void;

  constructor(engine: Engine, admission: Admission, surroundings: Surroundings) {
    this.#engine = engine;
    this.#admission = admission;
    this.#surroundings = surroundings;
    this.#hub = Buffer.from(surroundings.randomBytes(9)).toString("base64url");
    this.#stopHearing = engine.onWhisper(TOPIC, (text) => this.#hear(text));
  }

  /** Notes that a stream of a device was opened; returns a function to call when it has ended. */
  opened(member: Member): () => void {
    this.#change(member, ({ streams }) => ({ streams: streams + 1 }));
    return () => this.#change(member, ({ streams }) => ({ streams: streams - 1 }));
  }

  /** A device was heard. */
  heard(member: Member): void {
    const sign = this.#signOf(member);
    this.#here.set(keyOf(member), { ...sign, heard: this.#surroundings.now() });
  }

  /** A device says how far it has read. */
  reported(member: Member, { epoch, offset }: Cursor): void {
    const read = epoch === this.#engine.epoch ? { offset, said: this.#surroundings.now() } : null;
    this.#change(member, () => ({ read }));
  }

  /** Calls back after each change of a walk; returns a function that ends it. */
  readonly listen = this.#listeners.add;

  /** Tells the other hubs what is here, and forgets what has not been heard of for long. */
  beat(): void {
    for (const [key, sign] of this.#here) {
      if (sign.streams > 0) this.#engine.whisper(TOPIC, JSON.stringify(sign));
      else if (!this.#admission.members(sign.walk as WalkId).some(({ device }) => device === sign.device)) {
        this.#here.delete(key);
      }
    }
    const now = this.#surroundings.now();
    for (const [key, sign] of this.#elsewhere) {
      if (sign.streams === 0 || sign.came + HOLDS >= now) continue;
      this.#elsewhere.set(key, { ...sign, streams: 0 });
      this.#listeners.tell(sign.walk as WalkId);
    }
  }

  /** Tells the listeners of walks in which somebody went away without a word. */
  look(): void {
    const walks = new Set(
      [...this.#here.values(), ...this.#elsewhere.values()].map(({ walk }) => walk as WalkId),
    );
    for (const walk of walks) {
      const there = JSON.stringify(
        this.#standing(walk).flatMap(({ member, present }) => (present ? [member.device] : [])),
      );
      const before = this.#there.get(walk);
      this.#there.set(walk, there);
      if (before !== undefined && before !== there) this.#listeners.tell(walk);
    }
    for (const walk of this.#there.keys()) if (!walks.has(walk)) this.#there.delete(walk);
  }

  /** Everybody in a walk. */
  async of(walk: WalkId): Promise<PresenceDocument> {
    // Many have read equally far: the store is asked once.
    const asked = new Map<number, Promise<Instant>>();
    const seenUpTo = (offset: number): Promise<Instant> => {
      const answer = asked.get(offset) ?? this.#seenUpTo(walk, offset);
      asked.set(offset, answer);
      return answer;
    };
    const followers = this.#standing(walk).map(
      async ({ member: { device, name, role }, read, heard, present }) => {
        return {
          device,
          name,
          role,
          present,
          seenUpTo: read && formatInstant(await seenUpTo(read.offset)),
          heardAt: heard === null ? null : formatInstant(heard),
        };
      },
    );
    return { followers: await Promise.all(followers) };
  }

  /** The members of a walk with what is known of them over all hubs, and whether they are there. */
  #standing(walk: WalkId) {
    const elsewhere = new Map<string, DeviceSign[]>();
    for (const sign of this.#elsewhere.values()) {
      if (sign.walk === walk) elsewhere.set(sign.device, [...(elsewhere.get(sign.device) ?? []), sign]);
    }
    const now = this.#surroundings.now();
    return this.#admission.members(walk).map((member) => {
      const sign = mergedSign([...(elsewhere.get(member.device) ?? []), this.#signOf(member)]);
      // A hub says how far it has read when something came, and a script may never say it.
      const isSilent =
        member.role !== "relay" &&
        sign.read !== null &&
        sign.heard !== null &&
        now - sign.heard >= AWAY_AFTER;
      return { ...sign, member, present: sign.streams > 0 && !isSilent };
    });
  }

  close(): void {
    this.#stopHearing();
  }

  /** The moment up to which a device has read everything: whoever has read up to an offset has read all that came before the next entry did. */
  async #seenUpTo(walk: WalkId, offset: number): Promise<Instant> {
    const key = `${offset} ${walk}`;
    const known = this.#unread.get(key);
    if (known !== undefined) return known;
    const now = this.#surroundings.now();
    const [next] = await this.#engine.read(walk, offset, 1);
    if (!next) return now;
    if (this.#unread.size > 10_000) this.#unread.clear();
    this.#unread.set(key, next.received);
    return next.received;
  }

  #signOf({ walk, device }: Member): DeviceSign {
    const none = { hub: this.#hub, walk, device, streams: 0, read: null, heard: null };
    return this.#here.get(keyOf({ walk, device })) ?? none;
  }

  #change(member: Member, change: (sign: DeviceSign) => Partial<DeviceSign>): void {
    const sign = this.#signOf(member);
    const changed = { ...sign, ...change(sign), heard: this.#surroundings.now() };
    this.#here.set(keyOf(member), changed);
    this.#engine.whisper(TOPIC, JSON.stringify(changed));
    this.#listeners.tell(member.walk);
  }

  #hear(text: string): void {
    const sign = deviceSignSchema.safeParse(JSON.parse(text)).data;
    if (!sign || sign.hub === this.#hub) return;
    this.#elsewhere.set(`${sign.hub} ${keyOf(sign)}`, { ...sign, came: this.#surroundings.now() });
    this.#listeners.tell(sign.walk as WalkId);
  }
}

const keyOf = ({ walk, device }: { readonly walk: string; readonly device: string }) => `${device} ${walk}`;
