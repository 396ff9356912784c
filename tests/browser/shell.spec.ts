import { expect, type Page, test } from "@playwright/test";

test.use({ serviceWorkers: "allow" });

async function untilStoredForOffline(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (!navigator.serviceWorker.controller)
      await new Promise((resolve) => navigator.serviceWorker.addEventListener("controllerchange", resolve));
  });
}

test("the shell opens with its name and no error", async ({ page }) => {
  const errors: string[] = [];
  page.on("pageerror", (error) => errors.push(error.message));
  page.on("console", (message) => {
    if (message.type() === "error") errors.push(message.text());
  });
  await page.goto("/");
  await expect(page).toHaveTitle("Tetherline");
  await expect(page.getByRole("heading", { level: 1 }).filter({ visible: true }).first()).toBeVisible();
  expect(errors).toEqual([]);
});

test("[HUB] nothing on the first screens goes against the hub's content security policy", async ({
  page,
}) => {
  await page.addInitScript(() => {
    const seen: string[] = [];
    Object.assign(window, { violationsSeen: seen });
    addEventListener("securitypolicyviolation", (event) =>
      seen.push(`${event.violatedDirective}: ${event.blockedURI}`),
    );
  });
  for (const path of ["/", "/plan/osier-ranging-head", "/join"]) {
    await page.goto(path, { waitUntil: "networkidle" });
    await expect(page.getByRole("heading", { level: 1 }).filter({ visible: true }).first()).toBeVisible();
    expect(await page.evaluate(() => Reflect.get(window, "violationsSeen"))).toEqual([]);
  }
});

test("[HUB] a page under the service worker leaves the hub's own addresses to the hub", async ({ page }) => {
  await page.goto("/");
  await untilStoredForOffline(page);
  const health = await page.goto("/api/health");
  expect(await health?.json()).toMatchObject({ status: "ok" });
  const metrics = await page.goto("/metrics");
  expect(await metrics?.text()).toContain("# HELP");
});

test("a reload without a network shows the same screen in its own typeface", async ({ page, context }) => {
  await page.goto("/");
  await untilStoredForOffline(page);
  await context.setOffline(true);
  await page.reload();
  await expect(page.getByRole("heading", { level: 1 }).filter({ visible: true }).first()).toBeVisible();
  // A face that had to come from the network would fail to load here.
  const faces = await page.evaluate(async () =>
    (await document.fonts.load('700 18px "B612"')).map((face) => face.status),
  );
  expect(faces).toEqual(["loaded"]);
});

for (const [device, theme] of [
  ["light", "day"],
  ["dark", "night"],
] as const) {
  test(`a device set to ${device} gets the ${theme} theme until the reader chooses`, async ({ page }) => {
    await page.emulateMedia({ colorScheme: device });
    await page.goto("/");
    await expect(page.locator("html")).toHaveAttribute("data-theme", theme);
    await page.evaluate(() => localStorage.setItem("tetherline.theme", "dim"));
    await page.reload();
    await expect(page.locator("html")).toHaveAttribute("data-theme", "dim");
  });
}
