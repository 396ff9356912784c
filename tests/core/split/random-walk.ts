import { fc } from "@fast-check/vitest";
import type { Draft, FactName } from "../../../src/core/log/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import type { Instant } from "../../../src/core/units/index.ts";
import type { Ledger } from "../../../src/core/walk/index.ts";
import { nextPlayedMove, playedTimesOf } from "../../../src/core/walk/index.ts";
import { LogWriter, ZERO } from "../log-writer.ts";
import { randomFile, seedsArb } from "./random-procedure.ts";

/** What somebody enters besides what the crew does; a step is meant by its place among those that are open. */
const meanwhileArb = fc.record({
  after: fc.nat({ max: 20 }),
  step: fc.nat(),
  what: fc.constantFrom(
    "skip",
    "out-of-order",
    "started",
    "reopen",
    "hold",
    "lift",
    "item",
    "state",
    "longer",
    "dropped",
  ),
});

/** What a random walk is made of. */
export const walkArb = fc.record({
  seeds: seedsArb,
  seed: fc.nat({ max: 1_000 }),
  moves: fc.nat({ max: 25 }),
  isStarted: fc.integer({ min: 0, max: 9 }).map((one) => one > 0),
  meanwhile: fc.array(meanwhileArb, { maxLength: 3 }),
  later: fc.integer({ min: 0, max: 12 }),
});

export type RandomWalk = typeof walkArb extends fc.Arbitrary<infer Value> ? Value : never;

/** A walk that was begun, and what its file was opened with. */
export interface BegunWalk {
  readonly file: ProcedureFile;
  readonly log: LogWriter;
  readonly ledger: Ledger;
  readonly at: Instant;
}

const minutesOf = (at: number) => (at - ZERO) / 60_000;

/** Plays a random file for a while, with what people enter meanwhile; some of it has no effect. */
export function begunWalk({ seeds, seed, moves, isStarted, meanwhile, later }: RandomWalk): BegunWalk {
  const file = randomFile(seeds);
  const log = LogWriter.opened(file);
  if (isStarted) log.enter("clock.started", {}, 0);
  const times = playedTimesOf(seed);
  const ledgerNow = () => {
    const { ledger, lastAt } = log.folded;
    if (!ledger || lastAt === null) throw new Error("the walk was not opened");
    return { ledger, lastAt };
  };
  for (let turn = 0; turn <= moves && isStarted; turn += 1) {
    for (const one of meanwhile.filter(({ after }) => after === turn)) enterOne(log, one);
    const { ledger, lastAt } = ledgerNow();
    const move = turn < moves && nextPlayedMove(ledger, times, lastAt);
    if (!move) break;
    for (const { name, data, at } of move.drafts) log.enter(name as FactName, data as never, minutesOf(at));
  }
  const { ledger, lastAt } = ledgerNow();
  return { file, log, ledger, at: (lastAt + later * 60_000) as Instant };
}

function enterOne(log: LogWriter, { what, step }: RandomWalk["meanwhile"][number]): void {
  const { ledger, lastAt } = log.folded;
  if (!ledger || lastAt === null) return;
  const ids = ledger.inForce.outline.steps.map(({ step: { id } }) => id as string);
  const id = ids[step % ids.length] ?? "";
  const enter = (name: Draft["name"], data: object) =>
    log.enter(name as FactName, data as never, minutesOf(lastAt));
  switch (what) {
    case "skip":
      return void enter("step.skipped", { step: id, reason: "no time" });
    case "out-of-order":
      return void enter("step.done", { step: id, outOfOrder: true });
    case "started":
      return void enter("step.started", { step: id });
    case "reopen":
      return void enter("step.reopened", { step: id, reason: "slip" });
    case "hold":
      return void enter("hold.called", { reason: "comm" });
    case "lift":
      return void enter("hold.lifted", {});
    case "item":
      return void enter("item.moved", { item: "tool", to: { crew: "ev2" } });
    case "state":
      return void enter("state.set", { state: "power", value: "on" });
    case "longer":
      return void enter("plan.amended", {
        changes: [{ change: id, set: { time: "PT17M" } }],
        reason: "longer",
        needs: 2,
      });
    case "dropped":
      return void enter("plan.amended", { changes: [{ drop: id }], reason: "not needed", needs: 2 });
  }
}
