import { createHash, timingSafeEqual } from "node:crypto";
import type { Keep } from "../engine/index.ts";
import type { Surroundings } from "../surroundings/index.ts";
import { newCode } from "./codes.ts";
import { keptOnce, OWNER_KEY } from "./kept-keys.ts";

const digest = (text: string) => createHash("sha256").update(text).digest();

/** The code that whoever runs the hub reads on its console: good for everything, on every hub of the same engine. */
export class OwnerCode {
  #code: string;
  readonly #stopWatching: () => void;

  private constructor(keep: Keep, code: string) {
    this.#code = code;
    this.#stopWatching = keep.watch(OWNER_KEY, (_key, value) => {
      if (value !== null) this.#code = value;
    });
  }

  /** The code kept, made first where there is none, or anew when that is wished. */
  static async open(keep: Keep, { randomBytes }: Surroundings, anew: boolean): Promise<OwnerCode> {
    if (anew) await keep.put(OWNER_KEY, newCode(randomBytes));
    return new OwnerCode(keep, await keptOnce(keep, OWNER_KEY, newCode(randomBytes)));
  }

  get code(): string {
    return this.#code;
  }

  /** Whether a code read with `readCode` is the owner's; takes the same time however much of it is right. */
  is(code: string): boolean {
    return timingSafeEqual(digest(code), digest(this.#code));
  }

  close(): void {
    this.#stopWatching();
  }
}
