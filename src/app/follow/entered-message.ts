import type { Entry } from "../../core/log/index.ts";
import type { Outline } from "../../core/procedure/index.ts";
import { stateLabel, valueLabel } from "../../core/procedure/index.ts";
import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import { callsOf } from "../parts/index.ts";

/**
 * What one tap entered, in a message: that of its last entry, which is the one the follower meant. Returns `null` for
 * entries that nobody made by tapping.
 */
export function enteredMessage(entries: readonly Entry[], outline: Outline): Message | null {
  const fact = entries.at(-1)?.read.fact;
  if (!fact) return null;
  const stepOf = (id: string) => outline.step(id)?.step;
  switch (fact.name) {
    case "clock.started":
      return message("entered/clock-started");
    case "step.done": {
      const step = stepOf(fact.step);
      const what = { crew: step ? callsOf(outline, step.by) : "", step: step?.do ?? fact.step };
      const decided = entries[0]?.read.fact;
      if (fact.outOfOrder) return message("entered/out-of-order", { step: what.step });
      return decided?.name === "decision.taken"
        ? message("entered/outcome", { crew: what.crew, outcome: decided.outcome })
        : message("entered/done", what);
    }
    case "step.skipped":
      return message("entered/skipped", { step: stepOf(fact.step)?.do ?? fact.step });
    case "step.started":
      return message("entered/start-marked", { step: stepOf(fact.step)?.do ?? fact.step });
    case "step.reopened":
      return message("entered/reopened", { step: stepOf(fact.step)?.do ?? fact.step });
    case "record.taken":
      return message("entered/recorded", { value: fact.value });
    case "confirm.given":
      return message("entered/confirmed", { step: stepOf(fact.step)?.do ?? fact.step });
    case "check.counted":
      return message("entered/counted", { what: stepOf(fact.step)?.check[fact.check] ?? fact.step });
    case "decision.taken":
      return message("entered/decided", { outcome: fact.outcome });
    case "note.made":
      return message("entered/note-kept");
    case "watch.kept":
      return message("entered/watch-kept");
    case "item.moved":
      return message("entered/item-moved", { item: outline.item(fact.item)?.label ?? fact.item });
    case "state.set":
      return message("entered/state-set", {
        state: stateLabel(outline, fact.state),
        value: valueLabel(outline, fact.value),
      });
    case "supply.read":
      return message("entered/reading", { value: fact.value });
    case "light.chosen":
      return message("entered/light");
    case "plan.amended":
      return message("entered/amended", { reason: fact.reason });
    case "hold.called":
      return message("entered/hold-called");
    case "hold.lifted":
      return message("entered/hold-lifted");
    default:
      return null;
  }
}
