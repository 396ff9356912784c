import type { Entry } from "../../src/core/log/index.ts";
import { compareEntries, keyOf } from "../../src/core/log/index.ts";
import type { Outline } from "../../src/core/procedure/index.ts";
import { activityOf, lanesOf, outlineOf, parseProcedure } from "../../src/core/procedure/index.ts";
import type { DecisionId } from "../../src/core/units/index.ts";

/** How far a step has come, as the plain reducer keeps it. */
export interface PlainStep {
  status: "open" | "done" | "skipped";
  finish: number | null;
}

/**
 * What a program would do that keeps no more than it must: one pass over the entries in order, one state changed in place,
 * no machines, no snapshots, nothing to fold again from. It accepts and refuses steps by the same rules as the fold.
 */
export function plainReduce(entries: readonly Entry[]): readonly PlainStep[] {
  const byKey = new Map<string, Entry>();
  for (const entry of entries) if (!byKey.has(keyOf(entry))) byKey.set(keyOf(entry), entry);
  const ordered = [...byKey.values()].sort(compareEntries);
  const struck = struckKeys(ordered, byKey);

  let outline: Outline | null = null;
  let steps: PlainStep[] = [];
  let active: readonly boolean[] = [];
  let lanes: readonly (readonly number[])[] = [];
  let next: number[] = [];
  let phase: "prepared" | "running" | "held" | "closed" = "prepared";
  const outcomes = new Map<DecisionId, string>();
  const records: { step: number; record: string; value: number; outOfRange: boolean }[] = [];
  const notes: string[] = [];
  const items = new Map<string, unknown>();

  const isComplete = (index: number) => steps[index]?.status !== "open";
  const advance = () => {
    for (const [lane, indices] of lanes.entries()) {
      let position = next[lane] ?? 0;
      while (position < indices.length && isComplete(indices[position] ?? -1)) position += 1;
      next[lane] = position;
    }
  };
  const scenario = (of: Outline) => {
    active = activityOf(of, outcomes, true).active;
    lanes = lanesOf(of, active);
    next = of.crew.map(() => 0);
    advance();
  };
  const isBlocked = (of: Outline, index: number): boolean => {
    const entry = of.steps[index];
    if (!entry) return true;
    for (const lane of entry.performers) {
      const at = lanes[lane]?.[next[lane] ?? 0];
      if (at !== undefined && at !== index) return true;
    }
    return entry.step.after.some(({ step }) => {
      const before = of.step(step)?.index ?? -1;
      return active[before] === true && !isComplete(before);
    });
  };

  for (const { wire, read, at } of ordered) {
    const { fact } = read;
    if (!fact || struck.has(`${wire.source} ${wire.id}`)) continue;
    if (fact.name === "walk.opened") {
      if (outline) continue;
      const { procedure } = parseProcedure(fact.procedure);
      if (!procedure) continue;
      outline = outlineOf(procedure);
      steps = outline.steps.map(() => ({ status: "open", finish: null }));
      for (const { id, start } of procedure.items) items.set(id, start);
      scenario(outline);
      continue;
    }
    if (!outline || (phase === "closed" && fact.name !== "note.made")) continue;
    if (fact.name === "clock.started") {
      if (phase === "prepared") phase = "running";
      continue;
    }
    const entry = "step" in fact && fact.step !== undefined ? outline.step(fact.step) : null;
    const step = entry && active[entry.index] ? steps[entry.index] : undefined;
    switch (fact.name) {
      case "step.done":
        if (!entry || !step || step.status !== "open" || phase === "prepared") break;
        if (Object.keys(entry.step.when ?? {}).some((decision) => !outcomes.has(decision as DecisionId)))
          break;
        if (!fact.outOfOrder && isBlocked(outline, entry.index)) break;
        step.status = "done";
        step.finish = at;
        for (const { item, to } of entry.step.moves) items.set(item, to);
        advance();
        break;
      case "step.skipped":
        if (step?.status !== "open" || phase === "prepared") break;
        step.status = "skipped";
        step.finish = at;
        advance();
        break;
      case "step.reopened":
        if (!step || step.status === "open" || phase === "prepared") break;
        step.status = "open";
        step.finish = null;
        next = next.map(() => 0);
        advance();
        break;
      case "record.taken": {
        const record = entry?.step.records.find(({ id }) => id === fact.record);
        if (!entry || !record || phase === "prepared") break;
        const { min = Number.NEGATIVE_INFINITY, max = Number.POSITIVE_INFINITY } = record;
        records.push({
          step: entry.index,
          record: record.id,
          value: fact.value,
          outOfRange: fact.value < min || fact.value > max,
        });
        break;
      }
      case "decision.taken":
        if (outcomes.get(fact.decision) === fact.outcome || !outline.decision(fact.decision)) break;
        outcomes.set(fact.decision, fact.outcome);
        scenario(outline);
        break;
      case "note.made":
        notes.push(fact.text);
        break;
      case "hold.called":
        if (phase === "running") phase = "held";
        break;
      case "hold.lifted":
        if (phase === "held") phase = "running";
        break;
      case "walk.closed":
        phase = "closed";
        break;
    }
  }
  return steps;
}

/** Keys of struck entries; strikes that are struck themselves have no effect. */
function struckKeys(ordered: readonly Entry[], byKey: ReadonlyMap<string, Entry>): ReadonlySet<string> {
  const struck = new Set<string>();
  for (let at = ordered.length - 1; at >= 0; at -= 1) {
    const entry = ordered[at];
    const fact = entry?.read.fact;
    if (!entry || fact?.name !== "entry.struck" || struck.has(keyOf(entry))) continue;
    const key = `${fact.source} ${fact.id}`;
    const target = byKey.get(key);
    if (target && compareEntries(target, entry) < 0 && target.read.fact?.name !== "walk.opened")
      struck.add(key);
  }
  return struck;
}
