import { describe, expect, it } from "vitest";
import type { Role } from "../../../src/core/log/index.ts";
import { deviceOf, mayLead, mayMark, maySurprise, ROLES, roleRefusal } from "../../../src/core/log/index.ts";
import { worded } from "../said.ts";
import { numberedEntry } from "./numbered-entry.ts";

const device = "/devices/iv-tablet";
const strike = (source: string) => ({ source, id: "0000000001" });

/** Everything that can be entered, and who besides a lead and a relay may enter it. */
const FACTS: readonly (readonly [name: string, data: object, mayMarker: boolean])[] = [
  ["walk.opened", { procedure: {}, mode: "live" }, false],
  ["clock.started", {}, true],
  ["step.started", { step: "a" }, true],
  ["step.done", { step: "a" }, true],
  ["step.skipped", { step: "a", reason: "no need" }, true],
  ["step.reopened", { step: "a", reason: "wrong rail" }, true],
  ["record.taken", { step: "a", record: "r", value: 7 }, true],
  ["confirm.given", { step: "a" }, true],
  ["check.counted", { step: "a", check: 0 }, true],
  ["decision.taken", { decision: "bolt", outcome: "turns" }, true],
  ["decision.taken", { decision: "bolt", outcome: "turns", settles: true }, false],
  ["item.moved", { item: "bag", to: { place: "airlock" } }, true],
  ["state.set", { state: "hatch", value: "open", reason: "found so" }, true],
  ["supply.read", { crew: "ev1", supply: "oxygen", value: 0.5 }, true],
  ["note.made", { text: "seen" }, true],
  ["hold.called", {}, true],
  ["hold.lifted", {}, true],
  ["clock.compared", { hub: "hub-1", offset: 1, error: 0.1 }, true],
  ["clock.jumped", { by: -3300 }, true],
  ["entry.struck", strike(device), true],
  ["entry.struck", strike(`${device}/memory-k7f3`), true],
  ["entry.struck", strike("/devices/another"), false],
  ["walk.closed", { end: "complete" }, false],
  ["walk.reopened", { reason: "too soon" }, false],
  ["alert.raised", { alert: "turn-back", level: "act-now" }, true],
  ["alert.seen", { alert: "turn-back" }, true],
  ["plan.amended", { changes: [], reason: "late" }, false],
  ["amendment.seen", { amendment: strike("/devices/another") }, true],
  ["surprise.laid", { surprise: "00" }, false],
  ["plan.amended", { changes: [], reason: "late", needs: 99 }, false],
  ["note.made", { text: "seen", needs: 99 }, false],
  ["from.a.newer.version", {}, false],
];

describe("[LINK] who may write what", () => {
  const cases = FACTS.flatMap(([name, data, mayMarker]) =>
    ROLES.map((role) => {
      const may = role === "lead" || role === "relay" || (role === "marker" && mayMarker);
      return [role, may ? "may" : "may not", name, data] as const;
    }),
  );

  it.each(cases)("a %s %s write %s %j", (role, may, name, data) => {
    const entry = numberedEntry(7, { type: `tetherline.${name}`, data });
    const refusal = roleRefusal(entry, role, device);
    if (may === "may") expect(refusal).toBeNull();
    else
      expect(worded(refusal)).toEqual({
        reason: "role",
        words: expect.stringMatching(/^a (marker|trainer|watcher) /),
      });
  });

  it.each<[Role, string, string | null]>([
    ["lead", "/devices/another", "other-source"],
    ["marker", "/devices/another", "other-source"],
    ["watcher", "/devices/another", "role"],
    ["trainer", "/devices/another", "other-source"],
    ["relay", "/devices/another", null],
    ["lead", "/devices/iv-tablet-2", "other-source"],
    ["lead", "/devices/iv", "other-source"],
    ["lead", "/devices/", "other-source"],
    ["lead", "/elsewhere/devices/iv-tablet", "other-source"],
    ["lead", "/devices/IV-tablet", "other-source"],
    ["lead", `${device}/memory-k7f3`, null],
    ["marker", `${device}/memory-k7f3`, null],
  ])("a %s that enters under %s is refused as %s", (role, source, reason) => {
    expect(roleRefusal(numberedEntry(1, { source }), role, device)?.reason ?? null).toBe(reason);
  });

  it.each<[Role, boolean]>([
    ["lead", true],
    ["marker", false],
    ["watcher", false],
    ["trainer", true],
    ["relay", true],
  ])("[TRN2] a %s fires surprises: %s", (role, may) => {
    const entry = numberedEntry(7, { type: "tetherline.surprise.fired", data: { surprise: "00" } });
    expect(roleRefusal(entry, role, device) === null).toBe(may);
    expect(maySurprise(role)).toBe(role === "trainer");
  });

  it("nobody writes for the device whose name theirs begins with", () => {
    expect(roleRefusal(numberedEntry(1), "lead", "/devices/iv-tablet-2")?.reason).toBe("other-source");
  });

  it("marking is a lead's and a marker's, leading a lead's", () => {
    expect(ROLES.filter(mayMark)).toEqual(["lead", "marker"]);
    expect(ROLES.filter(mayLead)).toEqual(["lead"]);
  });
});

it.each([
  ["/devices/iv-tablet", "/devices/iv-tablet"],
  ["/devices/iv-tablet/memory-k7f3", "/devices/iv-tablet"],
  ["/devices/iv-tablet/a/b", "/devices/iv-tablet"],
  ["/devices/", "/devices/"],
  ["/devices//iv-tablet", "/devices//iv-tablet"],
  ["urn:a:b", "urn:a:b"],
  ["x/devices/iv-tablet/c", "x/devices/iv-tablet/c"],
])("[LINK] the source %s is of the device %s", (source, device) => {
  expect(deviceOf(source)).toBe(device);
});
