import { describe, expect, it } from "vitest";
import { codeText } from "../../../src/app/link/code-text.ts";
import {
  beyondWords,
  heardWords,
  linkWords,
  momentWords,
  onlyHereWords,
  roleWords,
  seenWords,
  unsentWords,
} from "../../../src/app/link/link-words.ts";
import { errorWords } from "../../../src/app/parts/index.ts";
import type { LinkStatus } from "../../../src/io/link/index.ts";
import type { StoreStatus } from "../../../src/io/store/index.ts";
import { message } from "../../../src/words/index.ts";
import { ZERO } from "../../core/log-writer.ts";
import { farHubOf, followerOf, linkOf, NOW, second } from "./stand-in-link.tsx";

const DURABLE: StoreStatus = { kind: "durable" };
const agoOf = (seconds: number) => second(7800 - seconds);

describe("[LINK] the bar says how the walk is linked", () => {
  it.each<[string, Partial<LinkStatus>, string, string, boolean]>([
    ["alone", { kind: "alone", role: null, heardAt: null }, "This device alone", "log kept here", false],
    ["linked", {}, "Linked", "all sent", false],
    ["linked, not all sent", { unsent: 3 }, "Linked", "3 not sent", false],
    [
      "linked, not all fetched",
      { fetching: { come: 12_000, of: 50_000 } },
      "Linked",
      "12000 of 50000 entries fetched",
      false,
    ],
    [
      "linked, neither all fetched nor all sent",
      { fetching: { come: 1, of: 2 }, unsent: 3 },
      "Linked",
      "1 of 2 entries fetched · 3 not sent",
      false,
    ],
    ["linked, last word fresh", { heardAt: agoOf(20) }, "Linked", "all sent", false],
    ["linked, last word old", { heardAt: agoOf(21) }, "Linked · heard 21 s ago", "all sent", false],
    [
      "linking, all sent",
      { kind: "linking", heardAt: agoOf(90) },
      "Linking · heard 90 s ago",
      "all sent",
      false,
    ],
    [
      "linking, not all sent",
      { kind: "linking", unsent: 1, heardAt: agoOf(5) },
      "Linking · heard 5 s ago",
      "1 not sent",
      true,
    ],
    [
      "linking for long",
      { kind: "linking", heardAt: agoOf(3900) },
      "Linking · heard 1 h 05 min ago",
      "all sent",
      true,
    ],
    ["linking, never heard", { kind: "linking", heardAt: null }, "Linking · never heard", "all sent", true],
    ["ended", { kind: "ended", words: "Join the walk again." }, "Link ended", "kept here only", true],
  ])("%s", (_, link, title, detail, alarming) => {
    expect(linkWords(linkOf(link), DURABLE, NOW)).toMatchObject({ title, detail, alarming });
  });

  it("in memory only, whatever the link", () => {
    const store: StoreStatus = { kind: "memory", reason: "full", message: message("store/full"), unsaved: 2 };
    for (const kind of ["alone", "linking", "linked", "ended"] as const) {
      expect(linkWords(linkOf({ kind }), store, NOW)).toMatchObject({
        title: "In memory only",
        detail: "export before closing",
        alarming: true,
      });
    }
  });
});

describe("[LINK] words for what others can have seen", () => {
  it("of a follower: all, or up to when, and whether it is away", () => {
    const words = (more: Parameters<typeof followerOf>[0]) => seenWords(followerOf(more), ZERO, NOW);
    expect(words({})).toBe("has seen all");
    expect(words({ seenUpTo: agoOf(44) })).toBe("has seen all");
    expect(words({ seenUpTo: agoOf(45) })).toBe("has seen all up to 2:09");
    expect(words({ present: false, seenUpTo: agoOf(180) })).toBe("away · has seen all up to 2:07");
    expect(words({ present: false, seenUpTo: NOW })).toBe("away · has seen all up to 2:10");
    expect(words({ seenUpTo: null })).toBe("is reading");
    expect(words({ seenUpTo: null, present: false })).toBe("has seen nothing yet");
  });

  it("of a hub beyond a gap: up to when, what waits, and how old the last word is", () => {
    const words = (more: Parameters<typeof farHubOf>[0]) => beyondWords(farHubOf(more), ZERO, NOW);
    expect(words({})).toBe("Ground hub has got all");
    expect(words({ sentUpTo: agoOf(180) })).toBe("Ground hub has got all up to 2:07");
    expect(words({ unsent: 4, sentUpTo: agoOf(5) })).toBe(
      "Ground hub has got all up to 2:09 · 4 waiting to be sent",
    );
    expect(words({ state: "linking", sentUpTo: agoOf(180), unsent: 4, heardAt: agoOf(240) })).toBe(
      "Ground hub has got all up to 2:07 · 4 waiting to be sent · heard 4 min ago",
    );
    expect(words({ state: "linking", sentUpTo: null, heardAt: null })).toBe(
      "Ground hub has got nothing yet · never heard",
    );
    expect(words({ state: "refused", words: "its code is no good" })).toBe(
      "Ground hub takes nothing: its code is no good",
    );
    expect(words({ state: "refused" })).toBe("Ground hub takes nothing: it was refused");
  });

  it("at a moment: in PET, before it to the second, and in UTC without a clock", () => {
    expect(momentWords(second(7620), ZERO)).toBe("2:07");
    expect(momentWords(second(-5), ZERO)).toBe("-0:00:05");
    expect(momentWords(second(61), null)).toBe("09:01:01 UTC");
  });

  it("names another hub as what it is", () => {
    expect(roleWords(followerOf({ role: "relay" }))).toBe("another hub");
    expect(roleWords(followerOf({ role: "watcher" }))).toBe("watcher");
  });
});

it("[LINK] says what is not sent, how old the last word is, and what is only here", () => {
  expect([unsentWords(0), unsentWords(1), unsentWords(12)]).toEqual([
    "all sent",
    "1 not sent",
    "12 not sent",
  ]);
  expect(heardWords(agoOf(0), NOW)).toBe("heard 0 s ago");
  // A clock that was set back must not show a time to come.
  expect(heardWords(second(9000), NOW)).toBe("heard 0 s ago");
  expect(heardWords(agoOf(600), NOW)).toBe("heard 10 min ago");
  expect(errorWords(new Error("No hub."))).toBe("No hub.");
  expect(errorWords(new Error("disk full"))).toBe("disk full.");
  expect(errorWords("odd")).toBe("unknown error.");
  expect(onlyHereWords(1)).toMatch(/^1 entry of another device is only on this tablet\. To bring it /);
  expect(onlyHereWords(7)).toMatch(/^7 entries of other devices are only on this tablet\. To bring them /);
});

it.each([
  ["abcdefghj", "ABC-DEF-GHJ"],
  [" abc def-GHJ ", "ABC-DEF-GHJ"],
  ["abc–def—ghj", "ABC-DEF-GHJ"],
  ["ab", "AB"],
  ["abcd", "ABC-D"],
  ["", ""],
  [" - ", ""],
])("[LINK] the code %j is shown as %j", (entered, shown) => {
  expect(codeText(entered)).toBe(shown);
});
