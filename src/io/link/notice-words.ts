import type { RefusalReason } from "../../core/link/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { lengthText } from "../../words/index.ts";
import type { KeptNotice } from "../store/index.ts";

const WHY_ASIDE: Readonly<Record<RefusalReason, string>> = {
  "not-an-entry": "the hub cannot read such entries",
  "other-walk": "the hub takes entries of this walk only",
  "other-source": "the hub takes only what was made on this tablet",
  role: "the role of this tablet may not write such entries",
  ahead: "the hub takes no entries so far ahead in time",
  conflict: "the hub has others in that place",
};

/** What a notice says to the reader, in one or two sentences. */
export function noticeWords({ kind, count, reason, clockOffset }: KeptNotice): string {
  const entries = `${count} ${count === 1 ? "entry" : "entries"}`;
  const were = count === 1 ? "was" : "were";
  switch (kind) {
    case "restamped":
      return `${entries} ${were} put in order by the hub’s clock, because the clock of this tablet ${clockWords(clockOffset)}. Set it right.`;
    case "anew":
      return `${entries} ${were} entered again under new numbers, because the hub had others in their place. Nothing is lost.`;
    case "aside":
      return `${entries} ${were} set aside and ${count === 1 ? "does" : "do"} not count, because ${reason ? WHY_ASIDE[reason] : "the hub refused them"}.`;
  }
}

function clockWords(clockOffset: Duration | null): string {
  if (clockOffset === null || clockOffset >= 0) return "ran ahead";
  const by = -clockOffset as Duration;
  return `is ${by < 60_000 ? `${Math.round(by / 1000)} s` : lengthText(by)} ahead`;
}
