import { spawnSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readdirSync, rmSync, utimesSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "tetherline-built-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

/** Writes a file of the folder as if `minutes` after the others. */
function write(path: string, text: string, minutes: number): void {
  const file = join(folder, path);
  mkdirSync(join(file, ".."), { recursive: true });
  writeFileSync(file, text);
  const at = 1_900_000_000 + minutes * 60;
  utimesSync(file, at, at);
}

/** Runs the program's start file in the folder. */
function run() {
  for (const name of ["tetherline.mjs", "build-state.mjs"]) {
    cpSync(join("src", name), join(folder, "src", name), { preserveTimestamps: true });
  }
  write("package.json", '{"type":"module"}', 0);
  const { status, stdout, stderr } = spawnSync(process.execPath, [join(folder, "src/tetherline.mjs")], {
    encoding: "utf8",
  });
  return { status, stdout, stderr };
}

const BUILT = 'console.log("ran");';

describe("the start file of the program", () => {
  it("says how to build what is not built, and ends with 2", () => {
    write("src/main.ts", "", 0);
    expect(run()).toEqual({
      status: 2,
      stdout: "",
      stderr: "Tetherline is not built here yet: `npm run build` builds it.\n",
    });
  });

  it("runs what is built from the sources as they are, without a word", () => {
    write("src/main.ts", "", 0);
    write("dist/program/main.js", BUILT, 1e6);
    expect(run()).toEqual({ status: 0, stdout: "ran\n", stderr: "" });
  });

  it("says that a source is newer than what runs", () => {
    write("src/main.ts", "", 2e6);
    write("dist/program/main.js", BUILT, 1e6);
    const { status, stdout, stderr } = run();
    expect([status, stdout]).toEqual([0, "ran\n"]);
    expect(stderr).toBe(
      "The sources are newer than what is built and runs: `npm run build` builds it anew.\n",
    );
  });

  it("has no sources to be older than where it is installed", () => {
    write("dist/program/main.js", BUILT, -1e6);
    expect(run()).toEqual({ status: 0, stdout: "ran\n", stderr: "" });
  });
});

it("the program compiles nothing when it runs, and takes no code from a folder for temporary files", () => {
  const { status } = spawnSync(
    process.execPath,
    [resolve("src/tetherline.mjs"), "check", "procedures/osier-ranging-head.procedure.json"],
    { env: { ...process.env, TMPDIR: folder, TMP: folder, TEMP: folder } },
  );
  expect(status).toBe(0);
  expect(readdirSync(folder)).toEqual([]);
});
