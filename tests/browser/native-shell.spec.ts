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

const BRIDGE = join(
  import.meta.dirname,
  "../../node_modules/@capacitor/android/capacitor/src/main/assets/native-bridge.js",
);

/**
 * Has the pages of a context speak with a keystore over Android's own bridge, as in its native shell, from a web view without
 * Ed25519. What the keystore gets to keep is put into the map given.
 */
async function withKeystore(context: BrowserContext, secrets: Map<string, string>): Promise<void> {
  await context.exposeFunction("askKeystore", (method: string, prefixedKey: string, data: string) => {
    if (method === "internalSetItem") secrets.set(prefixedKey, data);
    return { data: secrets.get(prefixedKey) ?? null };
  });
  await context.addInitScript(() => {
    Object.defineProperty(SubtleCrypto.prototype, "generateKey", {
      value: () => Promise.reject(new DOMException("no such keys", "NotSupportedError")),
    });
    const page = window as unknown as {
      askKeystore: (method: string, key: string, data: string) => Promise<object>;
    };
    const bridge = {
      postMessage: async (text: string) => {
        const { callbackId, pluginId, methodName, options } = JSON.parse(text);
        if (pluginId !== "SecureStorage") return;
        const data = await page.askKeystore(methodName, options.prefixedKey, options.data);
        const answer = { callbackId, pluginId, methodName, success: true, data, save: false };
        bridge.onmessage({ data: JSON.stringify(answer) });
      },
      onmessage: (_: { data: string }) => {},
    };
    const methods = ["internalGetItem", "internalSetItem", "internalRemoveItem"];
    const header = {
      name: "SecureStorage",
      methods: methods.map((name) => ({ name, rtype: "promise" })),
    };
    Object.assign(window, { androidBridge: bridge, Capacitor: { PluginHeaders: [header] } });
  });
  await context.addInitScript(await readFile(BRIDGE, "utf8"));
}

/** Serves the built app as the native shell does: each file of it, and the start page for every other address. */
async function asShell(context: BrowserContext, secrets: Map<string, string> | null = null): Promise<void> {
  // The browser asks its user before a page may reach the local network; an embedded web view leaves that to the shell.
  await context.grantPermissions(["local-network-access"]);
  if (secrets) await withKeystore(context, secrets);
  else
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

test("[SEL3] the key of a native shell whose web view makes none lies in the platform’s keystore", async ({
  browser,
  viewport,
}) => {
  const secrets = new Map<string, string>();
  const context = await browser.newContext({ viewport, hasTouch: true });
  await asShell(context, secrets);
  const page = await context.newPage();
  await page.goto(`${SHELL}/`);
  await chooseFile(page, { name: "short.procedure.json", text: JSON.stringify(shortFile) });
  await page.getByRole("button", { name: "Follow Short trial", exact: true }).click();
  const panel = await openLinkPanel(page);
  await panel.getByLabel("Who uses this tablet").fill("Inside");
  await panel.getByLabel("Owner’s code of the hub").fill(hub.ownerCode);
  await panel.getByLabel(/^Address of the hub/).fill(hub.address);
  await panel.getByRole("button", { name: "Share this walk" }).click();
  await expect(panel.getByText("linked", { exact: true })).toBeVisible();
  await expect(panel.getByText("where nobody can copy it", { exact: false })).toBeVisible();
  const [[name, kept] = [], ...others] = [...secrets];
  expect(others).toEqual([]);
  expect(name).toMatch(/^tetherline-[\w-]{43}$/);
  const seed = JSON.parse(kept ?? "");
  expect(Buffer.from(seed, "base64")).toHaveLength(32);

  // Nothing that the app keeps for itself holds the seed.
  const device = await page.evaluate(
    () =>
      new Promise<string>((resolve, reject) => {
        const opening = indexedDB.open("tetherline");
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const rows = opening.result.transaction("device").objectStore("device").getAll();
          rows.onsuccess = () => resolve(JSON.stringify(rows.result));
        };
      }),
  );
  expect(device).toContain('"in":"keystore"');
  expect(device).not.toContain("seed");

  await page.reload();
  await expect(linkCell(page)).toContainText("Linked");
  expect([...secrets.keys()]).toEqual([name]);
  await context.close();
});
