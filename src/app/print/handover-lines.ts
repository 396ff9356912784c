import type { Outline } from "../../core/procedure/index.ts";
import type { Handover } from "../../core/review/index.ts";
import type { Instant, StepId } from "../../core/units/index.ts";
import type { Said } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import { locationWords } from "../parts/index.ts";

/** Something that was otherwise than planned, as a line of the handover. */
export interface HandoverLine {
  readonly at: Instant;
  readonly step: StepId | null;
  readonly text: Said;
}

/** Returns everything that was otherwise than planned, in order of time. */
export function handoverLines(handover: Handover): readonly HandoverLine[] {
  const { outline } = handover.state.ledger.inForce;
  return [
    ...handover.deviations.map(({ at, step, text }): HandoverLine => ({ at, step, text })),
    ...reopenedLines(handover),
    ...correctedLines(handover, outline),
    ...decidedLines(handover, outline),
  ].sort((a, b) => a.at - b.at);
}

function reopenedLines({ reopenings }: Handover): readonly HandoverLine[] {
  return reopenings.map(({ at, step, reason }) => {
    const what = step === null ? "walk-reopened" : "step-reopened";
    const text = reason ? message(`handover/${what}`, { reason }) : message(`handover/${what}-no-reason`);
    return { at, step, text };
  });
}

function correctedLines({ corrections }: Handover, outline: Outline): readonly HandoverLine[] {
  return corrections.map(({ at, item, to, reason }) => {
    const moved = { item: outline.item(item)?.label ?? item, where: locationWords(outline, to) };
    const text = reason
      ? message("handover/item-corrected", { ...moved, reason })
      : message("handover/item-corrected-no-reason", moved);
    return { at, step: null, text };
  });
}

function decidedLines({ decisions }: Handover, outline: Outline): readonly HandoverLine[] {
  return decisions.map(({ at, decision: id, outcome, was }) => {
    const made = outline.decision(id);
    const ask = made?.decision.ask ?? id;
    const text =
      was === null
        ? message("handover/decided", { ask, outcome, expected: made?.decision.expect ?? "" })
        : message("handover/decided-otherwise", { ask, outcome, was });
    return { at, step: made?.madeBy.step.id ?? null, text };
  });
}
