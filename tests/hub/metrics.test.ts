import { tmpdir } from "node:os";
import { afterEach, beforeEach, expect, it } from "vitest";
import type { Instant, WalkId } from "../../src/core/units/index.ts";
import { TestHub, WALK } from "./test-hub.ts";
import { writtenNotes } from "./written-entry.ts";

let hub: TestHub;
beforeEach(async () => {
  hub = await TestHub.open();
});
afterEach(() => hub.close());

it("[HUB] the figures say how much room the disk has, what is under way, and how many requests were not done", async () => {
  const own = await TestHub.open({ data: tmpdir() });
  const token = await own.join("/devices/d", "watcher");
  await own.ask("GET", `/api/walks/${WALK}/followers`, { token });
  await own.ask("GET", "/api/walks");
  await own.push(await own.join("/devices/e"), writtenNotes("/devices/e", 1, 2));
  const { body } = await own.ask("GET", "/metrics");
  expect(body).toMatch(/^tetherline_disk_bytes\{what="free"\} [1-9]\d*$/m);
  expect(body).toMatch(/^tetherline_appends_under_way 0$/m);
  expect(body).toContain('tetherline_refused_requests_total{status="403"} 1');
  expect(body).toContain('tetherline_refused_requests_total{status="401"} 1');
  expect((await hub.ask("GET", "/metrics")).body).not.toMatch(/^tetherline_disk_bytes\{/m);
  await own.close();
});

it("[HUB] the figures say how the links with other hubs stand, and name them to the owner alone", async () => {
  const { beyond } = hub.hub.parts;
  const link = { name: "ground", state: "linked", heardAt: null, words: null } as const;
  beyond.put(WALK as WalkId, [{ ...link, unsent: 3, sentUpTo: (hub.now - 90_000) as Instant }]);
  beyond.put("walk-2" as WalkId, [
    { ...link, unsent: 0, sentUpTo: (hub.now - 500_000) as Instant },
    { ...link, name: "far side", state: "refused", unsent: 0, sentUpTo: null },
  ]);
  const { body } = await hub.ask("GET", "/metrics");
  expect(body).toContain('tetherline_links{state="linked"} 2');
  expect(body).toContain('tetherline_links{state="refused"} 1');
  expect(body).toContain('tetherline_links{state="linking"} 0');
  expect(body).toMatch(/^tetherline_link_unsent 3$/m);
  expect(body).toMatch(/^tetherline_link_lag_seconds 90$/m);
  expect(body).not.toMatch(/ground|far side|walk-/);
  const token = await hub.join("/devices/lead", "lead");
  expect((await hub.ask("GET", "/metrics", { token })).body).not.toMatch(/ground|far side|walk-/);
  const owners = (await hub.ask("GET", "/metrics", { token: hub.owner })).body;
  expect(owners).toMatch(/^tetherline_hub_lag_seconds\{hub="ground"\} 90$/m);
  expect(owners).toMatch(/^tetherline_hub_unsent\{hub="ground"\} 3$/m);
  expect(owners).toMatch(/^tetherline_hub_lag_seconds\{hub="far side"\} 0$/m);
  expect(owners).not.toMatch(/walk-/);
});

it("[HUB] a link through which nothing ever got lags infinitely, not by nothing", async () => {
  const link = { name: "ground", state: "refused", heardAt: null, words: null } as const;
  hub.hub.parts.beyond.put(WALK as WalkId, [{ ...link, unsent: 4, sentUpTo: null }]);
  const { body } = await hub.ask("GET", "/metrics", { token: hub.owner });
  expect(body).toMatch(/^tetherline_link_lag_seconds \+Inf$/m);
  expect(body).toMatch(/^tetherline_hub_lag_seconds\{hub="ground"\} \+Inf$/m);
});
