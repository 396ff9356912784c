import type { Plan } from "../plan/index.ts";
import type { Finding, Outline } from "../procedure/index.ts";
import { finding } from "../procedure/index.ts";
import type { Duration, StepId } from "../units/index.ts";
import { lengthText, minus, NO_TIME } from "../units/index.ts";

/** What is odd in the parts of a procedure that no one scenario shows. `performed` tells which steps are in some scenario; `null` when not all were looked at. */
export function procedureFindings(outline: Outline, performed: readonly boolean[] | null): Finding[] {
  return [
    ...decisionFindings(outline),
    ...(performed ? neverPerformed(outline, performed) : []),
    ...closeoutFindings(outline),
    ...supplyLevels(outline),
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
      const message = `The decision "${decision.id}" has one outcome only, "${decision.outcomes[0]}", so there is nothing to decide.`;
      return [finding("advice", "decision/one-outcome", `${pointer}/outcomes`, message, concerned)];
    }
    if (used.has(decision.id)) return [];
    const message = `No step depends on how the decision "${decision.id}" comes out.`;
    return [finding("advice", "decision/no-branch", pointer, message, concerned)];
  });
}

/** Steps whose conditions never come together. */
function neverPerformed(outline: Outline, performed: readonly boolean[]): Finding[] {
  return outline.steps.flatMap(({ index, step, pointer }) => {
    if (performed[index] || !step.when) return [];
    const message = `"${step.id}" is never performed: the outcomes it needs never come together.`;
    return [
      finding("caution", "decision/never-performed", `${pointer}/when`, message, {
        steps: [step.id],
        things: Object.keys(step.when),
      }),
    ];
  });
}

function closeoutFindings(outline: Outline): Finding[] {
  return outline.procedure.tasks.flatMap((task, index) => {
    if (!task.closeout || task.priority !== "get-ahead") return [];
    const message = `"${task.title}" must be done on the way home, so it cannot be a get-ahead that is left out when time is short.`;
    return [
      finding("caution", "task/closeout-get-ahead", `/tasks/${index}/priority`, message, {
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
    const message = `${call}’s ${supply.label ?? supply.id} is full at ${supply.full} and at its redline at ${supply.redline}: it would be spent before the walk begins.`;
    return [
      finding("error", "supply/redline-above-full", `/supplies/${index}/redline`, message, {
        things: [supply.crew, supply.id],
      }),
    ];
  });
}

/** Watches that come to nothing in a plan: their time is over before it begins, or too short for one to fall due. */
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
      const message = `The watch "${watch.id}" is over before it begins: "${watch.until}" does not start after "${watch.from}" is done.`;
      // Without both steps named it is the plan that has no length, which is no fault of the watch.
      return steps.length < 2
        ? []
        : [finding("caution", "watch/never-on", `/watches/${index}`, message, concerned)];
    }
    if (watch.every < minus(until, from)) return [];
    const message = `The watch "${watch.id}" never falls due: it comes round every ${lengthText(watch.every)}, but is on for ${lengthText(minus(until, from))} only.`;
    return [finding("caution", "watch/none-due", `/watches/${index}/every`, message, concerned)];
  });
}
