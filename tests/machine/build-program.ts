import { execFileSync } from "node:child_process";
import { buildState } from "../../src/build-state.mjs";

/** Builds the program that tests run as a process, unless it is built from the sources as they are. */
export function setup(): void {
  if (buildState("program") === "current") return;
  execFileSync("npm", ["run", "-s", "build:program", "--", "--logLevel", "warn"], { stdio: "inherit" });
}
