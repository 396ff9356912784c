import type { Duration } from "../../core/units/index.ts";
import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { KeptNotice } from "../store/index.ts";

/** What a notice says to the reader, in one or two sentences. */
export function noticeMessage({ kind, count, reason, clockOffset }: KeptNotice): Message {
  switch (kind) {
    case "restamped":
      return restampedMessage(count, clockOffset);
    case "anew":
      return message("link/entered-anew", { count });
    case "aside":
      return message("link/set-aside", { count, why: message(`link/aside-${reason ?? "refused"}`) });
  }
}

/** Entries put in order by the hub's clock; `clockOffset` is the hub's clock less the one here. */
const restampedMessage = (count: number, clockOffset: Duration | null): Message =>
  clockOffset === null || clockOffset >= 0
    ? message("link/restamped", { count })
    : message("link/restamped-by", { count, by: -clockOffset as Duration });
