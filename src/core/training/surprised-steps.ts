import type { StepId } from "../units/index.ts";
import { later } from "../units/index.ts";
import type { Ledger } from "../walk/index.ts";
import { progressOf } from "../walk/index.ts";
import { surprisesOf } from "./surprises-of.ts";

/**
 * The steps whose times in a walk were made by its surprises: one that was stretched, the first that needed an item which was not
 * there, and those of somebody of whom nothing was heard meanwhile. Such a time tells nothing of how long the work takes.
 */
export function surprisedSteps(ledger: Ledger): ReadonlySet<StepId> {
  const { outline } = ledger.inForce;
  const outside = new Set(outline.crew.flatMap(({ id, station }) => (station === "outside" ? [id] : [])));
  const found = new Set<StepId>();
  for (const { surprise, began } of surprisesOf(ledger)) {
    if (began === null) continue;
    const { does } = surprise;
    const lasting = outline.steps.flatMap(({ step }) => {
      const { start, finish } = progressOf(ledger, step.id);
      return start !== null && finish !== null && finish >= began ? [{ step, start, finish }] : [];
    });
    if (does.kind === "stretch") {
      if (lasting.some(({ step }) => step.id === does.step)) found.add(does.step);
    } else if (does.kind === "missing") {
      const [first] = lasting
        .filter(({ step }) => step.moves.some(({ item }) => item === does.item))
        .sort((a, b) => a.finish - b.finish);
      if (first) found.add(first.step.id);
    } else if (does.kind === "silent" || does.kind === "contact") {
      const over = later(began, does.for);
      const isMeant = (crew: (typeof outline.crew)[number]["id"]) =>
        does.kind === "silent" ? crew === does.crew : outside.has(crew);
      for (const { step, start } of lasting) if (start <= over && step.by.some(isMeant)) found.add(step.id);
    }
  }
  return found;
}
