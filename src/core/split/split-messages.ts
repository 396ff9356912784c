import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import { windowLabel } from "../course/index.ts";
import type { Outline } from "../procedure/index.ts";
import type { StepId, TaskId } from "../units/index.ts";
import { minus } from "../units/index.ts";
import type { SplitAnswer, SplitCost, Suggestion } from "./split-of.ts";

/** How good an answer is, in a sentence. */
export function splitVerdict({ status, isProven, hasNoChoice, bound, before, finish }: SplitAnswer): Message {
  if (status === "no-plan" || bound === null || before === null || finish === null)
    return message("split/no-plan");
  if (hasNoChoice) return message("split/no-choice");
  if (status === "unchanged")
    return isProven ? message("split/kept-proven") : message("split/kept", { over: minus(finish, bound) });
  const by = minus(before, finish);
  return isProven
    ? message("split/proven", { finish, by })
    : message("split/best-found", { finish, by, over: minus(finish, bound) });
}

/** What became of a second proof, in a sentence. */
export function secondProofMessage({ status, choices }: NonNullable<SplitAnswer["second"]>): Message {
  return message(`split/second-${status}`, { choices });
}

/** What one suggestion changes, and why, in a sentence each. `outline` is that of the file. */
export function suggestionMessages(
  outline: Outline,
  suggestion: Suggestion,
): { readonly what: Message; readonly why: Message } {
  const why =
    suggestion.gain === null ? message("split/needed") : message("split/gains", { time: suggestion.gain });
  if (suggestion.kind === "order") {
    const title = (id: TaskId) => outline.procedure.tasks.find((task) => task.id === id)?.title ?? id;
    const { task, behind } = suggestion;
    return {
      what:
        behind === null
          ? message("split/task-first", { task: title(task) })
          : message("split/task-behind", { task: title(task), behind: title(behind) }),
      why,
    };
  }
  const { steps, from, to } = suggestion;
  const calls = (ids: readonly string[]) =>
    ids.map((id) => outline.crew.find((member) => member.id === id)?.call ?? id);
  const [first] = steps;
  const one = first === undefined ? null : outline.step(first);
  const hands = { crew: calls(to), old: calls(from) };
  return {
    what:
      steps.length === 1 && one
        ? message("split/step-given", { step: one.number, text: one.step.do, ...hands })
        : message("split/steps-given", { steps: numbersOf(outline, steps), ...hands }),
    why,
  };
}

/** What all suggestions cost together, in a sentence each. */
export function splitCostMessages(outline: Outline, { changedHands, metres, tighter }: SplitCost): Message[] {
  return [
    message("split/changed-hands", { count: changedHands }),
    ...(metres.before === metres.after ? [] : [message("split/metres", metres)]),
    ...tighter.map(({ window, before, after }) =>
      message("split/window-tighter", {
        window: windowLabel(outline, window),
        before,
        after,
      }),
    ),
  ];
}

/** The chain on which the finish hangs before, which the suggestions relieve; `null` where nothing is suggested. */
export function splitChainMessage(
  outline: Outline,
  { suggestions, criticalPath }: SplitAnswer,
): Message | null {
  const chain = numbersOf(outline, criticalPath.before);
  const [first] = chain;
  const last = chain.at(-1);
  return suggestions.length === 0 || first === undefined || last === undefined
    ? null
    : message("split/chain", { count: chain.length, first, last });
}

const numbersOf = (outline: Outline, steps: readonly StepId[]) =>
  steps.map((id) => outline.step(id)?.number ?? id);
