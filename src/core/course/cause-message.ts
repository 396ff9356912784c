import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { Outline } from "../procedure/index.ts";
import type { WaitOn } from "./course-waits.ts";

/** A short message that says what a wait is for: `EV1 and IV`, `lag after vent`, `window dark`, `hold`. */
export function causeMessage(outline: Outline, on: WaitOn): Message {
  if ("crew" in on) {
    const crew = on.crew.map((id) => outline.crewMember(id)?.call ?? id);
    return message("course/cause-crew", { crew });
  }
  if ("lag" in on) return message("course/cause-lag", { step: on.lag });
  if ("notBefore" in on) return message("course/cause-not-before", { at: on.notBefore });
  return "window" in on
    ? message("course/cause-window", { window: on.window })
    : message("course/cause-hold");
}
