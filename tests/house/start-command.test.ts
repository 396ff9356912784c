import { spawn } from "node:child_process";
import { mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { freePort } from "../machine/free-port.ts";

const home = mkdtempSync(join(tmpdir(), "tetherline-home-"));
afterAll(() => rmSync(home, { recursive: true, force: true }));

/** What stands at the top of the checkout, the build aside. */
const top = () => readdirSync(".").filter((name) => name !== "dist");

/** Runs the README's start command until it says where the app is, and stops it; resolves with what it said. */
async function startedAndStopped(): Promise<string> {
  const port = await freePort(4290);
  const child = spawn("npm", ["start", "--", "--port", String(port)], {
    env: { ...process.env, HOME: home, XDG_DATA_HOME: join(home, "data"), APPDATA: home, LOCALAPPDATA: home },
    detached: true,
  });
  let said = "";
  return new Promise((resolve, reject) => {
    child.stdout.on("data", (chunk: Buffer) => {
      said += chunk.toString();
      if (said.includes(`http://localhost:${port}`) && child.pid !== undefined)
        process.kill(-child.pid, "SIGINT");
    });
    child.once("error", reject);
    child.once("close", () => resolve(said));
  });
}

describe("the README's start command", { timeout: 120_000 }, () => {
  it("leaves nothing in the checkout but the build, so that the test command passes after it", async () => {
    const before = top();
    const said = await startedAndStopped();
    expect(said).toContain("http://localhost:");
    expect(top()).toEqual(before);
    expect(readdirSync(home)).not.toEqual([]);
  });
});
