import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openEngine } from "../../../src/hub/engine/index.ts";
import { testEngine } from "./engine-contract.ts";
import { NOON } from "./written-notes.ts";

testEngine({
  name: "sqlite",
  isShared: false,
  runs: 60,
  newStore: async () => {
    const data = mkdtempSync(join(tmpdir(), "tetherline-sqlite-"));
    return {
      open: () => openEngine({ data, engine: null, now: () => NOON }),
      end: async () => rmSync(data, { recursive: true, force: true }),
    };
  },
});
