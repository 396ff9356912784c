import { afterEach, beforeEach, expect, it } from "vitest";
import type { Instant, WalkId } from "../../src/core/units/index.ts";
import { TestHub, WALK } from "./test-hub.ts";

let hub: TestHub;
beforeEach(async () => {
  hub = await TestHub.open();
});
afterEach(() => hub.close());

it("[HUB] the figures say how the links with other hubs stand, and name none of them", async () => {
  const { beyond } = hub.hub.parts;
  const link = { name: "ground", state: "linked", heardAt: null, words: null } as const;
  beyond.put(WALK as WalkId, [{ ...link, unsent: 3, sentUpTo: (hub.now - 90_000) as Instant }]);
  beyond.put("walk-2" as WalkId, [
    { ...link, unsent: 0, sentUpTo: (hub.now - 500_000) as Instant },
    { ...link, state: "refused", unsent: 4, sentUpTo: null },
  ]);
  const { body } = await hub.ask("GET", "/metrics");
  expect(body).toContain('tetherline_links{state="linked"} 2');
  expect(body).toContain('tetherline_links{state="refused"} 1');
  expect(body).toContain('tetherline_links{state="linking"} 0');
  expect(body).toMatch(/^tetherline_link_unsent 7$/m);
  expect(body).toMatch(/^tetherline_link_lag_seconds 90$/m);
  expect(body).not.toMatch(/ground|walk-/);
});
