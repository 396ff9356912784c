import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** Runs a hub that serves the built app, with a data folder that goes when it ends; the hub's options go on to it. */
const data = mkdtempSync(join(tmpdir(), "tetherline-served-"));
process.on("exit", () => rmSync(data, { recursive: true, force: true }));
process.argv.splice(2, 0, "hub", "--data", data);
await import("../../src/tetherline.mjs");
