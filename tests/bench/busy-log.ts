import { readFileSync } from "node:fs";
import type { Entry, FactData, FactName, HybridTime } from "../../src/core/log/index.ts";
import { laterOf, stamp } from "../../src/core/log/index.ts";
import { seededSource } from "../../src/core/plan/index.ts";
import { outlineOf, readProcedure } from "../../src/core/procedure/index.ts";
import type { Instant, WalkId } from "../../src/core/units/index.ts";

const START = Date.UTC(2031, 3, 2, 9) as Instant;
const SECOND = 1000;

/**
 * The log of a busy walk: the orbit walk done step by step again and again, reopened in between, with records, notes,
 * readings, holds, strikes and double taps, entered on so many devices. The same count and devices give the same log.
 */
export function busyLog(count: number, devices: number): Entry[] {
  const { procedure, file } = readProcedure(
    readFileSync("procedures/osier-ranging-head.procedure.json", "utf8"),
  );
  if (!procedure || !file) throw new Error("the orbit walk cannot be read");
  const { steps } = outlineOf(procedure);
  const random = seededSource(1);
  const entries: Entry[] = [];
  const made = new Array<number>(devices).fill(0);
  const walk = "bench" as WalkId;
  let seen: HybridTime | null = null;
  let now: Instant = START;
  const enter = <Name extends FactName>(name: Name, data: FactData<Name>): Entry => {
    const device = entries.length === 0 ? 0 : Math.floor(random() * devices);
    const draft = { name, data, at: now, actor: "iv" } as Parameters<typeof stamp>[0];
    const entry = stamp(draft, walk, { source: `/devices/${device}`, made: made[device] ?? 0, seen }, now);
    made[device] = (made[device] ?? 0) + 1;
    seen = laterOf(seen, entry.hlc);
    now = (now + Math.round(random() * 20) * SECOND) as Instant;
    entries.push(entry);
    return entry;
  };
  enter("walk.opened", { procedure: file, mode: "live" });
  enter("clock.started", {});
  for (;;) {
    for (const { step } of steps) {
      for (const { id, min = 1, max = min } of step.records)
        enter("record.taken", { step: step.id, record: id, value: (min + max) / 2 });
      if (step.decide) enter("decision.taken", { decision: step.decide.id, outcome: step.decide.expect });
      const done = enter("step.done", { step: step.id, outOfOrder: true });
      if (random() < 0.2) enter("step.done", { step: step.id });
      if (random() < 0.2) enter("note.made", { text: "Looks as it should.", step: step.id });
      if (random() < 0.05) {
        enter("entry.struck", { source: done.wire.source, id: done.wire.id });
        enter("step.done", { step: step.id, outOfOrder: true });
      }
      if (random() < 0.02) {
        enter("hold.called", { reason: "comm" });
        enter("hold.lifted", {});
      }
      if (entries.length >= count) return entries.slice(0, count);
    }
    for (const { step } of steps) enter("step.reopened", { step: step.id, reason: "again" });
  }
}
