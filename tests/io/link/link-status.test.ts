import { describe, expect, it } from "vitest";
import type { LinkState } from "../../../src/core/link/index.ts";
import { UNLINKED } from "../../../src/core/link/link-state.ts";
import { aloneStatus, othersStatus, ownStatus } from "../../../src/io/link/link-status.ts";
import { joinedRow } from "../../../src/io/store/link-row.ts";
import { worded } from "../../core/said.ts";
import { ground, joining } from "../store/link-stand-ins.ts";
import { source, start } from "../store/stand-ins.ts";

const row = { ...joinedRow(null, joining), onlyHere: [`${ground} 1`, `${ground} 2`] };

describe("[LINK] what a screen is told of a link", () => {
  it.each<[string, Partial<LinkState>, string | RegExp | null]>([
    ["nothing is wrong", { kind: "linked" }, null],
    [
      "the hub is not reached",
      { kind: "linking", words: "The hub cannot be reached." },
      "The hub cannot be reached.",
    ],
    [
      "the hub takes nothing",
      { kind: "linked", words: "The hub’s disk is full." },
      "The hub’s disk is full.",
    ],
    [
      "the hub put this device out",
      { kind: "ended", words: "Join again.", trouble: "no disk" },
      "Join again.",
    ],
    [
      "its own store fails",
      { kind: "linked", trouble: "no disk", words: "gone" },
      /cannot keep up with the hub: no disk/,
    ],
    ["an entry cannot be read", { kind: "linked", unreadable: 1 }, /^1 entry of the hub is missing here/],
    ["entries cannot be read", { kind: "linked", unreadable: 3 }, /^3 entries of the hub are missing here/],
  ])("in words when %s", (_, state, words) => {
    const status = ownStatus(row, { ...UNLINKED, ...state });
    if (words instanceof RegExp) expect(worded(status.words)).toMatch(words);
    else expect(worded(status.words)).toBe(words);
  });

  it("by another page is what that one said, with what is kept of the link", () => {
    const said = ownStatus(
      { ...row, role: "marker", notices: [] },
      { ...UNLINKED, kind: "linked", unsent: 4 },
    );
    const notice = { key: "k", at: start, kind: "anew", count: 2, reason: null, clockOffset: null } as const;
    expect(worded(othersStatus({ ...row, notices: [notice] }, said, 9))).toMatchObject({
      kind: "linked",
      role: "lead",
      unsent: 4,
      onlyHere: 2,
      notices: [{ key: "k", words: expect.stringMatching(/^2 entries were entered again/) }],
    });
  });

  it("before any page said something is that it is linking", () => {
    expect(othersStatus(row, null, 9)).toEqual({
      ...aloneStatus(source),
      kind: "linking",
      role: "lead",
      hubName: "Hub",
      unsent: 9,
      onlyHere: 2,
    });
  });
});
