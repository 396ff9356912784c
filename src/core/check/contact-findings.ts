import { message } from "../../words/index.ts";
import type { Plan } from "../plan/index.ts";
import type { Finding, Outline } from "../procedure/index.ts";
import { finding } from "../procedure/index.ts";
import type { WindowId } from "../units/index.ts";

/** Matches what people call a window in which the ground can be heard. */
const CONTACT = /\b(?:aos|comms?|communications?|contact|coverage)\b/i;

/** The listed windows of contact: those that a step with the ground must lie in, and those that are called so. */
function contactWindows({ procedure, steps }: Outline, isOnGround: (lane: number) => boolean): WindowId[] {
  const named = new Set(
    steps.flatMap(({ step, performers }) => (performers.some(isOnGround) ? step.within : [])),
  );
  return procedure.windows
    .filter(
      ({ id, kind, label = "" }) => kind === "listed" && (named.has(id) || CONTACT.test(`${id} ${label}`)),
    )
    .map(({ id }) => id);
}

/**
 * Returns a caution for each call to the ground that names no window of contact and that the plan puts out of contact.
 * Steps that only the ground does need none.
 */
export function contactFindings({ outline, windows, timeline }: Plan): Finding[] {
  const isOnGround = (lane: number) => outline.crew[lane]?.station === "ground";
  const contact = contactWindows(outline, isOnGround);
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
