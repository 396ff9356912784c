import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium, expect, test } from "@playwright/test";
import { doneCount, openWalk, startClock, tapSteps } from "./walk-by-tapping.ts";

test.use({ serviceWorkers: "allow" });

test("[LOG5] every tap confirmed before the browser was killed is there when it is opened again", async ({
  viewport,
  baseURL,
}, testInfo) => {
  test.setTimeout(300_000);
  const profile = mkdtempSync(join(tmpdir(), "tetherline-killed-"));
  const open = () =>
    chromium.launchPersistentContext(profile, {
      ...testInfo.project.use.launchOptions,
      viewport,
      ...(baseURL ? { baseURL } : {}),
    });
  try {
    const first = await open();
    const page = await first.newPage();
    await openWalk(page);
    await startClock(page);
    const address = page.url();
    expect(await tapSteps(page, 25)).toBe(25);
    // SIGKILL of every process of this browser, found by its profile: no time to tidy up.
    execFileSync("pkill", ["-KILL", "-f", profile]);
    await first.close().catch(() => undefined);

    const second = await open();
    const again = await second.newPage();
    await again.goto(address);
    await expect.poll(() => doneCount(again)).toBe(25);
    await second.close();
  } finally {
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  }
});
