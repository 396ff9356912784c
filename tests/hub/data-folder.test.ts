import { spawn } from "node:child_process";
import { once } from "node:events";
import { chmodSync, existsSync, mkdtempSync, rmSync, statSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { text } from "node:stream/consumers";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { makeFolder } from "../../src/hub/data-folder/index.ts";
import { startHub } from "../../src/hub/index.ts";

const isRoot = process.getuid?.() === 0;
const SILENT = { out: () => {}, err: () => {} };
const OPTIONS = {
  port: 0,
  host: "localhost",
  certificate: null,
  key: null,
  engine: null,
  name: "hub",
  plain: false,
  newOwnerCode: false,
  upstream: null,
  upstreamCode: null,
  app: "/nowhere",
};
let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "tetherline-folder-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

/** How a hub on this data folder ends, given a while. */
async function hubOn(data: string) {
  const child = spawn(process.execPath, ["src/tetherline.mjs", "hub", "--port", "0", "--data", data], {
    stdio: ["ignore", "pipe", "pipe"],
    timeout: 25_000,
    killSignal: "SIGKILL",
  });
  const ended = once(child, "exit");
  const [out, err] = await Promise.all([text(child.stdout), text(child.stderr)]);
  const [status] = (await ended) as [number | null];
  return { out, err, status };
}

describe("[HUB] a data folder that cannot be had", { timeout: 30_000 }, () => {
  it.skipIf(!existsSync("/proc/self"))(
    "in a file system of the kernel's own, ends the hub at once",
    async () => {
      expect(await hubOn("/proc/tetherline")).toEqual({
        out: "",
        err: 'The data folder "/proc/tetherline" cannot be made: give another with --data.\n',
        status: 2,
      });
    },
  );

  it("is refused in one sentence: a file, below a file, a link to nowhere", async () => {
    const file = join(folder, "file");
    writeFileSync(file, "x");
    const link = join(folder, "link");
    symlinkSync(join(folder, "nowhere"), link);
    for (const data of [file, join(file, "below"), join(file, "far", "below"), link, join(link, "below")]) {
      await expect(startHub({ ...OPTIONS, data }, SILENT)).rejects.toThrow(
        /^The data folder "[^\n]+" (is not (in )?a folder|cannot be made): give another with --data\.$/,
      );
    }
  });

  it.skipIf(isRoot)(
    "is refused in one sentence without permission (skipped as root, who has every one)",
    async () => {
      const closed = join(folder, "closed");
      makeFolder(closed);
      for (const mode of [0o000, 0o500]) {
        chmodSync(closed, mode);
        for (const data of [closed, join(closed, "below"), join(closed, "far", "below")]) {
          await expect(startHub({ ...OPTIONS, data }, SILENT)).rejects.toThrow(
            /^[^\n]+may not be (used|opened|written)[^\n]+$/,
          );
        }
      }
      chmodSync(closed, 0o700);
    },
  );
});

describe("[HUB] making the data folder", () => {
  it("makes those above it too, for this user alone, and leaves one that is there", () => {
    const deep = join(folder, "a", "b", "c");
    makeFolder(deep);
    expect(statSync(deep).mode & 0o777).toBe(0o700);
    chmodSync(deep, 0o755);
    makeFolder(`${deep}/`);
    expect(statSync(deep).mode & 0o777).toBe(0o755);
  });
});
