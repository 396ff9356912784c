import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import { callsOf } from "../course/index.ts";
import type { Outline } from "../procedure/index.ts";
import type { WaitTotal } from "./review.ts";

/** How long a lane waited for one cause over a whole walk, and for which: `12 min for EV2`. */
export function waitedMessage(outline: Outline, { on, time }: WaitTotal): Message {
  if (typeof on === "string") return message(`review/waited-${on}`, { time });
  // With nobody else, the step that ended the wait was the waiting crew member's own.
  return on.crew.length === 0
    ? message("review/waited-own", { time })
    : message("review/waited-crew", {
        time,
        crew: callsOf(outline, on.crew),
      });
}
