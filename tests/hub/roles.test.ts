import { fc, test } from "@fast-check/vitest";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { ROLES, type Role } from "../../src/core/log/index.ts";
import { TestHub, WALK } from "./test-hub.ts";
import { written } from "./written-entry.ts";

/** Data that each fact takes, as the log's specification has it. */
const FACTS: Readonly<Record<string, unknown>> = {
  "walk.opened": { procedure: {}, mode: "live" },
  "clock.started": {},
  "step.started": { step: "a" },
  "step.done": { step: "a" },
  "step.skipped": { step: "a", reason: "r" },
  "step.reopened": { step: "a", reason: "r" },
  "record.taken": { step: "a", record: "r", value: 1 },
  "confirm.given": { step: "a" },
  "decision.taken": { decision: "d", outcome: "o" },
  "item.moved": { item: "i", to: { place: "p" }, reason: "r" },
  "supply.read": { crew: "ev1", supply: "oxygen", value: 0.5 },
  "note.made": { text: "t" },
  "hold.called": {},
  "hold.lifted": {},
  "clock.compared": { hub: "/hubs/h", offset: 1, error: 0.1 },
  "entry.struck": { source: "OWN", id: "1" },
  "walk.closed": { end: "complete" },
  "plan.amended": { changes: [], reason: "r" },
  "surprise.laid": { surprise: "00" },
  "surprise.fired": { surprise: "00" },
  "fact.of-a-newer-version": { any: 1 },
};
const LEADS: ReadonlySet<string> = new Set([
  "walk.opened",
  "walk.closed",
  "plan.amended",
  "surprise.laid",
  "surprise.fired",
  "fact.of-a-newer-version",
]);

/** Whether the issue lets a role write a fact; written down apart from the code under test. */
function mayWrite(role: Role, fact: string, isOwnSource: boolean, strikesOwn: boolean): boolean {
  if (role === "watcher") return false;
  if (role === "relay") return true;
  if (!isOwnSource) return false;
  if (role === "trainer") return fact === "surprise.fired";
  if (role === "lead") return true;
  return !LEADS.has(fact) && (fact !== "entry.struck" || strikesOwn);
}

let hub: TestHub;
const tokens = new Map<Role, string>();
let number = 0;

beforeAll(async () => {
  hub = await TestHub.open();
  for (const role of ROLES) tokens.set(role, await hub.join(`/devices/${role}`, role));
});
afterAll(() => hub.close());

async function outcomeOf(role: Role, fact: string, source: string, struck: string): Promise<string> {
  number += 1;
  const data = fact === "entry.struck" ? { source: struck, id: "1" } : FACTS[fact];
  const answer = await hub.push(tokens.get(role) ?? "", [
    written(source, number, { type: `tetherline.${fact}`, data }),
  ]);
  expect(answer.statusCode).toBe(200);
  const [result] = answer.json<{ results: { outcome: string; reason?: string }[] }>().results;
  const log = await hub.log();
  expect(log.includes(`"id":"${String(number).padStart(10, "0")}"`)).toBe(result?.outcome === "accepted");
  return result?.reason ?? result?.outcome ?? "";
}

describe("[HUB] who may write what", () => {
  const cases = ROLES.flatMap((role) => Object.keys(FACTS).map((fact) => [role, fact] as const));

  it.each(cases)("a %s and %s under its own source", async (role, fact) => {
    const own = `/devices/${role}`;
    expect(await outcomeOf(role, fact, own, own)).toBe(
      mayWrite(role, fact, true, true) ? "accepted" : "role",
    );
  });

  test.prop(
    [
      fc.constantFrom(...ROLES),
      fc.constantFrom(...Object.keys(FACTS)),
      fc.constantFrom("", "/memory-1", "X", "/devices/other"),
      fc.boolean(),
    ],
    { numRuns: 200 },
  )("holds for any role, fact, source and struck entry", async (role, fact, below, strikesOwn) => {
    const own = `/devices/${role}`;
    const isOther = below === "/devices/other";
    const source = isOther ? below : own + below;
    const struck = strikesOwn ? own : "/devices/other";
    const may = mayWrite(role, fact, below === "" || below === "/memory-1", strikesOwn);
    expect((await outcomeOf(role, fact, source, struck)) === "accepted").toBe(may);
  });

  it("lets the owner bring back a log of any sources", async () => {
    const answer = await hub.push(hub.owner, [
      written("/devices/long-gone", 1),
      written("/devices/marker", 7001, { type: "tetherline.walk.closed", data: { end: "aborted" } }),
    ]);
    expect(answer.json().results.map(({ outcome }: { outcome: string }) => outcome)).toEqual([
      "accepted",
      "accepted",
    ]);
  });

  it.each(["marker", "watcher", "relay"] as const)("keeps a %s from what leads do", async (role) => {
    const token = tokens.get(role);
    const asked = await Promise.all([
      hub.ask("POST", `/api/walks/${WALK}/invitations`, { token, body: { role: "lead" } }),
      hub.ask("GET", `/api/walks/${WALK}/followers`, { token }),
      hub.ask("DELETE", `/api/walks/${WALK}/followers/${encodeURIComponent("/devices/lead")}`, { token }),
      hub.ask("GET", `/api/walks/${WALK}/refused`, { token }),
    ]);
    expect(asked.map(({ statusCode }) => statusCode)).toEqual([403, 403, 403, 403]);
    expect(
      (await hub.ask("GET", `/api/walks/${WALK}/session`, { token: tokens.get("lead") })).statusCode,
    ).toBe(200);
  });
});
