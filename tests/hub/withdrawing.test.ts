import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { openHub } from "../../src/hub/open-hub.ts";
import { RATE_LIMITS } from "../../src/hub/routes/index.ts";
import { EventStream } from "./event-stream.ts";
import { NOON, TestHub, WALK } from "./test-hub.ts";

const [LEAD, OTHER] = ["/devices/lead", "/devices/other"];
let hub: TestHub;
let lead: string;

beforeEach(async () => {
  hub = await TestHub.open();
  lead = await hub.join(LEAD);
});
afterEach(() => hub.close());

const invitations = `/api/walks/${WALK}/invitations`;
const followers = `/api/walks/${WALK}/followers`;
const joinBy = (code: string, device: string) => hub.ask("POST", "/api/join", { body: { code, device } });
const listed = async (token = lead) =>
  (await hub.ask("GET", invitations, { token })).json<{
    invitations: { name: string; role: string; expires: string }[];
  }>();
const session = async (token: string) =>
  (await hub.ask("GET", `/api/walks/${WALK}/session`, { token })).statusCode;

describe("[HUB] invitations that are out", () => {
  it("are listed for those who lead, of their walk alone and while they are good, and no code is told", async () => {
    const codes = [
      await hub.invite("marker", 30),
      await hub.invite("watcher", 15),
      await hub.invite("lead", 15, "walk-2"),
    ];
    expect((await listed()).invitations.map(({ role, expires }) => [role, expires])).toEqual([
      ["watcher", "2031-04-02T12:15:00.000Z"],
      ["marker", "2031-04-02T12:30:00.000Z"],
    ]);
    const text = JSON.stringify(await listed(hub.owner)).toUpperCase();
    for (const code of codes) expect(text).not.toContain(code);
    hub.now = (NOON + 16 * 60_000) as typeof NOON;
    expect((await listed()).invitations).toHaveLength(1);
    const marker = await hub.join("/devices/marker", "marker");
    expect((await hub.ask("GET", invitations, { token: marker })).statusCode).toBe(403);
  });

  it("are ended one by one, by who leads their walk; who came by one stays", async () => {
    const code = await hub.invite("marker");
    const joined = (await joinBy(code, OTHER)).json<{ token: string }>();
    const [{ name } = { name: "" }] = (await listed()).invitations;
    const there = await hub.ask("POST", "/api/join", {
      body: { code: hub.owner, device: "/devices/there", walk: "walk-2" },
    });
    const asked = (walk: string, token: string) =>
      hub.ask("DELETE", `/api/walks/${walk}/invitations/${name}`, { token });
    expect((await asked("walk-2", there.json<{ token: string }>().token)).statusCode).toBe(404);
    expect((await asked(WALK, joined.token)).statusCode).toBe(403);
    expect([(await asked(WALK, lead)).statusCode, (await asked(WALK, lead)).statusCode]).toEqual([204, 404]);
    expect((await joinBy(code, "/devices/late")).statusCode).toBe(403);
    expect(await session(joined.token)).toBe(200);
  });
});

describe("[HUB] putting everybody out", () => {
  it("of a walk ends every token and stream but those of who asks, and all invitations of the walk", async () => {
    const code = await hub.invite("marker");
    const [other, elsewhere] = [
      await hub.join(OTHER, "marker"),
      await hub.join("/devices/x", "lead", "walk-2"),
    ];
    const stream = await EventStream.open(`${await hub.listen()}/api/walks/${WALK}/entries`, other);
    await stream.until(() => stream.events.length > 0);
    expect((await hub.ask("DELETE", followers, { token: other })).statusCode).toBe(403);
    expect((await hub.ask("DELETE", followers, { token: lead })).json()).toEqual({ withdrawn: 1 });
    await stream.ended;
    expect([await session(other), await session(lead), (await joinBy(code, OTHER)).statusCode]).toEqual([
      401, 200, 403,
    ]);
    const left = await hub.ask("GET", "/api/walks/walk-2/session", { token: elsewhere });
    expect(left.statusCode).toBe(200);
    expect((await hub.ask("DELETE", followers, { token: hub.owner })).json()).toEqual({ withdrawn: 1 });
    expect(await session(lead)).toBe(401);
  });

  it("is what a new owner's code does on all walks, by whomever they came", async () => {
    const code = await hub.invite("marker");
    const { token } = (await joinBy(await hub.invite("watcher"), OTHER)).json<{ token: string }>();
    const before = hub.owner;
    const again = await openHub(
      hub.engine,
      { now: () => hub.now, randomBytes: (count) => crypto.getRandomValues(new Uint8Array(count)) },
      { name: "again", newOwnerCode: true },
      {
        ...{ tls: null, insistsOnTls: false, authority: null, app: null, names: null },
        ...{ limits: RATE_LIMITS, address: () => null, tell: () => {} },
      },
    );
    expect(again.parts.admission.ownerCode).not.toBe(before);
    expect([await session(lead), await session(token)]).toEqual([401, 401]);
    expect((await joinBy(code, "/devices/late")).statusCode).toBe(403);
    expect((await joinBy(before, "/devices/late")).statusCode).toBe(403);
    await again.server.close();
  });
});
