import { gzipSync } from "node:zlib";
import { expect, type Response, test } from "@playwright/test";

const LIMIT = 260_000;

test("the first load ships at most 260 kB of gzipped JavaScript", async ({ page }, testInfo) => {
  const scripts = new Map<string, Promise<Buffer>>();
  const unpacked: string[] = [];
  const hear = (response: Response) => {
    if (response.request().resourceType() !== "script") return;
    scripts.set(
      response.url(),
      response.body().then((body) => {
        if (body.length >= 1024 && response.headers()["content-encoding"] !== "gzip")
          unpacked.push(response.url());
        return body;
      }),
    );
  };
  page.on("response", hear);
  // What is fetched behind the first screen counts too: the store, and last of all the frame of the other pages.
  await Promise.all([page.waitForResponse(/\/assets\/frame-/), page.goto("/")]);
  await page.waitForLoadState("networkidle");
  await expect(page.getByRole("heading", { level: 1 }).filter({ visible: true }).first()).toBeVisible();
  // What comes later is no part of it, and might come when the test is over.
  page.off("response", hear);
  const bodies = await Promise.all(scripts.values());
  const bytes = bodies.reduce((sum, body) => sum + gzipSync(body).length, 0);
  testInfo.annotations.push({ type: "first load", description: `${bodies.length} scripts, ${bytes} bytes` });
  console.log(`First load: ${bodies.length} scripts, ${(bytes / 1000).toFixed(1)} kB of gzipped JavaScript`);
  expect(bodies.length).toBeGreaterThan(0);
  expect(unpacked).toEqual([]);
  expect(bytes).toBeLessThanOrEqual(LIMIT);
});
