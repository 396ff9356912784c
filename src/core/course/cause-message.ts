import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { Outline } from "../procedure/index.ts";
import { callsOf } from "./called.ts";
import type { WaitOn } from "./course-waits.ts";

/** A short message that says what a wait is for: `EV1 and IV`, `lag after vent`, `window dark`, `hold`. */
export function causeMessage(outline: Outline, on: WaitOn): Message {
  if ("crew" in on) return message("course/cause-crew", { crew: callsOf(outline, on.crew) });
  if ("lag" in on) return message("course/cause-lag", { step: on.lag });
  if ("notBefore" in on) return message("course/cause-not-before", { at: on.notBefore });
  return "window" in on
    ? message("course/cause-window", { window: on.window })
    : message("course/cause-hold");
}
