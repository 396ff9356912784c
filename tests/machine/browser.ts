import { spawnSync } from "node:child_process";
import { NoChromiumError, obtainChromium } from "./find-chromium.ts";
import { freePort } from "./free-port.ts";

/** Runs the browser tests; further arguments go to Playwright. */
try {
  const ran = spawnSync("npx", ["playwright", "test", ...process.argv.slice(2)], {
    stdio: "inherit",
    env: {
      ...process.env,
      TETHERLINE_CHROMIUM: obtainChromium(),
      TETHERLINE_PORT: String(await freePort(4179)),
    },
  });
  process.exitCode = ran.status ?? 1;
} catch (error) {
  if (!(error instanceof NoChromiumError)) throw error;
  console.error(error.message);
  process.exitCode = 1;
}
