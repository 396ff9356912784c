import { spawnSync } from "node:child_process";

/**
 * Runs the long tests whole: random schedules of the link, malformed requests, hubs and servers killed under load; and the
 * main job in three engines, against the app as it was built.
 */
const LONG = ["tests/engines", "tests/io/link/agreement", "tests/hub/fuzz.test.ts", "tests/hub/faults"];
/** Which of them, when they are named. */
const some = process.argv.slice(2);
const { status } = spawnSync("npx", ["vitest", "run", ...(some.length > 0 ? some : LONG)], {
  stdio: "inherit",
  env: { ...process.env, TETHERLINE_SOAK: "1" },
});
process.exitCode = status ?? 1;
