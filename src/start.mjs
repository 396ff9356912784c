import { spawnSync } from "node:child_process";
import { buildState } from "./build-state.mjs";

// Builds what is not built, then runs a hub that serves the app. The hub's options go on to it; `--host` alone means
// the whole network.
for (const part of ["app", "program"]) {
  if (buildState(part) === "current") continue;
  const { status } = spawnSync("npm", ["run", "-s", `build:${part}`, "--", "--logLevel", "warn"], {
    stdio: "inherit",
  });
  if (status !== 0) process.exit(status ?? 1);
}

const options = process.argv
  .slice(2)
  .map((option, index, all) =>
    option === "--host" && (all[index + 1] ?? "-").startsWith("-") ? "--host=0.0.0.0" : option,
  );
process.argv.splice(2, Number.POSITIVE_INFINITY, "hub", ...options);
await import("../dist/program/main.js");
