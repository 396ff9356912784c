import { message } from "../../words/index.ts";
import { custodyAtStart, isWithin } from "../custody/index.ts";
import type { Plan } from "../plan/index.ts";
import type { Finding } from "../procedure/index.ts";
import { finding } from "../procedure/index.ts";
import type { StepId } from "../units/index.ts";
import { handFindings } from "./hand-findings.ts";
import { labelOf } from "./item-words.ts";
import { leftFindings } from "./left-findings.ts";
import { refusalOf } from "./move-refusal.ts";

/**
 * Returns the findings on items for the plan of one scenario: moves that cannot be made ([CHK2], [PRO15]), more in hand
 * than two hands hold ([PRO14]), and items that are not where they must be at the end.
 */
export function custodyFindings(plan: Plan): Finding[] {
  const { outline } = plan;
  const found: Finding[] = [];
  // One map is changed in place for the whole plan, because a copy for each move would cost steps × items.
  const custody = new Map(custodyAtStart(outline.procedure));
  found.push(...handFindings(plan, custody, null));
  for (const index of movesInTime(plan)) {
    const entry = outline.steps[index];
    if (!entry) continue;
    for (const [position, { item, to }] of entry.step.moves.entries()) {
      const pointer = `${entry.pointer}/moves/${position}`;
      const concerned = { steps: [entry.step.id], things: [item] };
      const refusal = refusalOf(plan, custody, entry, item, to);
      if (refusal) {
        found.push(
          finding("error", refusal.code, pointer, refusal.message, {
            ...concerned,
            mend: refusal.mend ?? null,
          }),
        );
      }
      if ("item" in to && isWithin(custody, to.item, item)) {
        const inside = message("custody/would-be-inside-itself", {
          item: labelOf(outline, item),
          step: entry.step.id,
        });
        found.push(finding("error", "custody/inside-itself", pointer, inside, concerned));
      } else custody.set(item, to);
    }
    found.push(...handFindings(plan, custody, entry));
  }
  return [...found, ...leftFindings(plan, custody)];
}

/** The steps that move something, by reading order index, in the order in which the plan has them. */
export function movesInTime({ outline, network, timeline }: Plan): readonly number[] {
  const startOf = (index: number) =>
    timeline?.course.steps.get(outline.steps[index]?.step.id as StepId)?.start ?? 0;
  const moving = network.order.filter((index) => (outline.steps[index]?.step.moves.length ?? 0) > 0);
  // The sort is stable, so steps that start at the same time stay in the order of the network.
  return moving.sort((a, b) => startOf(a) - startOf(b));
}
