import { describe, expect, it, vi } from "vitest";
import type { AskHub, HubManner, HubRequest } from "../../../src/core/link/index.ts";
import {
  HubClient,
  HubRefusedError,
  hubFarSide,
  pushInParts,
  TurnedAwayError,
  UnreachableError,
} from "../../../src/core/link/index.ts";
import type { WalkId } from "../../../src/core/units/index.ts";
import { numberedEntries } from "../log/numbered-entry.ts";

const walk = "walk 1" as WalkId;
const NOW = "2031-04-02T09:00:00.000Z";

const manner: HubManner = {
  failed: (status) => `It failed with ${status}.`,
  brokenOff: "It broke off.",
  notJson: "It is not JSON.",
  unknown: "It is no hub.",
  noStream: "It is no stream.",
  streamLost: "The stream was lost.",
  isRefusal: (status, isSaid) => isSaid && status < 500,
};

interface Said {
  readonly status?: number;
  readonly headers?: Readonly<Record<string, string>>;
  readonly pieces?: readonly (string | Error)[];
}

async function* piecesOf(pieces: readonly (string | Error)[]): AsyncGenerator<string> {
  for (const piece of pieces) {
    if (piece instanceof Error) throw piece;
    yield piece;
  }
}

/** A client of something that answers so, what it was asked, and how often an answer was dropped. */
function clientOf(answer: (request: HubRequest) => Said) {
  const asked: HubRequest[] = [];
  const drop = vi.fn();
  const ask: AskHub = async (request) => {
    asked.push(request);
    const { status = 200, headers = {}, pieces = [] } = answer(request);
    return { status, header: (name) => headers[name] ?? null, text: piecesOf(pieces), drop };
  };
  return { hub: new HubClient({ ask, manner }), asked, drop };
}

const json = (value: unknown, status = 200): Said => ({ status, pieces: [JSON.stringify(value)] });

describe("[HUB] a client of a hub", () => {
  it("asks as the hub's interface has it, with a credential only where one is given", async () => {
    const { hub, asked } = clientOf(({ path }) => {
      if (path === "/api/clock") return json({ now: NOW });
      if (path === "/api/walks") return json({ walks: [{ walk, title: null, entries: 3, cursor: "a:3" }] });
      return json({ now: NOW, results: [], gaps: [] });
    });
    expect(await hub.clock()).toBe(Date.parse(NOW));
    expect(await hub.walks({ credential: "code" })).toEqual([{ walk, title: null, entries: 3 }]);
    await hub.present(walk, { epoch: "a", offset: 7 }, { credential: "token" });
    await hub.withdraw(walk, "/devices/x");
    await hub.leave(walk);
    const [entry] = numberedEntries(1);
    await hub.push(walk, entry ? [entry] : []);
    expect(asked.map(({ method, path, headers, body }) => [method, path, headers, body])).toEqual([
      ["GET", "/api/clock", {}, undefined],
      ["GET", "/api/walks", { authorization: "Bearer code" }, undefined],
      [
        "POST",
        "/api/walks/walk%201/presence",
        { authorization: "Bearer token", "content-type": "application/json" },
        '{"cursor":"a:7"}',
      ],
      ["DELETE", "/api/walks/walk%201/followers/%2Fdevices%2Fx", {}, undefined],
      ["POST", "/api/walks/walk%201/leave", { "content-type": "application/json" }, "{}"],
      [
        "POST",
        "/api/walks/walk%201/entries",
        { "content-type": "application/cloudevents-batch+json" },
        JSON.stringify([entry?.wire]),
      ],
    ]);
    expect(asked.map(({ isLong }) => isLong)).toEqual([false, false, false, false, false, true]);
  });

  it.each([
    [401, TurnedAwayError],
    [403, TurnedAwayError],
    [409, HubRefusedError],
    [503, UnreachableError],
  ])("takes an answer of status %s for what it means, in the hub's own words", async (status, kind) => {
    const { hub } = clientOf(() => json({ error: "because", words: "It is\u0007 so." }, status));
    const failure = await hub.clock().catch((cause: unknown) => cause);
    expect(failure).toBeInstanceOf(kind);
    expect(failure).toMatchObject({ message: "It is so." });
    if (failure instanceof HubRefusedError) expect(failure.reason).toBe("because");
  });

  it("says itself what a failure without words is, and how long it was asked to wait", async () => {
    const { hub } = clientOf(() => ({ status: 429, headers: { "retry-after": "7" }, pieces: ["<html>"] }));
    await expect(hub.clock()).rejects.toMatchObject({
      name: "UnreachableError",
      message: "It failed with 429.",
      retryAfter: 7000,
    });
  });

  it.each<[Said, string]>([
    [{ pieces: ["<html>"] }, "It is not JSON."],
    [{ pieces: ['{"now":7}'] }, "It is no hub."],
    [{ pieces: ['{"now":', new Error("reset")] }, "It broke off."],
    [{ pieces: Array.from({ length: 17 }, () => "x".repeat(1_000_000)) }, "It broke off."],
  ])("is not taken in by what is no answer of a hub", async (said, words) => {
    const { hub } = clientOf(() => said);
    await expect(hub.clock()).rejects.toThrow(new UnreachableError(words));
  });
});

describe("[LINK] the stream of a walk", () => {
  const stream = (...pieces: (string | Error)[]): Said => ({
    headers: { "content-type": "text/event-stream; charset=utf-8" },
    pieces,
  });
  const follow = async (said: Said) => {
    const { hub, asked, drop } = clientOf(() => said);
    const kinds: string[] = [];
    const after = { epoch: "a", offset: 3 };
    const followed = hubFarSide(hub, walk, { credential: "token" }).follow(
      after,
      ({ kind }) => kinds.push(kind),
      new AbortController().signal,
    );
    const failure = await followed.then(
      () => null,
      (cause: unknown) => cause,
    );
    return { kinds, failure, asked, drop };
  };

  it("is read however it is cut into pieces, every piece being a sign of life", async () => {
    const text = "event: cursor\nid: a:4\ndata: {}\n\n";
    const { kinds, failure, asked } = await follow(stream(text.slice(0, 9), text.slice(9), ": alive\n\n"));
    expect(failure).toBeNull();
    expect(kinds).toEqual(["alive", "alive", "cursor", "alive"]);
    expect(asked).toMatchObject([
      {
        method: "GET",
        path: "/api/walks/walk%201/entries",
        headers: { accept: "text/event-stream", "last-event-id": "a:3", authorization: "Bearer token" },
        isLong: true,
      },
    ]);
  });

  it("is given up when it breaks off, has an event without end, or is none", async () => {
    const broken = await follow(stream(": alive\n\n", new Error("reset")));
    expect(broken.failure).toEqual(new UnreachableError("The stream was lost."));
    const endless = Array.from({ length: 17 }, () => `data: ${"x".repeat(1_000_000)}`);
    expect((await follow(stream(...endless))).failure).toEqual(new UnreachableError("The stream was lost."));
    const page = await follow({ headers: { "content-type": "text/html" }, pieces: ["<html>"] });
    expect(page.failure).toEqual(new UnreachableError("It is no stream."));
    expect(page.drop).toHaveBeenCalledOnce();
  });
});

describe("[LINK] a batch that is refused as a whole", () => {
  it("is offered in halves, until the entry that is not to be had is alone", async () => {
    const entries = numberedEntries(7);
    const { hub, asked } = clientOf(({ body = "[]" }) => {
      const batch = JSON.parse(body) as { source: string; id: string }[];
      if (batch.some(({ id }) => id === "0000000005"))
        return json({ error: "bad-body", words: "Not that." }, 400);
      const results = batch.map(({ source, id }) => ({ source, id, outcome: "accepted" }));
      return json({ results, gaps: [], now: NOW });
    });
    const far = pushInParts(hubFarSide(hub, walk));
    const { results } = await far.push(entries, new AbortController().signal);
    expect(results.map(({ id, outcome }) => [Number(id), outcome])).toEqual(
      entries.map((_, index) => [index + 1, index === 4 ? "refused" : "accepted"]),
    );
    expect(results[4]).toMatchObject({ reason: "not-an-entry", words: "Not that." });
    expect(asked.length).toBeGreaterThan(1);
  });

  it("fails as any other when the hub is not reached", async () => {
    const { hub } = clientOf(() => ({ status: 502 }));
    const far = pushInParts(hubFarSide(hub, walk));
    await expect(far.push(numberedEntries(2), new AbortController().signal)).rejects.toThrow(
      UnreachableError,
    );
  });
});
