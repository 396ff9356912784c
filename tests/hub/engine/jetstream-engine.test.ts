import { afterAll, beforeAll, describe } from "vitest";
import { openEngine } from "../../../src/hub/engine/index.ts";
import { type NatsServers, startNats, whyNoNats } from "../../machine/nats-server.ts";
import { testEngine } from "./engine-contract.ts";
import { NOON } from "./written-notes.ts";

const skipped = whyNoNats();

describe.skipIf(skipped !== null)(skipped ?? "with nats-server", () => {
  let nats: NatsServers;
  let stores = 0;
  beforeAll(async () => {
    nats = await startNats({ count: 1 });
  });
  afterAll(() => nats?.stop());

  testEngine({
    name: "jetstream",
    isShared: true,
    runs: 15,
    newStore: async () => {
      stores += 1;
      const engine = `${nats.url}?name=s${stores}`;
      return { open: () => openEngine({ data: "", engine, now: () => NOON }), end: async () => {} };
    },
  });
});
