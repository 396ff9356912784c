import { Listeners } from "../../core/units/index.ts";

/** Hear of each change of the way in which things are told to the reader: the language, the units, the style of UTC. */
export const retelling = new Listeners();
