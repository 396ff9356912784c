import { request } from "node:http";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { beyondSchema, helloSchema, presenceSchema, readCursor } from "../../src/core/link/index.ts";
import type { Instant } from "../../src/core/units/index.ts";
import { note } from "./engine/written-notes.ts";
import { EventStream } from "./event-stream.ts";
import { NOON, TestHub, WALK } from "./test-hub.ts";
import { written, writtenNotes } from "./written-entry.ts";

const DEVICE = "/devices/d";
let hub: TestHub;
let token: string;
let url: string;
let open: EventStream[];

beforeEach(async () => {
  hub = await TestHub.open();
  token = await hub.join(DEVICE);
  url = `${await hub.listen()}/api/walks/${WALK}/entries`;
  open = [];
});
afterEach(async () => {
  for (const stream of open) stream.close();
  await hub.close();
});

async function follow(headers: Record<string, string> = {}, as = token, query = ""): Promise<EventStream> {
  const stream = await EventStream.open(url + query, as, headers);
  open.push(stream);
  return stream;
}
const digits = (...numbers: number[]) => numbers.map((number) => String(number).padStart(10, "0"));
const caughtUp = (stream: EventStream) =>
  stream.until(() => stream.events.some(({ event }) => event === "cursor"));
const cursorAt = async (entry: number) =>
  `${hub.engine.epoch}:${(await hub.engine.read(WALK, 0, 100))[entry - 1]?.offset}`;

describe("[HUB] the event stream", () => {
  it("begins with who one is, gives what is there, says when that was all, and goes on with what comes", async () => {
    await hub.push(token, writtenNotes(DEVICE, 1, 3));
    const stream = await follow();
    expect(stream.response.headers.get("content-type")).toMatch(/^text\/event-stream/);
    await caughtUp(stream);
    expect(stream.events.slice(0, 5).map(({ event }) => event)).toEqual([
      "hello",
      undefined,
      undefined,
      undefined,
      "cursor",
    ]);
    expect(helloSchema().parse(stream.named("hello")[0])).toMatchObject({
      device: DEVICE,
      role: "lead",
      toCome: 3,
    });
    await hub.push(token, [written(DEVICE, 4)]);
    await stream.until(() => stream.entries.length === 4);
    expect(stream.entries).toEqual(digits(1, 2, 3, 4));
    const ids = stream.events
      .filter(({ event }) => event === undefined)
      .map(({ id }) => readCursor(id ?? ""));
    expect(ids.every((cursor) => cursor?.epoch === hub.engine.epoch)).toBe(true);
    await stream.until(() => stream.named("presence").length > 0 && stream.named("beyond").length > 0);
    expect(presenceSchema().parse(stream.named("presence")[0]).followers[0]).toMatchObject({
      device: DEVICE,
      present: true,
      heardAt: NOON,
    });
  });

  it("sends the headers of plug-ins with a reply that is taken over", async () => {
    const { headers } = (await follow()).response;
    expect(headers.get("content-security-policy")).toContain("default-src 'self'");
    expect(headers.get("x-ratelimit-limit")).toMatch(/^\d+$/);
    expect(headers.get("cache-control")).toBe("no-store");
  });

  it("goes on behind Last-Event-ID, which wins over the query", async () => {
    await hub.push(token, writtenNotes(DEVICE, 1, 5));
    const [two, four] = [await cursorAt(2), await cursorAt(4)];
    const byHeader = await follow({ "last-event-id": four }, token, `?after=${encodeURIComponent(two)}`);
    const byQuery = await follow({}, token, `?after=${encodeURIComponent(two)}`);
    await Promise.all([caughtUp(byHeader), caughtUp(byQuery)]);
    expect([byHeader.entries, byQuery.entries]).toEqual([digits(5), digits(3, 4, 5)]);
    const toCome = (stream: EventStream) => helloSchema().parse(stream.named("hello")[0]).toCome;
    expect([toCome(byHeader), toCome(byQuery)]).toEqual([1, 3]);
  });

  it("says where a follower is though there is nothing to send: in an empty walk, from the head, with all withheld", async () => {
    const cursors = (stream: EventStream) =>
      stream.events.flatMap(({ event, id }) => (event === "cursor" ? [id] : []));
    const empty = await follow();
    await caughtUp(empty);
    expect([empty.entries, cursors(empty)]).toEqual([[], [`${hub.engine.epoch}:0`]]);
    const relay = await hub.join("/hubs/far", "relay");
    await hub.push(relay, writtenNotes("/devices/over-there", 1, 3));
    const head = await cursorAt(3);
    const atHead = await follow({ "last-event-id": head });
    const withheld = await follow({ "last-event-id": await cursorAt(1) }, relay);
    for (const stream of [atHead, withheld]) {
      await caughtUp(stream);
      expect([stream.entries, new Set(cursors(stream))]).toEqual([[], new Set([head])]);
    }
  });

  it("replays all to a cursor of an unknown epoch or ahead of the store, and refuses what is none", async () => {
    await hub.push(token, writtenNotes(DEVICE, 1, 3));
    for (const id of ["another-epoch:2", `${hub.engine.epoch}:${10 ** 15}`]) {
      const stream = await follow({ "last-event-id": id });
      await caughtUp(stream);
      expect([id, stream.entries]).toEqual([id, digits(1, 2, 3)]);
    }
    for (const id of ["3", "x:y", "a b:1", `${hub.engine.epoch}:-1`, `${hub.engine.epoch}:1e3`]) {
      expect([id, (await follow({ "last-event-id": id })).response.status]).toEqual([id, 400]);
    }
  });

  it("leaves nothing out and gives nothing twice to who comes while entries come in", async () => {
    const total = 1200;
    let sent = 0;
    const writing = (async () => {
      while (sent < total) {
        await hub.push(token, writtenNotes(DEVICE, sent + 1, sent + 40));
        sent += 40;
      }
    })();
    const streams: EventStream[] = [];
    // The longer the writing takes, the more would come, each of whom makes it take longer.
    while (sent < total && streams.length < 50) {
      streams.push(await follow());
      await new Promise((resolve) => setTimeout(resolve, 5));
    }
    await writing;
    expect(streams.length).toBeGreaterThan(1);
    const all = digits(...Array.from({ length: total }, (_, index) => index + 1));
    for (const stream of streams) {
      await stream.until(() => stream.entries.length >= total);
      expect(stream.entries).toEqual(all);
    }
  });

  it("tells a follower of another hub on the same engine", async () => {
    const second = await TestHub.open({}, hub.engine);
    const there = await EventStream.open(`${await second.listen()}/api/walks/${WALK}/entries`, token);
    open.push(there);
    await caughtUp(there);
    await hub.push(token, [written(DEVICE, 1)]);
    await there.until(() => there.entries.length === 1);
    there.close();
    await second.close();
  });

  it("does not send a relay what came through it, unless it has nothing, and tells it where it is", async () => {
    const relay = await hub.join("/hubs/far", "relay");
    await hub.push(relay, writtenNotes("/devices/over-there", 1, 2));
    await hub.push(token, [written(DEVICE, 1)]);
    await hub.push(relay, [written("/devices/over-there", 3)]);
    // It may have lost what it brought.
    const anew = await follow({}, relay);
    await caughtUp(anew);
    expect(anew.entries).toEqual(digits(1, 2, 1, 3));
    const far = await follow({ "last-event-id": await cursorAt(1) }, relay);
    const near = await follow();
    await Promise.all([caughtUp(far), caughtUp(near)]);
    expect([far.entries, near.entries]).toEqual([digits(1), digits(1, 2, 1, 3)]);
    const here = far.events.find(({ event }) => event === "cursor")?.id;
    expect(here).toBe(await cursorAt(4));
    await hub.push(relay, [written("/devices/over-there", 4)]);
    const head = await cursorAt(5);
    await far.until(() => far.events.some(({ event, id }) => event === "cursor" && id === head));
    await near.until(() => near.entries.length === 5);
    expect(far.entries).toEqual(digits(1));
  });

  it("ends when the token is withdrawn, leaves or is replaced", async () => {
    const marker = await hub.join("/devices/m", "marker");
    const second = await TestHub.open({}, hub.engine);
    const elsewhere = `${await second.listen()}/api/walks/${WALK}/entries`;
    const streams = [await follow({}, marker), await EventStream.open(elsewhere, marker)];
    await Promise.all(streams.map(caughtUp));
    const device = encodeURIComponent("/devices/m");
    await hub.ask("DELETE", `/api/walks/${WALK}/followers/${device}`, { token });
    await Promise.all(streams.map(({ ended }) => ended));
    expect((await follow({}, marker)).response.status).toBe(401);
    const replaced = await follow();
    await caughtUp(replaced);
    await hub.join(DEVICE);
    await replaced.ended;
    await second.close();
  });

  it("gives signs of life, and ends when the token's time is over", async () => {
    const answer = await fetch(url, {
      headers: { accept: "text/event-stream", authorization: `Bearer ${token}` },
    });
    const { admission, fanOut } = hub.hub.parts;
    const beat = () => fanOut.beat((member) => admission.isGood(member));
    beat();
    beat();
    hub.now = (NOON + 31 * 24 * 3_600_000) as Instant;
    beat();
    const said = await answer.text();
    expect(said.match(/^: alive$/gm)).toHaveLength(2);
  });

  it("cuts off who does not read, without holding up the others", async () => {
    const large = Array.from({ length: 20 }, (_, index) =>
      note({ source: DEVICE, number: index + 1, text: "x".repeat(1_000_000) }),
    );
    const reader = await follow();
    await caughtUp(reader);
    const { hostname, port, pathname } = new URL(url);
    const asleep = request({
      hostname,
      port,
      path: pathname,
      headers: { accept: "text/event-stream", authorization: `Bearer ${token}` },
    });
    const cut = new Promise<void>((resolve) => {
      asleep.once("response", (response) => {
        response.pause();
        response.socket.pause();
      });
      asleep.once("close", resolve);
      asleep.once("error", () => resolve());
    });
    asleep.end();
    await expect.poll(() => hub.hub.parts.fanOut.size).toBe(2);
    for (const [index, entry] of large.entries()) {
      await hub.engine.append(WALK, [entry]);
      // The one that reads is in the same process, and must have its turn to read.
      await reader.until(() => reader.entries.length === index + 1);
    }
    await expect.poll(() => hub.hub.parts.fanOut.size).toBe(1);
    asleep.destroy();
    await cut;
  });

  it("tells of the hubs beyond when that changes", async () => {
    const stream = await follow();
    await stream.until(() => stream.named("beyond").length === 1);
    const ground = {
      name: "ground",
      state: "linked",
      sentUpTo: NOON,
      unsent: 3,
      heardAt: null,
      words: null,
    } as const;
    hub.hub.parts.beyond.put(WALK, [ground]);
    await stream.until(() => stream.named("beyond").length === 2);
    expect(stream.named("beyond").map((said) => beyondSchema().parse(said).hubs)).toEqual([[], [ground]]);
  });
});

describe("[HUB] presence", () => {
  const followers = async (at = hub) =>
    presenceSchema().parse((await at.ask("GET", `/api/walks/${WALK}/followers`, { token: hub.owner })).json())
      .followers;

  it("says who is there and how far each has read, in the times of the hub", async () => {
    await hub.join("/devices/w", "watcher");
    hub.now = (NOON + 1000) as Instant;
    await hub.push(token, [written(DEVICE, 1)]);
    const atOne = await cursorAt(1);
    hub.now = (NOON + 2000) as Instant;
    await hub.push(token, [written(DEVICE, 2)]);
    hub.now = (NOON + 5000) as Instant;
    const say = (cursor: string) =>
      hub.ask("POST", `/api/walks/${WALK}/presence`, { token, body: { cursor } });
    expect((await followers()).map(({ seenUpTo, present }) => [seenUpTo, present])).toEqual([
      [null, false],
      [null, false],
    ]);
    await say(atOne);
    expect((await followers())[0]).toMatchObject({ seenUpTo: NOON + 2000, heardAt: NOON + 5000 });
    await say(await cursorAt(2));
    hub.now = (NOON + 9000) as Instant;
    expect((await followers())[0]?.seenUpTo).toBe(NOON + 9000);
    await say("other-epoch:2");
    expect((await followers())[0]?.seenUpTo).toBeNull();
  });

  it("of a device that goes silent is over within half a minute, though its stream still stands, and is told", async () => {
    const marker = await hub.join("/devices/m", "marker");
    const relay = await hub.join("/hubs/far", "relay");
    const watching = await follow();
    const silent = [await follow({}, marker), await follow({}, relay)];
    const script = await follow({}, await hub.join("/devices/script", "watcher"));
    const cursor = `${hub.engine.epoch}:0`;
    const say = (who: string) =>
      hub.ask("POST", `/api/walks/${WALK}/presence`, { token: who, body: { cursor } });
    for (const one of [token, marker, relay]) await say(one);
    const there = async () => (await followers()).flatMap(({ device, present }) => (present ? [device] : []));
    const all = [DEVICE, "/devices/m", "/devices/script", "/hubs/far"];
    hub.hub.parts.presence.look();
    hub.now = (NOON + 21_000) as Instant;
    expect(await there()).toEqual(all);
    await say(token);
    hub.now = (NOON + 22_000) as Instant;
    const told = watching.named("presence").length;
    hub.hub.parts.presence.look();
    await watching.until(() => watching.named("presence").length > told);
    // A hub beyond says it when something came, a script never: their streams alone count.
    expect(await there()).toEqual([DEVICE, "/devices/script", "/hubs/far"]);
    await say(marker);
    expect(await there()).toEqual(all);
    for (const one of [watching, script, ...silent]) one.close();
  });

  it("is told when somebody comes, joins, goes or is put out", async () => {
    const stream = await follow();
    const last = () => presenceSchema().parse(stream.named("presence").at(-1) ?? { followers: [] }).followers;
    const stands = (...expected: [string, boolean][]) =>
      stream.until(
        () =>
          JSON.stringify(last().map(({ device, present }) => [device, present])) === JSON.stringify(expected),
      );
    await stands([DEVICE, true]);
    const marker = await hub.join("/devices/m", "marker");
    await stands([DEVICE, true], ["/devices/m", false]);
    const second = await follow({}, marker);
    await stands([DEVICE, true], ["/devices/m", true]);
    second.close();
    await stands([DEVICE, true], ["/devices/m", false]);
    await hub.ask("DELETE", `/api/walks/${WALK}/followers/${encodeURIComponent("/devices/m")}`, { token });
    await stands([DEVICE, true]);
  });

  it("is shared by hubs on one engine, and forgets the streams of one that fell silent", async () => {
    // The embedded engine has nobody to whisper to: here its hubs hear each other.
    const ears = new Set<(text: string) => void>();
    const engine = {
      ...hub.engine,
      whisper: (_topic: string, text: string) => {
        for (const hear of ears) hear(text);
      },
      onWhisper: (_topic: string, hear: (text: string) => void) => {
        ears.add(hear);
        return () => void ears.delete(hear);
      },
    };
    const [one, two] = [await TestHub.open({}, engine), await TestHub.open({}, engine)];
    const stream = await EventStream.open(`${await one.listen()}/api/walks/${WALK}/entries`, token);
    await caughtUp(stream);
    expect((await followers(two))[0]).toMatchObject({ device: DEVICE, present: true });
    two.now = (NOON + 44_000) as Instant;
    two.hub.parts.presence.beat();
    expect((await followers(two))[0]?.present).toBe(true);
    one.hub.parts.presence.beat();
    two.now = (NOON + 88_000) as Instant;
    two.hub.parts.presence.beat();
    expect((await followers(two))[0]?.present).toBe(true);
    two.now = (NOON + 90_000) as Instant;
    two.hub.parts.presence.beat();
    expect((await followers(two))[0]?.present).toBe(false);
    stream.close();
    await one.close();
    await two.close();
  });
});
