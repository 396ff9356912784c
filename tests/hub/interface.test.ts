import { afterAll, beforeAll, describe, expect, it } from "vitest";
import {
  helloSchema,
  hubClockSchema,
  hubErrorSchema,
  hubWalksSchema,
  invitationSchema,
  joinedSchema,
  presenceSchema,
  pushAnswerSchema,
} from "../../src/core/link/index.ts";
import { EngineTroubleError } from "../../src/hub/engine/index.ts";
import { NOON, TestHub, WALK } from "./test-hub.ts";
import { written, writtenNotes } from "./written-entry.ts";

const DEVICE = "/devices/lead";
const NOW = "2031-04-02T12:00:00.000Z";
let hub: TestHub;
let lead: string;

beforeAll(async () => {
  hub = await TestHub.open();
  lead = await hub.join(DEVICE);
});
afterAll(() => hub.close());

describe("[HUB] the interface, row by row", () => {
  it("tells its health, its store and the time to anyone", async () => {
    const answer = await hub.ask("GET", "/api/health");
    expect([answer.statusCode, answer.json()]).toEqual([
      200,
      {
        status: "ok",
        engine: "sqlite",
        epoch: hub.engine.epoch,
        key: expect.stringMatching(/^[\w-]{43}$/),
        now: NOW,
      },
    ]);
    const clock = await hub.ask("GET", "/api/clock");
    expect(clock.headers["cache-control"]).toBe("no-store");
    expect(hubClockSchema().parse(clock.json()).now).toBe(NOON);
  });

  it("says 503 in a sentence while its store cannot be written, and is well again after", async () => {
    const { keep } = hub.engine;
    const { put } = keep;
    for (const cause of [new EngineTroubleError("The disk is full."), new Error("something else")]) {
      hub.now = (hub.now + 2000) as typeof hub.now;
      Object.assign(keep, { put: () => Promise.reject(cause) });
      const answer = await hub.ask("GET", "/api/health");
      expect([answer.statusCode, hubErrorSchema().parse(answer.json()).error]).toEqual([503, "store"]);
    }
    Object.assign(keep, { put });
    hub.now = (hub.now + 2000) as typeof hub.now;
    expect((await hub.ask("GET", "/api/health")).statusCode).toBe(200);
    hub.now = NOON;
  });

  it("gives figures without naming a walk or device", async () => {
    await hub.push(lead, [...writtenNotes(DEVICE, 900, 901), written("/devices/else", 1)]);
    const { body, headers } = await hub.ask("GET", "/metrics");
    expect(headers["content-type"]).toMatch(/^text\/plain/);
    expect(body).toMatch(/^tetherline_entries_total\{outcome="accepted"\} [1-9]/m);
    expect(body).toMatch(/^tetherline_entries_total\{outcome="other-source"\} 1$/m);
    expect(body).toMatch(/^tetherline_followers 0$/m);
    expect(body).toMatch(/^tetherline_append_seconds_count [1-9]/m);
    expect(body).toMatch(/^tetherline_memory_bytes \d{7,}$/m);
    expect(body).not.toMatch(/walk-1|devices/);
  });

  it("lets in with the owner's code, which needs a walk, for the role asked for", async () => {
    const body = {
      code: hub.owner.toUpperCase(),
      device: "/devices/m",
      name: "Marker",
      walk: WALK,
      role: "marker",
    };
    const answer = await hub.ask("POST", "/api/join", { body });
    expect(answer.statusCode).toBe(201);
    const joined = joinedSchema().parse(answer.json());
    expect(joined).toMatchObject({ walk: WALK, role: "marker", device: "/devices/m", hubName: "Test hub" });
    expect(joined.token).toMatch(/^[\w-]+\.[\w-]+\.[\w-]+$/);
    const without = await hub.ask("POST", "/api/join", { body: { ...body, walk: undefined } });
    expect([without.statusCode, hubErrorSchema().parse(without.json()).error]).toEqual([400, "walk-needed"]);
  });

  it("lets in with an invitation, whose walk and role are its own whatever is asked for", async () => {
    const made = await hub.ask("POST", `/api/walks/${WALK}/invitations`, {
      token: lead,
      body: { role: "watcher", devices: 2 },
      headers: { host: "hub.example:4173" },
    });
    expect(made.statusCode).toBe(201);
    const invitation = invitationSchema().parse(made.json());
    expect(invitation).toMatchObject({ role: "watcher", expires: NOON + 15 * 60_000 });
    expect(invitation.code).toMatch(/^[A-HJKMNP-Z02-9]{9}$/);
    expect(invitation.url).toBe(`http://hub.example:4173/join/${invitation.code}`);
    for (const device of ["/devices/w1", "/devices/w2"]) {
      const shown = ` ${invitation.code.slice(0, 3)}-${invitation.code.slice(3).toLowerCase()} `;
      const answer = await hub.ask("POST", "/api/join", {
        body: { code: shown, device, walk: "another", role: "lead" },
      });
      expect([answer.statusCode, answer.json()]).toEqual([
        201,
        expect.objectContaining({ walk: WALK, role: "watcher", device }),
      ]);
    }
  });

  it("takes entries as a batch, as a plain array and alone, and is idempotent", async () => {
    const [one, two, three] = writtenNotes(DEVICE, 1, 3);
    const batch = await hub.push(lead, [one]);
    expect(batch.statusCode).toBe(200);
    const plain = await hub.ask("POST", `/api/walks/${WALK}/entries`, { token: lead, body: [two, one] });
    const alone = await hub.ask("POST", `/api/walks/${WALK}/entries`, {
      token: lead,
      body: three,
      type: "application/cloudevents+json; charset=utf-8",
    });
    const outcomes = [batch, plain, alone].map((answer) =>
      pushAnswerSchema()
        .parse(answer.json())
        .results.map(({ id, outcome }) => [Number(id), outcome]),
    );
    expect(outcomes).toEqual([
      [[1, "accepted"]],
      [
        [2, "accepted"],
        [1, "known"],
      ],
      [[3, "accepted"]],
    ]);
    expect((await hub.push(lead, [])).json()).toEqual({ results: [], gaps: [], now: NOW });
  });

  it.each([
    ["no JSON", "[{", "application/cloudevents-batch+json", 400],
    ["an object as a batch", {}, "application/cloudevents-batch+json", 400],
    ["an object as JSON", {}, "application/json", 400],
    ["a list as one event", [], "application/cloudevents+json", 400],
    ["null", null, "application/json", 400],
    ["another type", "[]", "text/plain", 415],
    ["more than 1,000", Array.from({ length: 1001 }, () => ({})), "application/json", 413],
    ["more than 11 MB", `["${"x".repeat(11_600_000)}"]`, "application/json", 413],
  ])("refuses a batch that is %s", async (_what, body, type, status) => {
    const answer = await hub.ask("POST", `/api/walks/${WALK}/entries`, { token: lead, body, type });
    expect(answer.statusCode).toBe(status);
    hubErrorSchema().parse(answer.json());
  });

  it("gives entries as JSON Lines in order, with the cursor of their end, and those behind a cursor", async () => {
    const all = await hub.ask("GET", `/api/walks/${WALK}/entries`, { token: lead });
    expect(all.headers["content-type"]).toMatch(/^application\/jsonl/);
    const lines = all.body.trimEnd().split("\n");
    const { entries } = (await hub.ask("GET", "/api/walks", { token: lead })).json().walks[0];
    expect(lines).toHaveLength(entries);
    const cursor = String(all.headers["tetherline-cursor"]);
    expect(cursor).toMatch(new RegExp(`^${hub.engine.epoch}:\\d+:[\\w-]{32}$`));
    await hub.push(lead, [written(DEVICE, 4)]);
    const rest = (after: string) =>
      hub.ask("GET", `/api/walks/${WALK}/entries?after=${encodeURIComponent(after)}`, { token: lead });
    expect(JSON.parse((await rest(cursor)).body).id).toBe("0000000004");
    expect((await rest("elsewhere:3")).body.trimEnd().split("\n")).toHaveLength(entries + 1);
    expect((await rest("nonsense")).statusCode).toBe(400);
  });

  it("lists all walks to the owner, its own to a token, and nothing to others", async () => {
    const other = await hub.join("/devices/o", "lead", "walk-2");
    await hub.push(other, [written("/devices/o", 1, { subject: "walk-2" })], "walk-2");
    const walksOf = async (token: string) =>
      (await hub.ask("GET", "/api/walks", { token })).json().walks.map(({ walk }: { walk: string }) => walk);
    expect(await walksOf(hub.owner)).toEqual([WALK, "walk-2"]);
    expect(await walksOf(other)).toEqual(["walk-2"]);
    expect((await hub.ask("GET", "/api/walks")).statusCode).toBe(401);
    const empty = await hub.join("/devices/e", "lead", "walk-empty");
    expect((await hub.ask("GET", "/api/walks", { token: empty })).json()).toEqual({
      walks: [{ walk: "walk-empty", title: null, entries: 0, cursor: `${hub.engine.epoch}:0` }],
    });
  });

  it("says what a walk is called once the entry that opened it is there", async () => {
    const token = await hub.join("/devices/t", "lead", "walk-titled");
    const titles = async () =>
      hubWalksSchema()
        .parse((await hub.ask("GET", "/api/walks", { token: hub.owner })).json())
        .walks.map(({ title }) => title);
    const open = (number: number, procedure: unknown) =>
      written("/devices/t", number, {
        subject: "walk-titled",
        type: "tetherline.walk.opened",
        data: { procedure, mode: "live" },
      });
    await hub.push(token, [open(1, "no object"), open(2, { title: 7 })], "walk-titled");
    expect(await titles()).not.toContain("Ring exchange");
    await hub.push(
      token,
      [open(3, { title: " Ring exchange " }), open(4, { title: "Later" })],
      "walk-titled",
    );
    expect(await titles()).toContain("Ring exchange");
    expect(await titles()).not.toContain("Later");
  });

  it("tells a device who it is, and takes how far it has read", async () => {
    const session = await hub.ask("GET", `/api/walks/${WALK}/session`, { token: lead });
    expect(helloSchema().parse(session.json())).toMatchObject({
      role: "lead",
      device: DEVICE,
      name: "Test hub",
    });
    const head = await hub.engine.head(WALK);
    const said = await hub.ask("POST", `/api/walks/${WALK}/presence`, {
      token: lead,
      body: { cursor: `${hub.engine.epoch}:${head}` },
    });
    expect([said.statusCode, said.json()]).toEqual([200, { now: NOW }]);
    const wrong = await hub.ask("POST", `/api/walks/${WALK}/presence`, {
      token: lead,
      body: { cursor: "x" },
    });
    expect(wrong.statusCode).toBe(400);
  });

  it("lists followers, and withdraws one by its percent-encoded name", async () => {
    const url = `/api/walks/${WALK}/followers`;
    const token = await hub.join("/devices/gone", "marker");
    const devices = async () =>
      presenceSchema()
        .parse((await hub.ask("GET", url, { token: lead })).json())
        .followers.map(({ device }) => device);
    expect(await devices()).toContain("/devices/gone");
    const withdraw = () =>
      hub.ask("DELETE", `${url}/${encodeURIComponent("/devices/gone")}`, { token: lead });
    expect((await withdraw()).statusCode).toBe(204);
    expect(await devices()).not.toContain("/devices/gone");
    expect((await hub.ask("GET", `/api/walks/${WALK}/session`, { token })).statusCode).toBe(401);
    expect((await withdraw()).statusCode).toBe(404);
  });

  it("keeps what was in conflict for inspection, with the reason and the time", async () => {
    await hub.push(lead, [written(DEVICE, 50)]);
    const other = written(DEVICE, 50, { data: { text: "another" } });
    const { results } = (await hub.push(lead, [other])).json();
    expect(results[0]).toMatchObject({ outcome: "refused", reason: "conflict", id: other.id });
    const { refused } = (await hub.ask("GET", `/api/walks/${WALK}/refused`, { token: lead })).json();
    expect(refused).toEqual([{ text: JSON.stringify(other), reason: "conflict", received: NOW }]);
    expect(await hub.log()).not.toContain("another");
  });

  it("ends a token when its device leaves", async () => {
    const token = await hub.join("/devices/leaver", "marker");
    expect((await hub.ask("POST", `/api/walks/${WALK}/leave`, { token })).statusCode).toBe(204);
    expect((await hub.ask("GET", `/api/walks/${WALK}/session`, { token })).statusCode).toBe(401);
  });

  it("answers unknown addresses with 404 in its own form", async () => {
    for (const [method, url] of [
      ["GET", "/api/none"],
      ["DELETE", "/api/walks"],
      ["POST", "/metrics"],
      ["GET", "/"],
    ] as const) {
      const answer = await hub.ask(method, url);
      expect([answer.statusCode, hubErrorSchema().parse(answer.json()).error]).toEqual([404, "not-found"]);
    }
  });

  it("had no mistake of its own to tell of, and told of the disk once", () => {
    expect(hub.told).toEqual(["The disk is full."]);
  });
});
