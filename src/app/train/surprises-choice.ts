import type { WalkId } from "../../core/units/index.ts";
import { StoredChoice } from "../session/index.ts";

/** The file of surprises that a trainer chose for a walk. */
export interface ChosenSurprises {
  readonly walk: WalkId;
  /** The text of the file. */
  readonly text: string;
}

/** What was chosen last on this device; kept, so that a reload goes on with it. */
export const surprisesChoice = new StoredChoice<ChosenSurprises | null>("tetherline.surprises", null);

/** The texts of the files that were given to the shelf, by the id of their procedure. */
export const givenSurprises = new StoredChoice<Readonly<Record<string, string>>>(
  "tetherline.surprises-given",
  {},
);
