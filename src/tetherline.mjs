#!/usr/bin/env node
// The command line as it is installed: what `npm run build` made runs, and nothing is compiled on the way.
import { buildState } from "./build-state.mjs";

const state = buildState("program");
if (state === "missing") {
  process.stderr.write("Tetherline is not built here yet: `npm run build` builds it.\n");
  process.exit(2);
}
if (state === "older") {
  process.stderr.write(
    "The sources are newer than what is built and runs: `npm run build` builds it anew.\n",
  );
}
await import("../dist/program/main.js");
