import { message } from "../../words/index.ts";
import type { Plan } from "../plan/index.ts";
import type { Finding } from "../procedure/index.ts";
import { finding } from "../procedure/index.ts";
import { contactWindowsOf } from "../window/index.ts";

/**
 * Returns a caution for each call to the ground that names no window of contact and that the plan puts out of contact.
 * Steps that only the ground does need none.
 */
export function contactFindings({ outline, windows, timeline }: Plan): Finding[] {
  const isOnGround = (lane: number) => outline.crew[lane]?.station === "ground";
  const contact = contactWindowsOf(outline.procedure);
  const spans = contact.map((id) => windows.get(id) ?? null);
  if (!timeline || contact.length === 0 || spans.includes(null)) return [];
  return outline.steps.flatMap(({ step, pointer, performers }) => {
    const isCall = performers.some(isOnGround) && !performers.every(isOnGround);
    const planned = timeline.course.steps.get(step.id);
    if (!isCall || !planned || step.within.some((id) => contact.includes(id))) return [];
    const isHeard = spans
      .flatMap((list) => list ?? [])
      .some(({ from, to }) => from <= planned.start && planned.finish <= to);
    if (isHeard) return [];
    const said = message("window/call-out-of-contact", {
      step: step.id,
      start: planned.start,
      finish: planned.finish,
      windows: contact.map((id) => outline.procedure.windows.find((one) => one.id === id)?.label ?? id),
    });
    return [
      finding("caution", "window/call-out-of-contact", pointer, said, { steps: [step.id], things: contact }),
    ];
  });
}
