import { message } from "../../words/index.ts";
import type { Plan } from "../plan/index.ts";
import type { Finding, Outline } from "../procedure/index.ts";
import { finding } from "../procedure/index.ts";
import type { Duration, StepId } from "../units/index.ts";
import { minus, NO_TIME } from "../units/index.ts";

/**
 * Returns findings on a procedure that do not depend on a single scenario. `performed` tells for each step whether
 * any scenario performs it; it is `null` when not all scenarios were checked.
 */
export function procedureFindings(outline: Outline, performed: readonly boolean[] | null): Finding[] {
  return [
    ...decisionFindings(outline),
    ...(performed ? neverPerformed(outline, performed) : []),
    ...closeoutFindings(outline),
    ...supplyLevels(outline),
    ...boundRecords(outline),
  ];
}

function decisionFindings(outline: Outline): Finding[] {
  const { tasks, contingencies } = outline.procedure;
  const used = new Set(
    [tasks, ...contingencies.map((one) => one.tasks)]
      .flat()
      .flatMap(({ steps }) => steps.flatMap(({ when }) => Object.keys(when ?? {}))),
  );
  return outline.decisions.flatMap(({ decision, madeBy }) => {
    const concerned = { steps: [madeBy.step.id], things: [decision.id] };
    const pointer = `${madeBy.pointer}/decide`;
    if (decision.outcomes.length === 1) {
      const single = message("decision/one-outcome", {
        decision: decision.id,
        outcome: String(decision.outcomes[0]),
      });
      return [finding("advice", "decision/one-outcome", `${pointer}/outcomes`, single, concerned)];
    }
    if (used.has(decision.id)) return [];
    const unused = message("decision/no-branch", { decision: decision.id });
    return [finding("advice", "decision/no-branch", pointer, unused, concerned)];
  });
}

/** Returns findings for steps whose conditions never hold together. */
function neverPerformed(outline: Outline, performed: readonly boolean[]): Finding[] {
  return outline.steps.flatMap(({ index, step, pointer }) => {
    if (performed[index] || !step.when) return [];
    const never = message("decision/never-performed", { step: step.id });
    return [
      finding("caution", "decision/never-performed", `${pointer}/when`, never, {
        steps: [step.id],
        things: Object.keys(step.when),
      }),
    ];
  });
}

function closeoutFindings(outline: Outline): Finding[] {
  return outline.procedure.tasks.flatMap((task, index) => {
    if (!task.closeout || task.priority !== "get-ahead") return [];
    const closeout = message("task/closeout-get-ahead", { task: task.title });
    return [
      finding("caution", "task/closeout-get-ahead", `/tasks/${index}/priority`, closeout, {
        steps: task.steps.map(({ id }) => id),
        things: [task.id],
      }),
    ];
  });
}

function supplyLevels(outline: Outline): Finding[] {
  return outline.procedure.supplies.flatMap((supply, index) => {
    if (supply.redline < supply.full) return [];
    const call = outline.crewMember(supply.crew)?.call ?? supply.crew;
    const spent = message("supply/redline-above-full", {
      crew: call,
      supply: supply.label ?? supply.id,
      full: supply.full,
      redline: supply.redline,
    });
    return [
      finding("error", "supply/redline-above-full", `/supplies/${index}/redline`, spent, {
        things: [supply.crew, supply.id],
      }),
    ];
  });
}

/** The records that are bound to a supply which no performer of their step has, or which has another unit ([OFF7]). */
function boundRecords(outline: Outline): Finding[] {
  const { supplies } = outline.procedure;
  return outline.steps.flatMap(({ step, pointer }) =>
    step.records.flatMap((record, index): Finding[] => {
      if (record.supply === undefined) return [];
      const concerned = { steps: [step.id], things: [record.supply] };
      const owned = supplies.find(({ crew, id }) => id === record.supply && step.by.includes(crew));
      if (!owned) {
        const crew = step.by.map((id) => outline.crewMember(id)?.call ?? id);
        const said = message("record/no-supply", { crew, supply: record.supply });
        return [finding("error", "record/no-supply", `${pointer}/records/${index}/supply`, said, concerned)];
      }
      if (owned.unit === record.unit) return [];
      const said = message("record/other-unit", {
        unit: record.unit,
        supply: record.supply,
        other: owned.unit,
      });
      return [finding("error", "record/other-unit", `${pointer}/records/${index}/unit`, said, concerned)];
    }),
  );
}

/**
 * Returns findings for watches that are never due in a plan: they end before they begin, or they are active for too
 * short a time.
 */
export function watchFindings({ outline, timeline }: Plan): Finding[] {
  if (!timeline) return [];
  return outline.procedure.watches.flatMap((watch, index) => {
    const timeOf = (id: StepId | undefined, end: "start" | "finish", otherwise: Duration) => {
      if (id === undefined) return otherwise;
      return timeline.course.steps.get(id)?.[end] ?? null;
    };
    const from = timeOf(watch.from, "finish", NO_TIME);
    const until = timeOf(watch.until, "start", timeline.course.finish);
    if (from === null || until === null) return [];
    const steps = [watch.from, watch.until].flatMap((id) => id ?? []);
    const concerned = { steps, things: [watch.id] };
    if (until <= from) {
      const over = message("watch/never-on", {
        watch: watch.id,
        until: String(watch.until),
        from: String(watch.from),
      });
      // When the watch does not name both steps, the plan itself has no length, which is not a fault of the watch.
      return steps.length < 2
        ? []
        : [finding("caution", "watch/never-on", `/watches/${index}`, over, concerned)];
    }
    if (watch.every < minus(until, from)) return [];
    const none = message("watch/none-due", { watch: watch.id, every: watch.every, on: minus(until, from) });
    return [finding("caution", "watch/none-due", `/watches/${index}/every`, none, concerned)];
  });
}
