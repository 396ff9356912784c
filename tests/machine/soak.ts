import { spawnSync } from "node:child_process";

/** Runs the long tests whole: random schedules of the link, malformed requests, hubs and servers killed under load. */
const LONG = ["tests/io/link/agreement", "tests/hub/fuzz.test.ts", "tests/hub/faults"];
const { status } = spawnSync("npx", ["vitest", "run", ...LONG], {
  stdio: "inherit",
  env: { ...process.env, TETHERLINE_SOAK: "1" },
});
process.exitCode = status ?? 1;
