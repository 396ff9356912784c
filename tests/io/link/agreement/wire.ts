import type { FarMessage, FarSide } from "../../../../src/core/link/index.ts";
import { UnreachableError } from "../../../../src/core/link/index.ts";
import type { Role } from "../../../../src/core/log/index.ts";
import type { Instant } from "../../../../src/core/units/index.ts";
import type { SmallHub } from "./small-hub.ts";
import type { VirtualTime } from "./virtual-time.ts";

/** How good a connection is. */
export interface WireState {
  /** `silent`: what is sent vanishes, and nobody is told. */
  readonly kind: "up" | "down" | "silent";
  /** Longest time under way in one direction, in ms. */
  readonly delay: number;
  /** Of so many requests one is lost, its answer lost, or heard twice; 0 for none. */
  readonly oneIn: number;
}

/** A good connection. */
export const GOOD: WireState = { kind: "up", delay: 100, oneIn: 0 };

/** A connection to a hub that delays, drops, loses answers and delivers requests again, late. */
export class Wire {
  state: WireState = GOOD;
  readonly hub: SmallHub;
  readonly #time: VirtualTime;
  readonly #cuts = new Set<() => void>();

  constructor(hub: SmallHub, time: VirtualTime) {
    this.hub = hub;
    this.#time = time;
  }

  set(state: WireState): void {
    this.state = state;
    if (state.kind === "down") for (const cut of [...this.#cuts]) cut();
  }

  /** What the hub's clock shows, asked over this connection. */
  async clock(signal: AbortSignal): Promise<Instant> {
    await this.#cross(signal);
    const { now } = this.hub;
    await this.#cross(signal);
    return now;
  }

  farSide(device: string, role: Role): FarSide {
    return {
      push: async (entries, signal) => {
        await this.#cross(signal);
        if (this.#isUnlucky()) return vanished(signal);
        const { starts } = this.hub;
        const answer = this.hub.push(entries, device, role);
        if (this.#isUnlucky()) {
          // The same request comes once more, after others.
          this.#time.after(this.#time.random() * 120_000, () => {
            if (this.hub.starts === starts && this.hub.isUp) this.hub.push(entries, device, role);
          });
        }
        if (this.#isUnlucky()) return vanished(signal);
        await this.#cross(signal);
        // With the process its connections ended.
        if (this.hub.starts !== starts) throw new UnreachableError("the connection was cut");
        return answer;
      },
      follow: async (after, hear, signal) => {
        await this.#cross(signal);
        const via = role === "relay" ? device : null;
        await new Promise<void>((_, reject) => {
          const cut = () => {
            stream.isCut = true;
            end();
            this.#cuts.delete(cut);
            signal.removeEventListener("abort", cut);
            reject(new UnreachableError("the connection was cut"));
          };
          const stream = { isCut: false, hear, cut, free: this.#time.now };
          const end = this.hub.follow(after, { via, hear: (message) => this.#later(stream, message), cut });
          this.#cuts.add(cut);
          signal.addEventListener("abort", cut, { once: true });
          if (signal.aborted || this.state.kind === "down") cut();
        });
      },
    };
  }

  /** Has a message heard after its time under way, in order, as on any one connection. */
  #later(
    stream: {
      readonly isCut: boolean;
      readonly hear: (message: FarMessage) => void;
      cut(): void;
      free: number;
    },
    message: FarMessage,
  ): void {
    const { now } = this.#time;
    stream.free = Math.max(stream.free, now + this.#time.random() * this.state.delay);
    this.#time.after(stream.free - now, () => {
      if (stream.isCut) return;
      if (this.state.kind === "up") stream.hear(message);
      // What follows something lost never arrives.
      else stream.cut();
    });
  }

  #isUnlucky(): boolean {
    const { oneIn } = this.state;
    return oneIn > 0 && this.#time.random() * oneIn < 1;
  }

  async #cross(signal: AbortSignal): Promise<void> {
    await this.#time.wait(this.#time.random() * this.state.delay, signal);
    if (this.state.kind === "silent") await vanished(signal);
    if (signal.aborted || this.state.kind === "down" || !this.hub.isUp) {
      throw new UnreachableError("not reached");
    }
  }
}

async function vanished(signal: AbortSignal): Promise<never> {
  await new Promise<void>((resolve) => {
    if (signal.aborted) resolve();
    signal.addEventListener("abort", () => resolve(), { once: true });
  });
  throw new UnreachableError("no answer");
}
