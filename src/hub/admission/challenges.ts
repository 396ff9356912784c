import { createHmac, timingSafeEqual } from "node:crypto";
import type { WalkId } from "../../core/units/index.ts";
import type { Keep } from "../engine/index.ts";
import type { Surroundings } from "../surroundings/index.ts";
import { CHALLENGES, challengeKey, keptOnce, SIGNING_KEY } from "./kept-keys.ts";

/** How long a challenge is good, in ms: a slow link takes a minute for question and answer. */
const LIFE = 5 * 60_000;
/** The same for another hub, whose messages may take half an hour each way. */
const LIFE_OF_HUBS = 2 * 3_600_000;

const CHALLENGE_PATTERN = /^([\w-]{22})\.(\d{1,15})\.([\w-]{43})$/;

/** For whom a challenge is. */
export interface Challenged {
  readonly walk: WalkId;
  readonly device: string;
}

/**
 * Challenges of which each is good once, for one device and walk, on every hub of the same engine. They are signed and not
 * kept, so that asking for them fills nothing; kept is, for as long as it matters, that one was used.
 */
export class Challenges {
  readonly #keep: Keep;
  readonly #surroundings: Surroundings;
  readonly #key: Buffer;

  private constructor(keep: Keep, surroundings: Surroundings, key: Buffer) {
    this.#keep = keep;
    this.#surroundings = surroundings;
    this.#key = key;
  }

  static async open(keep: Keep, surroundings: Surroundings): Promise<Challenges> {
    const fresh = Buffer.from(surroundings.randomBytes(32)).toString("base64url");
    return new Challenges(
      keep,
      surroundings,
      Buffer.from(await keptOnce(keep, SIGNING_KEY, fresh), "base64url"),
    );
  }

  make(challenged: Challenged): string {
    const { now, randomBytes } = this.#surroundings;
    const nonce = Buffer.from(randomBytes(16)).toString("base64url");
    const expires = String(now() + (challenged.device.startsWith("/hubs/") ? LIFE_OF_HUBS : LIFE));
    return `${nonce}.${expires}.${this.#mac(nonce, expires, challenged).toString("base64url")}`;
  }

  /** Uses a challenge up. False when it is none of ours, is for somebody else, has expired, or was used before. */
  async use(challenge: string, challenged: Challenged): Promise<boolean> {
    const [, nonce, expires, mac] = CHALLENGE_PATTERN.exec(challenge) ?? [];
    if (nonce === undefined || expires === undefined || mac === undefined) return false;
    const given = Buffer.from(mac, "base64url");
    const own = this.#mac(nonce, expires, challenged);
    if (given.length !== own.length || !timingSafeEqual(given, own)) return false;
    if (Number(expires) <= this.#surroundings.now()) return false;
    await this.#forgetExpired();
    return this.#keep.create(challengeKey(nonce), expires);
  }

  #mac(nonce: string, expires: string, { walk, device }: Challenged): Buffer {
    const text = ["tetherline challenge 1", nonce, expires, walk, device].join("\n");
    return createHmac("sha256", this.#key).update(text).digest();
  }

  async #forgetExpired(): Promise<void> {
    const now = this.#surroundings.now();
    for (const [key, expires] of await this.#keep.list(CHALLENGES)) {
      if (Number(expires) <= now) await this.#keep.remove(key);
    }
  }
}
