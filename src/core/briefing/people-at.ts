import type { CrewPlace, Wait } from "../course/index.ts";
import { placesAt, waitsOf } from "../course/index.ts";
import { crewHolding } from "../custody/index.ts";
import type { CrewId, Duration, ItemId, StepId } from "../units/index.ts";
import type { Briefing } from "./briefing.ts";
import { stepsShownAt } from "./briefing.ts";

/** A crew member at a moment of a briefing. */
export interface Person {
  readonly crew: CrewId;
  /** `null` when the procedure does not say where. */
  readonly where: CrewPlace | null;
  /** The step in work; `null` without one. */
  readonly does: StepId | null;
  /** The wait at that moment; `null` without one. */
  readonly wait: Wait | null;
  /** The items that the crew member has, alone or with others, without what is inside them. */
  readonly carries: readonly ItemId[];
}

/** Everybody of the crew at a PET, in the order of the crew. */
export function peopleAt(briefing: Briefing, pet: Duration): readonly Person[] {
  const { course } = briefing;
  const { crew, items } = placesAt(course, pet);
  const shown = stepsShownAt(briefing, pet);
  const waits = waitsOf(course).filter(({ from, to }) => from <= pet && pet < to);
  return course.outline.crew.map(({ id }) => ({
    crew: id,
    where: crew.get(id) ?? null,
    does:
      shown.find(({ step, stage }) => stage !== "skipped" && course.outline.step(step)?.step.by.includes(id))
        ?.step ?? null,
    wait: waits.find((wait) => wait.crew === id) ?? null,
    carries: [...items].flatMap(([item, location]) => (crewHolding(location).includes(id) ? [item] : [])),
  }));
}
