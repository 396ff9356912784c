import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import type { Review, StepReview } from "../../../src/core/review/index.ts";
import { reviewOf } from "../../../src/core/review/index.ts";
import type { Duration } from "../../../src/core/units/index.ts";
import { formatDuration, inMinutes } from "../../../src/core/units/index.ts";
import type { LogWriter } from "../../core/log-writer.ts";
import { minute } from "../../core/log-writer.ts";

/** The two crew members of a surface walk by role, and a lane for what nobody is named for. */
export const CREW: ProcedureFile["crew"] = [
  { id: "cdr", call: "CDR", station: "outside", start: "lander" },
  { id: "lmp", call: "LMP", station: "outside", start: "lander" },
  { id: "base", call: "Base", station: "ground" },
];

export const PLACES: ProcedureFile["places"] = [{ id: "lander", label: "Lander", refuge: true }];

/** A published time, `h:mm:ss`, `hhh:mm:ss` or `m:ss`, with a sign or without, in milliseconds. */
export function published(text: string): Duration {
  const parts = text.replace(/^[+-]/, "").split(":").map(Number);
  const seconds = parts.reduce((sum, part) => sum * 60 + part, 0);
  if (Number.isNaN(seconds)) throw new Error(`not a published time: ${text}`);
  return ((text.startsWith("-") ? -seconds : seconds) * 1000) as Duration;
}

/** The same as a procedure file writes it. */
export const inFile = (duration: Duration) => formatDuration(duration);

/** Milliseconds of PET in the minutes that a log writer takes. */
export const asMinutes = (duration: number) => inMinutes(duration);

/** The review of a log, as it stood long after. */
export function reviewFrom(log: LogWriter): Review {
  const review = reviewOf(log.folded, minute(100_000));
  if (!review) throw new Error("the walk was not opened");
  return review;
}

/** The review of the step with this id. */
export function stepReview(review: Review, id: string): StepReview {
  const one = review.steps[review.outline.step(id)?.index ?? -1];
  if (!one) throw new Error(`no step ${id}`);
  return one;
}
