import type { Outline, OutlineStep, Step } from "../../core/procedure/index.ts";
import type { CrewId, StepId } from "../../core/units/index.ts";
import { lengthText } from "../../core/units/index.ts";
import { callsOf, locationWords } from "../parts/index.ts";

/** A step as it is named elsewhere on the sheet: number, who and what, `4.3 (EV2)`. */
export function stepName(outline: Outline, id: StepId): string {
  const entry = outline.step(id);
  return entry ? `${entry.number} (${callsOf(outline, entry.step.by)})` : id;
}

/** The label of a place. */
function placeName(outline: Outline, id: Step["at"]): string {
  return id === undefined ? "" : (outline.place(id)?.label ?? id);
}

const predecessorsInLane = (outline: Outline, entry: OutlineStep): ReadonlySet<StepId> =>
  new Set(
    outline.steps
      .filter(
        ({ index, performers }) =>
          index < entry.index && performers.some((lane) => entry.performers.includes(lane)),
      )
      .map(({ step }) => step.id),
  );

/**
 * What must come before a step, in words: `after 4.3 (EV2)`, `10 min after 4.1 (IV)`, `only in Daylight`.
 * What its own performers have done before anyway is left out, unless time must pass.
 */
export function conditionWords(outline: Outline, step: Step, entry: OutlineStep | null): string[] {
  const own = entry ? predecessorsInLane(outline, entry) : new Set<StepId>();
  const after = step.after.flatMap(({ step: id, lag }) => {
    if (lag > 0) return [`not before ${lengthText(lag)} after ${stepName(outline, id)}`];
    return own.has(id) ? [] : [`after ${stepName(outline, id)}`];
  });
  const windows = step.within.map(
    (id) => `only in ${outline.procedure.windows.find((window) => window.id === id)?.label ?? id}`,
  );
  return [...after, ...windows];
}

/** Where a step is done, and what it changes: the way, the tether, the items. */
export function effectWords(outline: Outline, step: Step): string[] {
  const words: string[] = [];
  if (step.to) words.push(`to ${placeName(outline, step.to)}`);
  else if (step.at) words.push(`at ${placeName(outline, step.at)}`);
  if (step.anchor) words.push(`tether re-anchored at ${placeName(outline, step.anchor)}`);
  for (const { item, to } of step.moves)
    words.push(`${outline.item(item)?.label ?? item}: then ${locationWords(outline, to)}`);
  return words;
}

/** When a step is performed at all: `If bolt-3 is stuck:`; empty when always. */
export function branchWords(step: Step): string {
  const needs = Object.entries(step.when ?? {}).map(([decision, outcome]) => `${decision} is ${outcome}`);
  return needs.length > 0 ? `If ${needs.join(" and ")}:` : "";
}

/** Where a crew member works and what holds it: `outside, from the Airlock, tether of 25 m at the Airlock`. */
export function stationWords(outline: Outline, id: CrewId): string {
  const member = outline.crewMember(id);
  if (!member) return "";
  const words: string[] = [member.station];
  if (member.start) words.push(`starts at ${placeName(outline, member.start)}`);
  if (member.tether)
    words.push(`tether of ${member.tether.length} m anchored at ${placeName(outline, member.tether.anchor)}`);
  return words.join(", ");
}
