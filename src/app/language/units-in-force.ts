import type { System } from "../../core/quantity/index.ts";
import { showUnits } from "../../words/index.ts";
import { StoredChoice } from "../session/index.ts";
import { retelling } from "./retelling.ts";

/** The units that a reader may choose: those that stand in the file alone, or those of a system beside them ([WRD5]). */
export const UNIT_CHOICES = ["written", "si", "us"] as const satisfies readonly (System | "written")[];

export type UnitChoice = (typeof UNIT_CHOICES)[number];

const choice = new StoredChoice<string>("tetherline.units", "written");

let inForce: UnitChoice = "written";

/** The units in which things are told now. */
export const unitsInForce = (): UnitChoice => inForce;

/** The choice that was made last; one before it, whose conversion comes later, does nothing any more. */
let latest: UnitChoice = "written";

/** Tells everything in other units from now on. Rejects, with nothing changed, where the conversion cannot be loaded. */
async function goOver(units: UnitChoice): Promise<boolean> {
  latest = units;
  const inSystem = units === "written" ? null : (await import("./in-system.ts")).inSystem;
  if (latest !== units) return false;
  showUnits(units === "written" || !inSystem ? null : (quantity) => inSystem(quantity, units));
  inForce = units;
  return true;
}

/** Chooses the units, at once and for the next visits. Rejects, with nothing changed, where the conversion cannot be loaded. */
export async function chooseUnits(units: UnitChoice): Promise<void> {
  if (!(await goOver(units))) return;
  choice.choose(units);
  retelling.tell();
}

/** Begins with the units that were kept on this device: as written where none were, or where they cannot be converted now. */
export async function startUnits(): Promise<void> {
  try {
    await goOver(UNIT_CHOICES.find((one) => one === choice.current()) ?? "written");
  } catch {
    // What was written is there, and the field on the shelf says that it is in use.
  }
}
