import { type ChildProcess, execFileSync, spawn } from "node:child_process";
import { cpSync, mkdirSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildState } from "../../src/build-state.mjs";
import { fileWith, step, task } from "../core/procedure-builder.ts";
import { Scratch } from "./run-tetherline.ts";

/** What the program finds among installed packages, since it holds compiled code; everything else is built into it. */
const INSTALLED = ["better-sqlite3", "bindings", "file-uri-to-path"];

const isBuilt = buildState("app") !== "missing";
const scratch = new Scratch();
const home = scratch.path("home");
const packed = join(home, "node_modules/tetherline");
const program = join(packed, "src/tetherline.mjs");

const run = (...words: readonly string[]) =>
  execFileSync(process.execPath, [program, ...words], { cwd: home, encoding: "utf8" });

describe.skipIf(!isBuilt)(
  `[HUB] the package, unpacked in a clean folder${isBuilt ? "" : ", was not looked at: the app is not built"}`,
  () => {
    beforeAll(() => {
      mkdirSync(join(home, "node_modules"), { recursive: true });
      const said = execFileSync("npm", ["pack", "--ignore-scripts", "--json", "--pack-destination", home], {
        encoding: "utf8",
      });
      const [{ filename }] = JSON.parse(said) as [{ filename: string }];
      execFileSync("tar", ["-xzf", join(home, filename), "-C", home]);
      cpSync(join(home, "package"), packed, { recursive: true });
      for (const name of INSTALLED)
        cpSync(join("node_modules", name), join(home, "node_modules", name), { recursive: true });
    }, 60_000);
    afterAll(() => scratch.remove());

    it("has what is built and the procedures, and neither sources nor tests", () => {
      expect(readdirSync(packed).sort()).toEqual(["README.md", "dist", "package.json", "procedures", "src"]);
      expect(readdirSync(join(packed, "src")).sort()).toEqual([
        "build-state.mjs",
        "start.mjs",
        "tetherline.mjs",
      ]);
    });

    it("checks and plans without a checkout", () => {
      const file = join(packed, "procedures/osier-ranging-head.procedure.json");
      expect(run("plan", file)).toContain("Finish");
      expect(run("--help")).toContain("tetherline");
      const { version } = JSON.parse(readFileSync("package.json", "utf8")) as { version: string };
      expect(run("--version")).toBe(`${version}\n`);
    });

    it("[FIT3] has the solver of the second proof with it", () => {
      // Ten pieces of work for three people, which the first proof leaves open.
      const tasks = [41, 37, 33, 29, 27, 23, 19, 17, 13, 11].map((time, number) =>
        task(`task-${number}`, [step(`work-${number}`, "ev1", time, { or: [["ev2"], ["iv"]] })], {
          order: "free",
        }),
      );
      const file = scratch.write(
        "open.procedure.json",
        JSON.stringify(fileWith(tasks, { format: "tetherline.procedure/2" })),
      );
      const { second } = JSON.parse(run("split", file, "--tries", "2000", "--proof", "--json"));
      expect(second).toMatchObject({ status: "proven" });
    });

    it("runs a hub that serves the app", { timeout: 60_000 }, async () => {
      const data = scratch.path("data");
      const hub: ChildProcess = spawn(
        process.execPath,
        [program, "hub", "--port", "0", "--host", "127.0.0.1", "--data", data],
        { cwd: home, stdio: ["ignore", "pipe", "inherit"] },
      );
      try {
        const address = await new Promise<string>((resolve, reject) => {
          let said = "";
          hub.stdout?.on("data", (chunk: Buffer) => {
            said += chunk.toString();
            const [found] = /http:\/\/\S+:\d+/.exec(said) ?? [];
            if (found !== undefined) resolve(found);
          });
          hub.once("exit", (status) => reject(new Error(`the hub ended with ${status}: ${said}`)));
        });
        const page = await (await fetch(address)).text();
        const [, script = ""] = /<script[^>]* src="([^"]+)"/.exec(page) ?? [];
        expect((await fetch(new URL(script, address))).status).toBe(200);
        expect((await fetch(new URL("/api/health", address))).status).toBe(200);
      } finally {
        hub.kill("SIGKILL");
      }
    });
  },
);
