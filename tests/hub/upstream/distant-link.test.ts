import { setMaxListeners } from "node:events";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { FarSide } from "../../../src/core/link/index.ts";
import { UnreachableError } from "../../../src/core/link/index.ts";
import type { FarClient } from "../../../src/hub/upstream/index.ts";
import { notes } from "../engine/written-notes.ts";
import { HERE, THERE, TwoHubs } from "./two-hubs.ts";
import { VirtualTime } from "./virtual-time.ts";

const MINUTE = 60_000;
const STEP = 10_000;

/** How the other hub is to be reached. */
interface Distance {
  readonly time: VirtualTime;
  /** Each way takes so long, in ms. */
  readonly delay: number;
  readonly isInContact: () => boolean;
}

/** A hub that is minutes away, or in contact at times only, by a time of its own. */
function distant(far: FarClient, { time, delay, isInContact }: Distance): FarClient {
  const travel = async (signal: AbortSignal): Promise<void> => {
    if (!isInContact()) throw new UnreachableError("out of sight");
    await time.wait(delay, signal);
    if (signal.aborted) throw new UnreachableError("given up");
  };
  const over = async <T>(signal: AbortSignal, work: () => Promise<T>): Promise<T> => {
    await travel(signal);
    const answer = await work();
    await travel(signal);
    return answer;
  };
  const distantSide = (side: FarSide): FarSide => ({
    push: (entries, signal) => over(signal, () => side.push(entries, signal)),
    follow: async (after, hear, signal) => {
      await travel(signal);
      const cut = new AbortController();
      // Each message on its way waits by itself.
      setMaxListeners(0, cut.signal);
      signal.addEventListener("abort", () => cut.abort(), { once: true });
      const watch = setInterval(() => isInContact() || cut.abort(), 5);
      const late: typeof hear = (message) => {
        void time.wait(delay, cut.signal).then(() => cut.signal.aborted || hear(message));
      };
      await side.follow(after, late, cut.signal).finally(() => clearInterval(watch));
    },
  });
  return {
    walks: (code, signal) => over(signal, () => far.walks(code, signal)),
    join: (code, walk, who, signal) => over(signal, () => far.join(code, walk, who, signal)),
    seen: (walk, token, cursor, signal) => over(signal, () => far.seen(walk, token, cursor, signal)),
    side: (walk, token) => distantSide(far.side(walk, token)),
  };
}

describe("[LINK] of a hub with one far away", { timeout: 120_000 }, () => {
  let hubs: TwoHubs;
  beforeEach(async () => {
    hubs = await TwoHubs.open();
    await hubs.vehicle.write(notes(1, 20, { source: HERE }));
    await hubs.ground.write(notes(1, 20, { source: THERE }));
  });
  afterEach(() => hubs.end());

  test("eight minutes each way: how long an answer is waited for grows until it comes", async () => {
    const time = new VirtualTime(Date.now());
    hubs.link({ time, far: distant(hubs.far, { time, delay: 8 * MINUTE, isInContact: () => true }) });
    const most = { step: STEP, most: 12 * 60 * MINUTE };
    const took = await time.until(async () => (await hubs.agreed()) === 40, most);
    // There and back to be let in, and once more for the entries, at the least.
    expect(took).toBeGreaterThan(32 * MINUTE);
    await hubs.vehicle.write(notes(21, 25, { source: HERE }));
    const next = await time.until(async () => (await hubs.ground.keys()).length === 45, most);
    expect(next).toBeLessThan(20 * MINUTE);
  });

  test("in contact six minutes of every ninety: both agree within the next contact", async () => {
    const time = new VirtualTime(Date.now());
    const began = time.now();
    const isInContact = () => (time.now() - began) % (90 * MINUTE) > 84 * MINUTE;
    hubs.link({ time, far: distant(hubs.far, { time, delay: 500, isInContact }) });
    // A machine that is busy with other tests needs longer for what a contact is long enough for.
    const most = { step: STEP, most: 4 * 60 * MINUTE, moment: () => (isInContact() ? 60 : 1) };
    const first = await time.until(async () => (await hubs.agreed()) === 40, most);
    expect(first).toBeLessThan(90 * MINUTE);
    await time.until(() => !isInContact(), most);
    await hubs.vehicle.write(notes(21, 30, { source: HERE }));
    await hubs.ground.write(notes(21, 30, { source: THERE }));
    const next = await time.until(async () => (await hubs.agreed()) === 60, most);
    expect(next).toBeLessThan(90 * MINUTE);
  });
});
