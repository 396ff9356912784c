import { spawnSync } from "node:child_process";

/** Builds the app and runs a hub that serves it; the hub's options go on to it, `--host` alone means the whole network. */
const built = spawnSync("npm", ["run", "-s", "build", "--", "--logLevel", "warn"], { stdio: "inherit" });
if (built.status !== 0) process.exit(built.status ?? 1);

const options = process.argv
  .slice(2)
  .map((option, index, all) =>
    option === "--host" && (all[index + 1] ?? "-").startsWith("-") ? "--host=0.0.0.0" : option,
  );
process.argv.splice(2, Number.POSITIVE_INFINITY, "hub", ...options);
await import("./main.ts");
