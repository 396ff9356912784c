import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { messageOf } from "../../../src/core/link/index.ts";
import type { WalkId } from "../../../src/core/units/index.ts";
import { numberedEntry } from "../log/numbered-entry.ts";
import { ZERO } from "../log-writer.ts";

const walk = "walk-1" as WalkId;
const entry = numberedEntry(7);
const data = JSON.stringify(entry.wire);
const now = new Date(ZERO).toISOString();

describe("[LINK] an event of a walk's stream", () => {
  it("without a name is an entry and how far it was read with it", () => {
    const message = { kind: "entry", entry, cursor: { epoch: "one", offset: 9 } };
    expect(messageOf({ id: "one:9", data }, walk)).toEqual(message);
    expect(messageOf({ event: "message", id: "one:9", data }, walk)).toEqual(message);
  });

  it.each([
    ["is no JSON", { id: "one:9", data: "{" }, { epoch: "one", offset: 9 }],
    ["is no entry", { id: "one:9", data: "{}" }, { epoch: "one", offset: 9 }],
    [
      "is of another walk",
      { id: "one:9", data: JSON.stringify(numberedEntry(7, { subject: "walk-2" }).wire) },
      { epoch: "one", offset: 9 },
    ],
    ["has no cursor", { data }, null],
    ["has a malformed cursor", { id: "9", data }, null],
  ])("that %s is counted as missing, and passed where it says how far", (_, event, cursor) => {
    expect(messageOf(event, walk)).toEqual({ kind: "unreadable", cursor });
  });

  it("tells how far there is nothing for this reader", () => {
    const cursor = { epoch: "one", offset: 0 };
    expect(messageOf({ event: "cursor", id: "one:0", data: "{}" }, walk)).toEqual({ kind: "cursor", cursor });
    expect(messageOf({ event: "cursor", id: "?", data: "{}" }, walk)).toBeNull();
  });

  it("tells who the hub is, who follows and what is beyond", () => {
    const hello = { hub: "hub-1", name: "Hub", role: "marker", device: "/devices/a", now };
    expect(messageOf({ event: "hello", data: JSON.stringify(hello) }, walk)).toEqual({
      kind: "hello",
      hello: { ...hello, hubKey: null, now: ZERO, toCome: null },
    });
    const follower = {
      device: "/devices/a",
      name: "IV",
      role: "lead",
      present: true,
      seenUpTo: now,
      heardAt: null,
    };
    expect(messageOf({ event: "presence", data: JSON.stringify({ followers: [follower] }) }, walk)).toEqual({
      kind: "presence",
      followers: [{ ...follower, seenUpTo: ZERO }],
    });
    const hub = { name: "Ground", state: "linking", sentUpTo: now, unsent: 2, heardAt: null, words: null };
    expect(messageOf({ event: "beyond", data: JSON.stringify({ hubs: [hub] }) }, walk)).toEqual({
      kind: "beyond",
      hubs: [{ ...hub, sentUpTo: ZERO }],
    });
  });

  it.each(["hello", "presence", "beyond"])(
    "%s that cannot be read, as from another version, means nothing",
    (event) => {
      expect(messageOf({ event, data: "{}" }, walk)).toBeNull();
      expect(messageOf({ event, data: "no JSON" }, walk)).toBeNull();
    },
  );

  it("of a name that is not known here means nothing", () => {
    expect(messageOf({ event: "from-a-newer-version", id: "one:9", data }, walk)).toBeNull();
  });

  test.prop([
    fc.constantFrom(undefined, "message", "cursor", "hello", "presence", "beyond", "x"),
    fc.option(fc.string(), { nil: undefined }),
    fc.oneof(fc.string(), fc.json()),
  ])("is read whatever it holds, and never as an entry that was not sent", (event, id, text) => {
    const message = messageOf({ event, id, data: text }, walk);
    expect(message === null || message.kind !== "entry").toBe(true);
  });
});
