import { expect, it } from "vitest";
import type { Duration } from "../../../src/core/units/index.ts";
import { noticeMessage } from "../../../src/io/link/notice-message.ts";
import type { KeptNotice } from "../../../src/io/store/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { start } from "../store/stand-ins.ts";

const notice = (
  more: Partial<Omit<KeptNotice, "clockOffset">> & { readonly clockOffset?: number | null },
): KeptNotice => ({
  key: "k",
  at: start,
  kind: "restamped",
  count: 1,
  reason: null,
  ...more,
  clockOffset: (more.clockOffset ?? null) as Duration | null,
});

it.each<[Parameters<typeof notice>[0], string]>([
  [
    { clockOffset: -90_000 },
    "1 entry was put in order by the hub’s clock, because the clock of this tablet is 90 s ahead. Set it right.",
  ],
  [
    { count: 3, clockOffset: -59_400 },
    "3 entries were put in order by the hub’s clock, because the clock of this tablet is 60 s ahead. Set it right.",
  ],
  [
    { count: 2, clockOffset: -86_400_000 },
    "2 entries were put in order by the hub’s clock, because the clock of this tablet is 24 h 00 min ahead. Set it right.",
  ],
  [
    { clockOffset: 0 },
    "1 entry was put in order by the hub’s clock, because the clock of this tablet ran ahead. Set it right.",
  ],
  [
    {},
    "1 entry was put in order by the hub’s clock, because the clock of this tablet ran ahead. Set it right.",
  ],
  [
    { kind: "anew", count: 2 },
    "2 entries were entered again under new numbers, because the hub had others in their place. Nothing is lost.",
  ],
  [
    { kind: "aside", reason: "role" },
    "1 entry was set aside and does not count: the role of this tablet may not write such entries.",
  ],
  [
    { kind: "aside", reason: "conflict", count: 4 },
    "4 entries were set aside and do not count: the hub has others in that place.",
  ],
  [
    { kind: "aside", reason: "other-walk" },
    "1 entry was set aside and does not count: the hub takes entries of this walk only.",
  ],
])("[LINK] the notice %j is told in words", (given, words) => {
  expect(inWords(noticeMessage(notice(given)))).toBe(words);
});
