import { gzipSync } from "node:zlib";
import { expect, test } from "@playwright/test";

const LIMIT = 260_000;

test.use({ serviceWorkers: "block" });

test("the first load ships at most 260 kB of gzipped JavaScript", async ({ page }, testInfo) => {
  const scripts = new Map<string, Promise<Buffer>>();
  page.on("response", (response) => {
    if (response.request().resourceType() === "script") scripts.set(response.url(), response.body());
  });
  await page.goto("/", { waitUntil: "networkidle" });
  await expect(page.getByRole("heading", { level: 1 }).filter({ visible: true }).first()).toBeVisible();
  const bodies = await Promise.all(scripts.values());
  const bytes = bodies.reduce((sum, body) => sum + gzipSync(body).length, 0);
  testInfo.annotations.push({ type: "first load", description: `${bodies.length} scripts, ${bytes} bytes` });
  console.log(`First load: ${bodies.length} scripts, ${(bytes / 1000).toFixed(1)} kB of gzipped JavaScript`);
  expect(bodies.length).toBeGreaterThan(0);
  expect(bytes).toBeLessThanOrEqual(LIMIT);
});
