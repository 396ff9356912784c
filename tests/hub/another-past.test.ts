import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { readCursor } from "../../src/core/link/index.ts";
import type { WalkId } from "../../src/core/units/index.ts";
import { CursorSeal } from "../../src/hub/cursors/index.ts";
import { EventStream } from "./event-stream.ts";
import { TestHub, WALK } from "./test-hub.ts";
import { writtenNotes } from "./written-entry.ts";

const DEVICE = "/devices/one";
let hub: TestHub;
let token: string;
let url: string;
const open: EventStream[] = [];

beforeEach(async () => {
  hub = await TestHub.open();
  token = await hub.join(DEVICE);
  url = `${await hub.listen()}/api/walks/${WALK}/entries`;
  await hub.push(token, writtenNotes(DEVICE, 1, 5));
});
afterEach(async () => {
  for (const stream of open.splice(0)) stream.close();
  await hub.close();
});

async function follow(after = ""): Promise<EventStream> {
  const stream = await EventStream.open(url, token, after === "" ? {} : { "last-event-id": after });
  open.push(stream);
  await stream.until(() => stream.events.some(({ event }) => event === "cursor"));
  return stream;
}
const header = async () =>
  (await hub.ask("GET", `/api/walks/${WALK}/entries`, { token })).headers["tetherline-cursor"] as string;
/** The cursor of a hub that had the same key and epoch, and other entries: this one before it was brought back. */
async function toldOfMore(offset: number, check = "a".repeat(16)): Promise<string> {
  const { epoch } = hub.engine;
  const seal = await CursorSeal.open(hub.engine, {
    now: () => hub.now,
    randomBytes: () => new Uint8Array(32),
  });
  const cursor = seal.behind(WALK as WalkId, { offset, check });
  return `${epoch}:${offset}:${cursor.check}`;
}

describe("[HUB] a cursor that this log cannot have given", () => {
  it.each([
    ["beyond its end", 9],
    ["in its midst, behind another entry", 3],
  ])("%s makes another epoch: all streams end, and who comes back reads everything", async (_, offset) => {
    const other = await follow();
    const before = hub.engine.epoch;
    const stream = await follow(await toldOfMore(offset));
    expect(hub.engine.epoch).not.toBe(before);
    expect(stream.entries).toHaveLength(5);
    await other.ended;
    expect(hub.told).toEqual([expect.stringMatching(/brought back from a copy/)]);
    // Told once: what others were told under the epoch before is another store's.
    const [epoch, later] = [
      hub.engine.epoch,
      await follow(await toldOfMore(9).then((text) => text.replace(hub.engine.epoch, before))),
    ];
    expect([later.entries.length, hub.engine.epoch]).toEqual([5, epoch]);
  });

  it("is not believed from somebody who made it up", async () => {
    const before = hub.engine.epoch;
    const good = (await header()).split(":")[2] ?? "";
    for (const after of [
      `${before}:9`,
      `${before}:9:${"a".repeat(32)}`,
      `${before}:9:${good}`,
      `${before}:3:${good}`,
      `${before}:5:${"a".repeat(16)}${good.slice(16)}`,
    ]) {
      await follow(after);
    }
    expect(hub.engine.epoch).toBe(before);
  });

  it("of another walk proves nothing of this one", async () => {
    const seal = await CursorSeal.open(hub.engine, {
      now: () => hub.now,
      randomBytes: () => new Uint8Array(32),
    });
    const cursor = seal.behind("walk-2" as WalkId, { offset: 9, check: "a".repeat(16) });
    const before = hub.engine.epoch;
    await follow(`${before}:9:${cursor.check}`);
    expect(hub.engine.epoch).toBe(before);
  });
});

describe("[HUB] the check of a cursor", () => {
  it("comes with each cursor event, with the log and with the list of walks, and is the same everywhere", async () => {
    const stream = await follow();
    const { id = "", data = "" } = stream.events.find(({ event }) => event === "cursor") ?? {};
    const { check } = JSON.parse(data) as { check: string };
    expect(await header()).toBe(`${id}:${check}`);
    expect(readCursor(await header())).toEqual({ epoch: hub.engine.epoch, offset: 5, check });
    const { walks } = (await hub.ask("GET", "/api/walks", { token })).json<{ walks: { cursor: string }[] }>();
    expect(walks[0]?.cursor).toBe(`${id}:${check}`);
    await hub.push(token, writtenNotes(DEVICE, 6, 6));
    await stream.until(() => stream.events.filter(({ event }) => event === "cursor").length === 2);
    const resumed = await follow(await header());
    expect(resumed.entries).toEqual([]);
  });
});
