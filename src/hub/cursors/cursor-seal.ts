import { createHmac, timingSafeEqual } from "node:crypto";
import type { Cursor } from "../../core/link/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import type { Engine, StoredEntry } from "../engine/index.ts";
import type { Surroundings } from "../surroundings/index.ts";

const KEY = "cursor.key";
/** Characters of the engine's check, and of the signature behind it. */
const HALF = 16;

/**
 * Gives cursors their check and judges those that come back. The check is the engine's own for the entry and a signature
 * of this hub, so that a cursor proves what the hub once told, and nobody can make the hub believe that it told more.
 */
export class CursorSeal {
  readonly #engine: Engine;
  readonly #key: Buffer;

  private constructor(engine: Engine, key: Buffer) {
    this.#engine = engine;
    this.#key = key;
  }

  /** All hubs on an engine share the key. */
  static async open(engine: Engine, { randomBytes }: Surroundings): Promise<CursorSeal> {
    const made = Buffer.from(randomBytes(32)).toString("base64url");
    await engine.keep.create(KEY, made);
    return new CursorSeal(engine, Buffer.from((await engine.keep.get(KEY)) ?? made, "base64url"));
  }

  /** The cursor behind an entry, in the epoch of the moment. */
  behind(walk: WalkId, { offset, check }: Pick<StoredEntry, "offset" | "check">): Cursor {
    const { epoch } = this.#engine;
    return { epoch, offset, check: check + this.#signature(walk, epoch, offset, check) };
  }

  /** The cursor at an offset; without a check where no entry is there. */
  async at(walk: WalkId, offset: number): Promise<Cursor> {
    const check = offset === 0 ? null : await this.#engine.checkAt(walk, offset);
    return check === null ? { epoch: this.#engine.epoch, offset } : this.behind(walk, { offset, check });
  }

  /**
   * Whether this hub gave a cursor for a log that is not the one it has: the log lacks what it had, or holds something
   * else in its place. False for cursors of other epochs, without a check, and with one that this hub never gave.
   */
  async tellsOfAnotherPast(walk: WalkId, { epoch, offset, check }: Cursor): Promise<boolean> {
    if (epoch !== this.#engine.epoch || check === undefined) return false;
    const [told, signature] = [check.slice(0, HALF), check.slice(HALF)];
    const expected = this.#signature(walk, epoch, offset, told);
    if (!timingSafeEqual(Buffer.from(signature), Buffer.from(expected))) return false;
    return (await this.#engine.checkAt(walk, offset)) !== told;
  }

  #signature(walk: WalkId, epoch: string, offset: number, check: string): string {
    return createHmac("sha256", this.#key)
      .update(JSON.stringify([epoch, walk, offset, check]))
      .digest("base64url")
      .slice(0, HALF);
  }
}
