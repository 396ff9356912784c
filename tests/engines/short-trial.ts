import { shortFile } from "../browser/short-walk.ts";
import type { Tablet } from "./tablet.ts";

/** The short trial as a file. */
export const SHORT_TRIAL = { name: "short.procedure.json", text: JSON.stringify(shortFile) };

/** What is done, in the list of steps. */
export const DONE = '[data-stage="done"]';

/** Marks a step of the list. */
export const markDone = (tablet: Tablet, step: string) =>
  tablet.tapFirst(`[data-row="${step}"] .done-button`);

/** Waits until a step is marked. */
export const isMarked = (tablet: Tablet, step: string) => tablet.counts(`[data-row="${step}"]${DONE}`, 1);
