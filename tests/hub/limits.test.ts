import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { readEntry } from "../../src/core/log/index.ts";
import { note } from "./engine/written-notes.ts";
import { EventStream } from "./event-stream.ts";
import { TestHub, WALK } from "./test-hub.ts";
import { written, writtenNotes } from "./written-entry.ts";

const [LEAD, MARKER] = ["/devices/lead", "/devices/marker"];
let hub: TestHub;
let lead: string;
let marker: string;

const begin = async (limits = {}) => {
  hub = await TestHub.open(limits);
  lead = await hub.join(LEAD);
  marker = await hub.join(MARKER, "marker");
};
beforeEach(() => begin());
afterEach(() => hub.close());

interface Result {
  readonly outcome: string;
  readonly reason?: string;
  readonly words?: string;
}
const push = async (token: string, entries: unknown) =>
  (await hub.push(token, entries)).json<{ results: Result[] }>().results;
/** An entry with so many characters of data that its type does not need. */
const padded = (source: string, number: number, type: string, characters: number, data: object = {}) =>
  written(source, number, { type: `tetherline.${type}`, data: { ...data, more: "x".repeat(characters) } });
const opened = { procedure: {}, mode: "live" };

describe("[HUB] how long an entry may be", () => {
  it("goes by what its type needs; the others of its batch stand", async () => {
    const results = await push(marker, [
      padded(MARKER, 1, "note.made", 44_000, { text: "n" }),
      padded(MARKER, 2, "note.made", 48_000, { text: "n" }),
      padded(MARKER, 3, "step.done", 15_000, { step: "a" }),
      padded(MARKER, 4, "step.done", 16_000, { step: "a" }),
      written(MARKER, 5),
    ]);
    expect(results.map(({ outcome, reason }) => reason ?? outcome)).toEqual([
      "accepted",
      "limit",
      "accepted",
      "limit",
      "accepted",
    ]);
    expect(results[1]?.words).toMatch(
      /^It has 48\d{3} characters, and an entry of its kind may have 48000 here: shorten it\.$/,
    );
  });

  it("lets a procedure in up to its 10 MiB, from those who lead alone", async () => {
    const whole = padded(LEAD, 1, "walk.opened", 10 * 1024 * 1024, opened);
    expect((await push(lead, [whole]))[0]?.outcome).toBe("accepted");
    expect((await push(lead, [padded(LEAD, 2, "walk.opened", 11_100_000, opened)]))[0]?.reason).toBe("limit");
    const answer = await hub.push(marker, [padded(MARKER, 1, "walk.opened", 5_000_000, opened)]);
    expect([answer.statusCode, answer.json()]).toEqual([
      413,
      { error: "too-large", words: "The body is too large: send it in smaller parts." },
    ]);
    // Nobody's body is read before it is known who sends it.
    expect((await hub.ask("POST", `/api/walks/${WALK}/entries`, { body: [whole] })).statusCode).toBe(401);
  });

  it("does not concern what is kept already", async () => {
    const { entry } = readEntry(padded(MARKER, 1, "step.done", 60_000, { step: "a" }));
    if (!entry) throw new Error("no entry");
    await hub.engine.append(WALK, [entry]);
    const [kept] = await hub.engine.read(WALK, 0, 1);
    expect(await push(marker, [JSON.parse(kept?.text ?? "")])).toMatchObject([{ outcome: "known" }]);
  });
});

describe("[HUB] how much one device may bring", () => {
  it("is a share of the walk, below its name too; the others go on, and so does what it has brought", async () => {
    const half = "x".repeat(15_900_000);
    await hub.engine.append(WALK, [
      note({ source: MARKER, number: 1, text: half }),
      note({ source: `${MARKER}/page`, number: 1, text: half }),
    ]);
    const notes = Array.from({ length: 6 }, (_, index) =>
      padded(MARKER, index + 2, "note.made", 40_000, { text: "n" }),
    );
    const results = await push(marker, notes);
    expect(results.map(({ outcome, reason }) => reason ?? outcome)).toEqual([
      ...Array.from({ length: 4 }, () => "accepted"),
      "limit",
      "limit",
    ]);
    expect(results[5]?.words).toMatch(/^There is no more room for it/);
    expect((await push(marker, notes)).slice(0, 4).map(({ outcome }) => outcome)).toEqual(
      Array.from({ length: 4 }, () => "known"),
    );
    const other = await hub.join("/devices/marker-2", "marker");
    expect((await push(other, [written("/devices/marker-2", 1)]))[0]?.outcome).toBe("accepted");
    expect((await push(lead, [written(LEAD, 1)]))[0]?.outcome).toBe("accepted");
  });

  it("has a limit a minute, after which it may go on", async () => {
    await hub.close();
    await begin({ limits: { perToken: 60, perAddress: 1e6, filesPerAddress: 1e6, wrongCodes: 20 } });
    const most = (number: number) =>
      hub.push(marker, [padded(MARKER, number, "note.made", 40_000, { text: "n" })]);
    const statuses = [];
    for (let number = 1; number <= 4; number += 1) statuses.push((await most(number)).statusCode);
    expect(statuses).toEqual([200, 200, 429, 429]);
    const { headers, ...answer } = await most(3);
    expect([headers["retry-after"], answer.json().words]).toEqual([
      "60",
      expect.stringMatching(/wait a little\.$/),
    ]);
    expect((await hub.push(lead, [written(LEAD, 1)])).statusCode).toBe(200);
    hub.now = (hub.now + 60_000) as typeof hub.now;
    expect((await most(3)).statusCode).toBe(200);
  });
});

describe("[HUB] a walk of large entries", () => {
  it("is read page by page by a newcomer and by whoever takes it at once, whatever it holds", async () => {
    const count = 10;
    for (let number = 1; number <= count; number += 1) {
      await hub.engine.append(WALK, [note({ source: MARKER, number, text: "x".repeat(2_000_000) })]);
    }
    const stream = await EventStream.open(`${await hub.listen()}/api/walks/${WALK}/entries`, lead);
    await stream.until(() => stream.events.length > count && stream.named("presence").length > 0);
    stream.close();
    const lines = (await hub.log()).trimEnd().split("\n");
    expect([stream.entries.length, lines.length]).toEqual([count, count]);
  });

  it("is told in parts to those who are there already", async () => {
    const stream = await EventStream.open(`${await hub.listen()}/api/walks/${WALK}/entries`, lead);
    await stream.until(() => stream.named("presence").length > 0);
    const notes = Array.from({ length: 5 }, (_, index) =>
      note({ source: MARKER, number: index + 1, text: "x".repeat(600_000) }),
    );
    await hub.engine.append(WALK, notes);
    await stream.until(() => stream.entries.length >= 5);
    expect(stream.events.filter(({ event }) => event === "cursor").length).toBeGreaterThan(2);
    stream.close();
  });

  it("is not read for the gaps of who writes to it", async () => {
    await hub.push(marker, writtenNotes(MARKER, 1, 3));
    const read = vi.spyOn(hub.engine, "read");
    const answer = await hub.push(marker, writtenNotes(MARKER, 6, 6));
    expect(answer.json().gaps).toEqual([{ source: MARKER, from: "0000000004", to: "0000000005" }]);
    expect(read).not.toHaveBeenCalled();
  });

  it("tells of the first thousand gaps of a source at most", async () => {
    for (let page = 0; page < 2; page += 1) {
      const numbers = Array.from({ length: 600 }, (_, index) =>
        written(MARKER, (page * 600 + index) * 2 + 2),
      );
      await hub.push(marker, numbers);
    }
    expect((await hub.push(marker, [])).json().gaps).toEqual([]);
    expect((await hub.push(marker, [written(MARKER, 5_000)])).json().gaps).toHaveLength(1_000);
  });
});
