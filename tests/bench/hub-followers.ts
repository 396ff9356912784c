import { type ChildProcess, fork } from "node:child_process";
import { once } from "node:events";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { benchEntry } from "./hub-entries.ts";
import type { OpenReaders, ReadersAnswer, ReportReaders } from "./hub-readers.ts";
import type { Side } from "./hub-sides.ts";
import { machineNow, WireConnection } from "./hub-wire.ts";

/** How entries are told to followers is measured so. */
export interface FollowersPlan {
  readonly followers: number;
  /** Entries a second. */
  readonly rate: number;
  /** Each side in turn, so often: short turns, so that whatever else the machine does falls on all alike. */
  readonly rounds: number;
  /** So many rounds before them, to warm up. */
  readonly warmUp: number;
  /** How many entries a turn has. */
  readonly entries: number;
  /** The followers of a hub are told of one another after so long, in ms; that is waited out. */
  readonly settling: number;
}

/** What a side came to. */
export interface FollowersReport {
  /** From just before a POST until its entry was with a follower, of every entry and follower, in ms, least first. */
  readonly times: readonly number[];
  /** Resident memory with all followers there, in MB. */
  readonly memory: number;
}

const WALK = "bench-followers";
const DEVICE = "/devices/bench";

/** Has the sides told to all their followers, in turns. Rejects when anything is missing, doubled or out of order. */
export async function measureFollowers(
  sides: readonly Side[],
  plan: FollowersPlan,
): Promise<ReadonlyMap<Side, FollowersReport>> {
  const readers = await Readers.start();
  try {
    const posted = new Map<Side, number[]>(sides.map((side) => [side, []]));
    const writing: (readonly [Side, string])[] = [];
    for (const side of sides) {
      const tokens: string[] = [];
      for (let number = 1; number <= plan.followers; number += 1)
        tokens.push(await side.watch(WALK, `/devices/follower-${number}`));
      const token = await side.join(WALK, DEVICE);
      writing.push([side, token]);
      await readers.ask({ kind: "open", side: side.name, port: side.port, path: side.path(WALK), tokens });
    }
    await wait(plan.settling);
    // Only now: a hub closes connections on which nothing is asked.
    const writers = new Map<Side, { readonly connection: WireConnection; readonly token: string }>();
    for (const [side, token] of writing)
      writers.set(side, { connection: await WireConnection.open(side.port), token });
    const memories = new Map<Side, number>();
    for (let round = 0; round < plan.warmUp + plan.rounds; round += 1) {
      // Nobody has always the same before it.
      for (const [turn] of sides.entries()) {
        const side = sides[(turn + round) % sides.length];
        const writer = side && writers.get(side);
        const times = side && posted.get(side);
        if (!side || !writer || !times) continue;
        await haveTold(side, writer, times, plan);
      }
    }
    for (const side of sides) memories.set(side, await side.memory());
    const reports = new Map<Side, FollowersReport>();
    for (const side of sides) {
      writers.get(side)?.connection.close();
      const arrivals = await readers.ask({ kind: "report", side: side.name });
      const times = timesOf(side, posted.get(side) ?? [], arrivals, plan);
      reports.set(side, { times, memory: memories.get(side) ?? 0 });
    }
    return reports;
  } finally {
    readers.stop();
  }
}

/** One turn of a side: posts its entries one by one at the rate asked for. */
async function haveTold(
  side: Side,
  { connection, token }: { readonly connection: WireConnection; readonly token: string },
  posted: number[],
  { entries, rate }: FollowersPlan,
): Promise<void> {
  const began = machineNow();
  for (let turn = 0; turn < entries; turn += 1) {
    const due = began + (turn * 1000) / rate;
    await wait(Math.max(0, due - machineNow()));
    const body = JSON.stringify([benchEntry(WALK, DEVICE, posted.length + 1)]);
    posted.push(machineNow());
    const { status, body: said } = await connection.post(side.path(WALK), token, body);
    if (status !== 200 || !said.includes('"accepted"')) throw new Error(`${side.name}: ${status} ${said}`);
  }
  // What is under way comes in before another side begins.
  await wait(150);
}

function timesOf(
  { name }: Side,
  posted: readonly number[],
  arrivals: readonly Float64Array[],
  { followers, entries, warmUp }: FollowersPlan,
): readonly number[] {
  const isAll = arrivals.length === followers && arrivals.every(({ length }) => length === posted.length);
  if (!isAll) throw new Error(`${name}: not every follower was told everything`);
  const first = warmUp * entries;
  const times = arrivals.flatMap((ofOne) =>
    posted.slice(first).map((at, index) => (ofOne[first + index] ?? Number.NaN) - at),
  );
  return times.sort((a, b) => a - b);
}

/** The processes that read. */
class Readers {
  readonly #child: ChildProcess;
  #failure: string | null = null;

  private constructor(child: ChildProcess) {
    this.#child = child;
    child.on("message", (answer: ReadersAnswer) => {
      if (answer.kind === "failed") this.#failure ??= answer.words;
    });
  }

  static async start(): Promise<Readers> {
    const child = fork(join(import.meta.dirname, "hub-readers.ts"), { serialization: "advanced" });
    await once(child, "spawn");
    return new Readers(child);
  }

  /** Asks; for a report, when each entry came to each follower. */
  async ask(asked: OpenReaders | ReportReaders): Promise<readonly Float64Array[]> {
    const answered = new Promise<ReadersAnswer>((resolve) => {
      const hear = (answer: ReadersAnswer) => {
        this.#child.off("message", hear);
        resolve(answer);
      };
      this.#child.on("message", hear);
    });
    this.#child.send(asked);
    const answer = await answered;
    if (this.#failure !== null) throw new Error(this.#failure);
    return answer.kind === "report" ? answer.arrivals : [];
  }

  stop(): void {
    this.#child.kill("SIGKILL");
  }
}
