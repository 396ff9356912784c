import type { Duration } from "../../core/units/index.ts";
import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { KeptNotice } from "../store/index.ts";

/** What a notice says to the reader, in one or two sentences. */
export function noticeMessage({ kind, count, reason, clockOffset }: KeptNotice): Message {
  switch (kind) {
    case "restamped":
      return message("link/restamped", { count, clock: clockMessage(clockOffset) });
    case "anew":
      return message("link/entered-anew", { count });
    case "aside":
      return message("link/set-aside", { count, why: message(`link/aside-${reason ?? "refused"}`) });
  }
}

/** How the clock of this tablet stands; `clockOffset` is the hub's clock less the one here. */
function clockMessage(clockOffset: Duration | null): Message {
  if (clockOffset === null || clockOffset >= 0) return message("link/clock-ran-ahead");
  const by = -clockOffset as Duration;
  return by < 60_000
    ? message("link/clock-ahead-seconds", { seconds: Math.round(by / 1000) })
    : message("link/clock-is-ahead", { by });
}
