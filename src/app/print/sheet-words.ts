import { windowLabel } from "../../core/course/index.ts";
import type { Outline, OutlineStep, Step } from "../../core/procedure/index.ts";
import type { CrewId, StepId } from "../../core/units/index.ts";
import { message, words } from "../../words/index.ts";
import { callsOf, locationWords, stateWords } from "../parts/index.ts";

/** A step as other parts of the sheet name it: its number and performers, `4.3 (EV2)`. */
export function stepName(outline: Outline, id: StepId): string {
  const entry = outline.step(id);
  return entry ? words("print/step-name", { step: entry.number, crew: callsOf(outline, entry.step.by) }) : id;
}

/** The label of a place; empty without one. */
export function placeName(outline: Outline, id: Step["at"]): string {
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
 * What must come before a step, in words: `after 4.3 (EV2)`, `10 min after 4.1 (IV)`, `only in Daylight`. Earlier steps
 * of its own performers are left out, unless time must pass after them or may run out.
 */
export function conditionWords(outline: Outline, step: Step, entry: OutlineStep | null): string[] {
  const own = entry ? predecessorsInLane(outline, entry) : new Set<StepId>();
  const after = step.after.flatMap(({ step: id, lag, within }) => {
    const name = stepName(outline, id);
    const latest = within === null ? [] : [words("print/at-most", { within, step: name })];
    if (lag > 0) return [words("print/not-before", { lag, step: name }), ...latest];
    return own.has(id) ? latest : [words("print/after", { step: name }), ...latest];
  });
  const windows = step.within.map((id) =>
    words("print/only-in", {
      window: windowLabel(outline, id),
    }),
  );
  const needs = stateWords(outline, step.needs).map((state) => words("print/only-while", { state }));
  return [...after, ...windows, ...needs];
}

/** Where a step is done, and what it changes: the place, the tether, the items. */
export function effectWords(outline: Outline, step: Step): string[] {
  const effects: string[] = [];
  if (step.to) effects.push(words("print/to-place", { place: placeName(outline, step.to) }));
  else if (step.at) effects.push(words("print/at-place", { place: placeName(outline, step.at) }));
  if (step.anchor) effects.push(words("print/re-anchored", { place: placeName(outline, step.anchor) }));
  for (const { item, to } of step.moves)
    effects.push(
      words("print/item-then", {
        item: outline.item(item)?.label ?? item,
        where: locationWords(outline, to),
      }),
    );
  for (const state of stateWords(outline, step.sets)) effects.push(words("print/state-then", { state }));
  return effects;
}

/** The condition under which a step is performed: `If bolt-3 is stuck:`; empty when it always is. */
export function branchWords(step: Step): string {
  const branches = Object.entries(step.when ?? {}).map(([decision, outcome]) =>
    message("print/branch", { decision, outcome }),
  );
  return branches.length > 0 ? words("print/if", { branches }) : "";
}

/** Where a crew member works and where the tether is: `outside, from the Airlock, tether of 25 m at the Airlock`. */
export function stationWords(outline: Outline, id: CrewId): string {
  const member = outline.crewMember(id);
  if (!member) return "";
  const facts: string[] = [words(`print/station-${member.station}`)];
  if (member.start) facts.push(words("print/starts-at", { place: placeName(outline, member.start) }));
  if (member.tether) {
    const { length, anchor } = member.tether;
    facts.push(
      words("print/tether", { length: { value: length, unit: "m" }, place: placeName(outline, anchor) }),
    );
  }
  return facts.join(words("figures/between"));
}
