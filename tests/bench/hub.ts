import { fork } from "node:child_process";
import { once } from "node:events";
import { loadavg } from "node:os";
import { join } from "node:path";
import { quantileSorted } from "d3-array";
import { startNats, whyNoNats } from "../machine/nats-server.ts";
import { measureAppends } from "./hub-appends.ts";
import { benchEntry, benchLog } from "./hub-entries.ts";
import { measureFollowers } from "./hub-followers.ts";
import type { NewcomerReport } from "./hub-newcomer.ts";
import { type Side, startFloor, startHubSide } from "./hub-sides.ts";

/**
 * The hub with each of its engines beside a floor of bare Fastify and event streams, in one run and in turns, so that all
 * see the same machine. Exits with 1 when a goal is missed.
 */
const FOLLOWERS = { followers: 500, rate: 20, rounds: 30, warmUp: 4, entries: 10, settling: 30_000 };
const SINGLE = { batch: 1, devices: 32, rounds: 3, turn: 1000 };
const BATCHES = { batch: 100, devices: 8, rounds: 3, turn: 1000 };
const NEWCOMERS = 3;
const MOST_OVER_FLOOR = 2;
const MOST_NEWCOMER = 1000;
const LOG_WALK = "bench";

/** Brings the log to a hub, as its owner. */
async function bringLog({ origin, owner, path }: Side): Promise<number> {
  const log = benchLog();
  for (let from = 0; from < log.length; from += 500) {
    const answer = await fetch(`${origin}${path(LOG_WALK)}`, {
      method: "POST",
      headers: { authorization: `Bearer ${owner}`, "content-type": "application/cloudevents-batch+json" },
      body: JSON.stringify(log.slice(from, from + 500)),
    });
    const said = await answer.text();
    if (said.split('"accepted"').length - 1 !== Math.min(500, log.length - from)) throw new Error(said);
  }
  return log.length;
}

/** What newcomers took, each in a new process, sides in turn. */
async function measureNewcomers(
  hubs: readonly Side[],
): Promise<ReadonlyMap<Side, readonly NewcomerReport[]>> {
  const counts = new Map<Side, number>();
  for (const hub of hubs) counts.set(hub, await bringLog(hub));
  const reports = new Map<Side, NewcomerReport[]>(hubs.map((hub) => [hub, []]));
  for (let turn = 0; turn < NEWCOMERS; turn += 1) {
    for (const hub of hubs) {
      const token = await hub.watch(LOG_WALK, `/devices/newcomer-${turn}`);
      const child = fork(join(import.meta.dirname, "hub-newcomer.ts"), [hub.origin, LOG_WALK, token]);
      const [report] = (await once(child, "message")) as [NewcomerReport];
      // A hub writes of its own of who came and what it holds.
      if (report.entries.some((count) => count < (counts.get(hub) ?? 0))) {
        throw new Error(`${hub.name}: a newcomer read ${report.entries.join(" and ")} entries`);
      }
      reports.get(hub)?.push(report);
    }
  }
  return reports;
}

const whole = (count: number) => Math.round(count).toLocaleString("en");
const over = (value: number, floor: number) => `${(value / floor).toFixed(2)}×`;

function row(name: string, cells: readonly string[]): void {
  console.log(`${name.padEnd(48)}${cells.map((cell) => cell.padStart(20)).join("")}`);
}

const nats = whyNoNats() === null ? await startNats({ count: 1 }) : null;
const floor = await startFloor();
const hubs = [await startHubSide("SQLite", null), ...(nats ? [await startHubSide("JetStream", nats)] : [])];
const sides = [floor, ...hubs];
try {
  const length = JSON.stringify(benchEntry("bench-followers", "/devices/bench", 1)).length;
  console.log(
    `Entries of ${length} characters, Node ${process.version}, load ${loadavg()[0]?.toFixed(1)} before the run.`,
  );
  if (!nats) console.log(`JetStream ${whyNoNats()}`);
  const beginning = await Promise.all(sides.map((side) => side.memory()));
  const told = await measureFollowers(sides, FOLLOWERS);
  const singles = await measureAppends(sides, SINGLE);
  const batches = await measureAppends(sides, BATCHES);
  const newcomers = await measureNewcomers(hubs);
  const end = await Promise.all(sides.map((side) => side.memory()));

  const quantile = (side: Side, part: number) =>
    quantileSorted([...(told.get(side)?.times ?? [])], part) ?? Number.NaN;
  const beside = (side: Side, value: number, atFloor: number, words: string) =>
    side === floor ? words : `${words} (${over(value, atFloor)})`;
  const appends = (rates: ReadonlyMap<Side, number>) =>
    sides.map((side) => {
      const rate = rates.get(side) ?? Number.NaN;
      return beside(side, rate, rates.get(floor) ?? Number.NaN, whole(rate));
    });
  const delivered = (part: number) =>
    sides.map((side) =>
      beside(side, quantile(side, part), quantile(floor, part), quantile(side, part).toFixed(1)),
    );
  const ofNewcomers = (kind: "stream" | "lines") =>
    sides.map((side) => {
      const times = newcomers.get(side)?.map((report) => report[kind]);
      return times ? times.map(whole).join(", ") : "";
    });

  console.log();
  row(
    "",
    sides.map(({ name }) => name),
  );
  row("POSTs of 1, 32 devices: entries/s", appends(singles));
  row("POSTs of 100, 8 devices: entries/s", appends(batches));
  row("POST → 500 followers at 20/s: p50, ms", delivered(0.5));
  row("p99, ms", delivered(0.99));
  row("most, ms", delivered(1));
  row("newcomer, 10,000 entries by stream, folded, ms", ofNewcomers("stream"));
  row("the same by JSON Lines", ofNewcomers("lines"));
  row("memory at the beginning, MB", beginning.map(whole));
  row(
    "with 500 followers",
    sides.map((side) => whole(told.get(side)?.memory ?? Number.NaN)),
  );
  row("in the end", end.map(whole));
  console.log();

  const isTold = hubs.every((hub) => quantile(hub, 0.99) <= MOST_OVER_FLOOR * quantile(floor, 0.99));
  const isRead = [...newcomers.values()].every((reports) =>
    reports.every(({ stream, lines }) => Math.max(stream, lines) < MOST_NEWCOMER),
  );
  console.log(`p99 at 500 followers at most ${MOST_OVER_FLOOR}× the floor: ${isTold ? "yes" : "no"}`);
  console.log(`10,000 entries read and folded by a newcomer in under 1 s: ${isRead ? "yes" : "no"}`);
  process.exitCode = isTold && isRead ? 0 : 1;
} finally {
  for (const side of sides) await side.stop();
  await nats?.stop();
}
