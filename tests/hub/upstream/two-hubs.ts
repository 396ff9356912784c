import { expect } from "vitest";
import type { LinkTime } from "../../../src/core/link/index.ts";
import type { WalkId } from "../../../src/core/units/index.ts";
import {
  askFar,
  type FarClient,
  farClient,
  machineTime,
  startUpstream,
  type Upstream,
} from "../../../src/hub/upstream/index.ts";
import { GapProxy } from "../../machine/gap-proxy.ts";
import { WALK } from "../engine/written-notes.ts";
import { LiveHub } from "./live-hub.ts";

/** For what comes within seconds. */
export const PATIENT = { timeout: 20_000, interval: 25 };
/** A device of either side. */
export const HERE = "/devices/vehicle";
export const THERE = "/devices/ground";

/** Where a link is to differ from the usual. */
export interface LinkOver {
  readonly code?: string;
  readonly far?: FarClient;
  readonly time?: LinkTime;
}

/** How two hubs are to be. */
interface TwoHubsWish {
  readonly isWitness?: boolean;
  /** Addresses of JetStream for those that are not to keep their entries in a folder. */
  readonly engines?: { readonly ground?: string; readonly vehicle?: string };
}

/** Two hubs with a stretch of network between them; the vehicle has the ground for its upstream. */
export class TwoHubs {
  readonly ground: LiveHub;
  readonly vehicle: LiveHub;
  readonly proxy: GapProxy;
  /** What the vehicle's console was told. */
  readonly told: string[] = [];
  readonly #links: Upstream[] = [];

  private constructor(ground: LiveHub, vehicle: LiveHub, proxy: GapProxy) {
    this.ground = ground;
    this.vehicle = vehicle;
    this.proxy = proxy;
  }

  /** Opens both; they write nothing of themselves into logs unless asked. */
  static async open({ isWitness = false, engines = {} }: TwoHubsWish = {}): Promise<TwoHubs> {
    const ground = new LiveHub("ground", null, engines.ground);
    const vehicle = new LiveHub("vehicle", null, engines.vehicle);
    for (const hub of [ground, vehicle]) {
      hub.isWitness = isWitness;
      await hub.open();
    }
    return new TwoHubs(ground, vehicle, await GapProxy.open(() => ground.port));
  }

  /** What it was told, but for requests that were given up: with waits that short, a busy machine answers some too late. */
  get mistakes(): readonly string[] {
    return this.told.filter((words) => !words.includes("ABORT_ERR"));
  }

  /** The ground's interface over the proxy. */
  get far(): FarClient {
    return farClient(askFar({ origin: this.proxy.address, fingerprint: null }));
  }

  /** Links them. Waits are a twentieth of what they are, unless another time is given. */
  link({ code = this.ground.ownerCode, far = this.far, time }: LinkOver = {}): void {
    const real = machineTime({ now: () => this.vehicle.now() });
    const { engine, isOwn, key, witness, journal, beyond, id } = this.vehicle.parts;
    this.#links.push(
      startUpstream({
        engine,
        board: beyond,
        isOwn,
        key,
        say: (walk, word) => witness?.say(walk, word),
        journal,
        id,
        name: "vehicle",
        far,
        origin: this.proxy.address,
        code,
        time: time ?? { ...real, wait: (ms, signal) => real.wait(ms / 20, signal) },
        tell: (words) => this.told.push(words),
      }),
    );
  }

  async unlink(): Promise<void> {
    for (const link of this.#links.splice(0)) await link.stop();
  }

  async end(): Promise<void> {
    await this.unlink();
    await this.proxy.close();
    await this.vehicle.remove();
    await this.ground.remove();
  }

  /** How many entries both have, each once; -1 while they differ. */
  async agreed(walk: WalkId = WALK): Promise<number> {
    const [here, there] = [await this.vehicle.keys(walk), await this.ground.keys(walk)];
    const isOnce = new Set(here).size === here.length && new Set(there).size === there.length;
    const isSame = [...here].sort().join("\n") === [...there].sort().join("\n");
    return isOnce && isSame ? here.length : -1;
  }

  /** Waits until both have so many entries of a walk. */
  async agree(count: number, walk: WalkId = WALK, patience = PATIENT.timeout): Promise<void> {
    await expect.poll(() => this.agreed(walk), { ...PATIENT, timeout: patience }).toBe(count);
  }
}
