import { errors, jwtVerify, SignJWT } from "jose";
import { z } from "zod";
import { ROLES } from "../../core/log/index.ts";
import type { Keep } from "../engine/index.ts";
import type { Surroundings } from "../surroundings/index.ts";
import { keptOnce, SIGNING_KEY } from "./kept-keys.ts";
import { deviceSchema, type Member, walkSchema } from "./member.ts";

const ALGORITHM = "HS256";
const ISSUER = "tetherline";
/** Tokens read are remembered, so that a signature is checked once; forgotten all at once when there are so many. */
const MOST_REMEMBERED = 5000;

const claimsSchema = z.object({
  sub: deviceSchema,
  walk: walkSchema,
  role: z.enum(ROLES),
  jti: z.string().min(1),
  exp: z.number(),
});

/** What a token says, once its signature was found good. */
export type Claims = z.output<typeof claimsSchema>;

/** Signs tokens and reads them. All hubs on one engine share the key. */
export class Tokens {
  readonly #key: Uint8Array;
  readonly #surroundings: Surroundings;
  readonly #remembered = new Map<string, Claims>();

  private constructor(key: Uint8Array, surroundings: Surroundings) {
    this.#key = key;
    this.#surroundings = surroundings;
  }

  static async open(keep: Keep, surroundings: Surroundings): Promise<Tokens> {
    const key = Buffer.from(surroundings.randomBytes(32)).toString("base64url");
    return new Tokens(Buffer.from(await keptOnce(keep, SIGNING_KEY, key), "base64url"), surroundings);
  }

  async sign({ walk, device, role, token, joined, expires }: Member): Promise<string> {
    return new SignJWT({ walk, role })
      .setProtectedHeader({ alg: ALGORITHM })
      .setIssuer(ISSUER)
      .setSubject(device)
      .setJti(token)
      .setIssuedAt(Math.floor(joined / 1000))
      .setExpirationTime(Math.ceil(expires / 1000))
      .sign(this.#key);
  }

  /** What a token says; `null` when it is none of ours or has ended. */
  async read(token: string): Promise<Claims | null> {
    const remembered = this.#remembered.get(token);
    if (remembered) return remembered.exp * 1000 > this.#surroundings.now() ? remembered : null;
    try {
      const { payload } = await jwtVerify(token, this.#key, {
        algorithms: [ALGORITHM],
        issuer: ISSUER,
        currentDate: new Date(this.#surroundings.now()),
      });
      const claims = claimsSchema.parse(payload);
      if (this.#remembered.size >= MOST_REMEMBERED) this.#remembered.clear();
      this.#remembered.set(token, claims);
      return claims;
    } catch (error) {
      if (error instanceof errors.JOSEError || error instanceof z.ZodError) return null;
      throw error;
    }
  }
}
