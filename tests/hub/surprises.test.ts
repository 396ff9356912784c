import { fc, test } from "@fast-check/vitest";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { Role, WireEntry } from "../../src/core/log/index.ts";
import { EventStream } from "./event-stream.ts";
import { TestHub, WALK } from "./test-hub.ts";
import { written } from "./written-entry.ts";

const LEAD = "/devices/lead";
const TRAINER = "/devices/trainer";
let hub: TestHub;
let url: string;
let open: EventStream[];
const tokens = new Map<string, string>();

const of = (source: string, number: number, type: string, data: object) =>
  written(source, number, { type: `tetherline.${type}`, data });
const opening = (mode = "rehearsal") => of(LEAD, 1, "walk.opened", { procedure: {}, mode });
const fired = (number: number) => of(TRAINER, number, "surprise.fired", { surprise: "00" });
const note = (number: number) => written(LEAD, number);
const closing = (number: number) => of(LEAD, number, "walk.closed", { end: "complete" });
const reopening = (number: number) => of(LEAD, number, "walk.reopened", { reason: "r" });

beforeEach(async () => {
  hub = await TestHub.open();
  open = [];
  const roles: readonly [string, Role][] = [
    [LEAD, "lead"],
    [TRAINER, "trainer"],
    ["/devices/second-lead", "lead"],
    ["/devices/marker", "marker"],
    ["/devices/watcher", "watcher"],
    ["/hubs/ground", "relay"],
  ];
  for (const [device, role] of roles) tokens.set(device, await hub.join(device, role));
  url = `${await hub.listen()}/api/walks/${WALK}/entries`;
});
afterEach(async () => {
  for (const stream of open) stream.close();
  await hub.close();
});

const push = async (...entries: WireEntry[]) => {
  for (const entry of entries) {
    const answer = await hub.push(tokens.get(entry.source) ?? "", [entry]);
    expect(answer.json<{ results: { outcome: string }[] }>().results[0]?.outcome).toBe("accepted");
  }
};
const follow = async (device: string, headers: Record<string, string> = {}) => {
  const stream = await EventStream.open(url, tokens.get(device) ?? "", headers);
  open.push(stream);
  return stream;
};
/** What a stream told, as the last part of the source and the number: `lead 1`. */
const told = (stream: EventStream) =>
  stream.events.flatMap(({ event, data }) => {
    if (event !== undefined) return [];
    const { source, id } = JSON.parse(data) as WireEntry;
    return [`${source.split("/").at(-1)} ${Number(id)}`];
  });
const lines = async (device: string) =>
  (await hub.ask("GET", `/api/walks/${WALK}/entries`, { token: tokens.get(device) })).body;
const caughtUp = (stream: EventStream) => stream.until(() => stream.named("beyond").length > 0);
const surprisesIn = (text: string) => text.match(/surprise\.fired/g)?.length ?? 0;

describe("[TRN2] surprises on a hub", () => {
  it.each(["/devices/second-lead", "/devices/marker", "/devices/watcher"])(
    "do not reach %s, live, later or in the log, until the walk is closed, and then all do, before the closing",
    async (device) => {
      const live = await follow(device);
      await caughtUp(live);
      await push(opening(), fired(1), note(2), fired(2));
      await live.until(() => told(live).length === 2);
      expect(told(live)).toEqual(["lead 1", "lead 2"]);
      const late = await follow(device);
      await caughtUp(late);
      expect(told(late)).toEqual(["lead 1", "lead 2"]);
      expect(surprisesIn(await lines(device))).toBe(0);

      await push(closing(3));
      const whole = ["lead 1", "lead 2", "trainer 1", "trainer 2", "lead 3"];
      await live.until(() => told(live).includes("lead 3"));
      expect(told(live)).toEqual(whole);
      expect(surprisesIn(await lines(device))).toBe(2);
      await push(note(4));
      await live.until(() => told(live).includes("lead 4"));
    },
  );

  it.each([TRAINER, LEAD, "/hubs/ground"])(
    "reach %s at once: a trainer, the device that opened the rehearsal and plays it, another hub",
    async (device) => {
      const live = await follow(device);
      await caughtUp(live);
      await push(opening(), fired(1));
      await live.until(() => told(live).includes("trainer 1"));
      expect(surprisesIn(await lines(device))).toBe(1);
    },
  );

  it("are sent to somebody who was away at the closing, behind a cursor that is past them", async () => {
    const live = await follow("/devices/marker");
    await caughtUp(live);
    await push(opening(), fired(1), note(2));
    await live.until(() => told(live).includes("lead 2") && live.named("cursor").length > 2);
    const cursor = live.events.findLast(({ event }) => event === "cursor")?.id ?? "";
    live.close();
    await push(closing(3), note(4));
    const back = await follow("/devices/marker", { "last-event-id": cursor });
    await back.until(() => told(back).includes("lead 4"));
    expect(told(back)).toEqual(["trainer 1", "lead 3", "lead 4"]);
  });

  it("that come while a walk is open again wait for the next closing; those told before are not told again", async () => {
    await push(opening(), fired(1), closing(2), reopening(3), fired(2), note(4));
    const stream = await follow("/devices/marker");
    await caughtUp(stream);
    expect(told(stream)).toEqual(["lead 1", "trainer 1", "lead 2", "lead 3", "lead 4"]);
    await push(closing(5));
    await stream.until(() => told(stream).includes("lead 5"));
    expect(told(stream).slice(-2)).toEqual(["trainer 2", "lead 5"]);
  });

  it("that come after the closing, from a tablet that was away, are sent at once", async () => {
    const stream = await follow("/devices/marker");
    await push(opening(), closing(2), fired(1));
    await stream.until(() => told(stream).includes("trainer 1"));
  });

  it("that the lead laid before the start are kept back too, and leave nothing but a number out", async () => {
    const stream = await follow("/devices/marker");
    await push(opening(), of(LEAD, 2, "surprise.laid", { surprise: "00" }), note(3));
    await stream.until(() => told(stream).includes("lead 3"));
    expect(told(stream)).toEqual(["lead 1", "lead 3"]);
    await push(closing(4));
    await stream.until(() => told(stream).includes("lead 4"));
    expect(told(stream).slice(2)).toEqual(["lead 2", "lead 4"]);
  });

  it("are kept from nobody in a walk that is no rehearsal, where they have no effect and are told", async () => {
    const stream = await follow("/devices/marker");
    await push(opening("live"), fired(1));
    await stream.until(() => told(stream).includes("trainer 1"));
  });

  it("are told by their type, and not by what somebody wrote", async () => {
    const stream = await follow("/devices/marker");
    await push(opening(), of(LEAD, 2, "note.made", { text: 'a "type":"tetherline.surprise.fired"' }));
    await push({ ...note(3), data: { text: "t", more: { type: "tetherline.surprise.fired" } } });
    await stream.until(() => told(stream).includes("lead 3"));
    expect(told(stream)).toEqual(["lead 1", "lead 2", "lead 3"]);
  });

  test.prop([fc.array(fc.constantFrom("note", "fire", "turn"), { maxLength: 12 })], { numRuns: 25 })(
    "are all told in the end, each at least once, whatever the order, and none before a closing",
    async (acts) => {
      const walk = `walk-${acts.join("-") || "none"}-${Math.floor(performance.now() * 1000)}`;
      const [lead, trainer, marker] = [
        await hub.join(LEAD, "lead", walk),
        await hub.join(TRAINER, "trainer", walk),
        await hub.join("/devices/marker", "marker", walk),
      ];
      let [own, fires, isClosed] = [1, 0, false];
      const send = (token: string, entry: WireEntry) => hub.push(token, [{ ...entry, subject: walk }], walk);
      await send(lead, opening());
      const base = url.replace(WALK, encodeURIComponent(walk));
      const stream = await EventStream.open(base, marker);
      open.push(stream);
      const heard = () => told(stream).filter((one) => one.startsWith("trainer")).length;
      for (const act of [...acts, "turn", "turn"]) {
        if (act === "fire") {
          fires += 1;
          const before = heard();
          await send(trainer, fired(fires));
          if (!isClosed) expect(heard()).toBe(before);
        } else {
          own += 1;
          if (act === "note") await send(lead, note(own));
          else {
            await send(lead, isClosed ? reopening(own) : closing(own));
            isClosed = !isClosed;
          }
        }
      }
      if (!isClosed) {
        own += 1;
        await send(lead, closing(own));
      }
      await stream.until(() => told(stream).includes(`lead ${own}`));
      expect(new Set(told(stream)).size).toBe(own + fires);
      stream.close();
    },
  );
});
