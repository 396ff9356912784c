import { readFile } from "node:fs/promises";
import { extname, join } from "node:path";
import { type BrowserContext, expect, test } from "@playwright/test";
import { chooseFile } from "./imported-walk.ts";
import { linkCell, openLinkPanel, startClockForAll } from "./linked-tablet.ts";
import { shortFile } from "./short-walk.ts";
import { type StartedHub, startHubProcess } from "./started-hub.ts";
import { tapDone } from "./walk-by-tapping.ts";

/** Where Android's native shell serves the app, from its own files. */
const SHELL = "https://localhost";
const APP = join(import.meta.dirname, "../../dist/app");
const KINDS: Readonly<Record<string, string>> = {
  ".html": "text/html",
  ".js": "text/javascript",
  ".css": "text/css",
  ".svg": "image/svg+xml",
  ".json": "application/json",
};

let hub: StartedHub;
test.beforeAll(async ({ browserName: _ }, testInfo) => {
  hub = await startHubProcess(4930 + testInfo.parallelIndex * 40, "--name", "Vehicle hub");
});
test.afterAll(async () => hub?.stop());

/** Serves the built app as the native shell does: each file of it, and the start page for every other address. */
async function asShell(context: BrowserContext): Promise<void> {
  // The browser asks its user before a page may reach the local network; an embedded web view leaves that to the shell.
  await context.grantPermissions(["local-network-access"]);
  await context.addInitScript(() => {
    Object.assign(window, { Capacitor: { isNativePlatform: () => true } });
  });
  await context.route(`${SHELL}/**`, async (route) => {
    const { pathname } = new URL(route.request().url());
    const file = extname(pathname) === "" ? "/index.html" : pathname;
    const body = await readFile(join(APP, file)).catch(() => null);
    await route.fulfill(
      body === null
        ? { status: 404 }
        : { body, contentType: KINDS[extname(file)] ?? "application/octet-stream" },
    );
  });
}

test("[HUB] a native shell brings a walk to a hub, another one joins by its link, and a lead takes everybody off", async ({
  browser,
  viewport,
}) => {
  test.slow();
  const contexts = await Promise.all([0, 1].map(() => browser.newContext({ viewport, hasTouch: true })));
  for (const context of contexts) await asShell(context);
  const [lead, other] = await Promise.all(contexts.map((context) => context.newPage()));
  if (!lead || !other) throw new Error("A page is missing.");

  await lead.goto(`${SHELL}/`);
  await chooseFile(lead, { name: "short.procedure.json", text: JSON.stringify(shortFile) });
  await lead.getByRole("button", { name: "Follow Short trial", exact: true }).click();
  const panel = await openLinkPanel(lead);
  const address = panel.getByLabel(/^Address of the hub/);
  await panel.getByLabel("Who uses this tablet").fill("Inside");
  await panel.getByLabel("Owner’s code of the hub").fill(hub.ownerCode);
  await address.fill("http://hub.example:4173");
  await panel.getByRole("button", { name: "Share this walk" }).click();
  await expect(panel.getByRole("alert")).toContainText("no address of a hub");
  await address.fill(hub.address);
  await panel.getByRole("button", { name: "Share this walk" }).click();
  await expect(panel.getByText("linked", { exact: true })).toBeVisible();
  await panel.getByRole("button", { name: "Make a code" }).click();
  const code = ((await panel.locator(".invitation-code").textContent()) ?? "").replaceAll("-", "");

  await other.goto(`${SHELL}/join`);
  await other.getByLabel(/^Address of the hub/).fill(`${hub.address}/join/${code}`);
  await other.getByLabel("Who uses this tablet").fill("Ground");
  await other.getByRole("button", { name: "Join the walk" }).click();
  await expect(linkCell(other)).toContainText("Linked");

  await panel.getByRole("button", { name: "Back", exact: true }).click();
  await startClockForAll(lead, [lead, other]);
  await tapDone(other.locator('[data-row="ev1-check"] .done-button'));
  await expect(lead.locator('[data-row="ev1-check"]')).toHaveAttribute("data-stage", "done");
  await other.reload();
  await expect(linkCell(other)).toContainText("Linked");

  await openLinkPanel(lead);
  await panel.getByRole("button", { name: "Take everybody off …" }).click();
  await panel.getByRole("button", { name: "Take everybody off", exact: true }).click();
  await expect(panel.getByText("1 device was taken off. All codes have ended.")).toBeVisible();
  await expect(linkCell(other)).toContainText("Link ended");
  for (const context of contexts) await context.close();
});
