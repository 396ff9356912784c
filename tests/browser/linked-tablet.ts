import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  expect,
  type Page,
} from "@playwright/test";
import { GapProxy } from "../machine/gap-proxy.ts";
import { chooseFile } from "./imported-walk.ts";
import { shortFile } from "./short-walk.ts";
import type { StartedHub } from "./started-hub.ts";
import { startClock } from "./walk-by-tapping.ts";

/** A tablet: a browser context of its own and the page it follows the walk on. */
export interface Tablet {
  readonly context: BrowserContext;
  readonly page: Page;
}

/** A tablet that has nothing on it yet, pointed at a hub. */
export async function newTablet(
  browser: Browser,
  { address }: Pick<StartedHub, "address">,
  options: BrowserContextOptions,
): Promise<Tablet> {
  const context = await browser.newContext({ ...options, baseURL: address });
  return { context, page: await context.newPage() };
}

/** How the follow screen says the walk is linked. */
export const linkCell = (page: Page) => page.locator(".follow-kept");

/** Opens the panel about link and followers. */
export async function openLinkPanel(page: Page) {
  await page.getByRole("button", { name: "More", exact: true }).click();
  await page.getByRole("button", { name: "Link and followers", exact: true }).click();
  const panel = page.getByRole("dialog", { name: "Link" });
  await expect(panel).toBeVisible();
  return panel;
}

/** Brings the walk on screen to the hub; its tablet leads it from then on. */
export async function shareWalk(page: Page, hub: StartedHub, name: string): Promise<void> {
  const panel = await openLinkPanel(page);
  await panel.getByLabel("Who uses this tablet").fill(name);
  await panel.getByLabel("Owner’s code of the hub").fill(hub.ownerCode);
  await panel.getByRole("button", { name: "Share this walk" }).click();
  await expect(panel.getByText("linked", { exact: true })).toBeVisible();
  await panel.getByRole("button", { name: "Back", exact: true }).click();
}

/** A code for one role, as the lead's screen shows it. */
export async function inviteFor(page: Page, role: "Marker" | "Watcher" | "Trainer"): Promise<string> {
  const panel = await openLinkPanel(page);
  await panel.getByRole("radio", { name: role }).check();
  await panel.getByRole("button", { name: "Make a code" }).click();
  await expect(panel.getByRole("img", { name: /QR code/ })).toBeVisible();
  const code = (await panel.locator(".invitation-code").textContent()) ?? "";
  await panel.getByRole("button", { name: "Back", exact: true }).click();
  return code;
}

/** Joins with a code from the shelf, and waits for the walk. */
export async function joinWalk({ page }: Tablet, code: string, name: string): Promise<void> {
  await page.goto("/");
  await page.getByRole("button", { name: "Join a walk" }).click();
  await page.getByLabel("Code (nine letters and digits)").fill(code);
  await page.getByLabel("Who uses this tablet").fill(name);
  await page.getByRole("button", { name: "Join the walk" }).click();
  await expect(page.locator(".follow-bar")).toBeVisible();
}

/** Three tablets on one walk of the short trial, all linked: inside (leads), ground (marks) and a back room (watches). */
export interface ThreeTablets {
  readonly iv: Tablet;
  readonly ground: Tablet;
  readonly watcher: Tablet;
  readonly pages: readonly Page[];
  /** The network of the one inside. */
  readonly gap: GapProxy;
  close(): Promise<void>;
}

export async function threeTablets(
  browser: Browser,
  hub: StartedHub,
  options: BrowserContextOptions,
): Promise<ThreeTablets> {
  const gap = await GapProxy.open(() => Number(new URL(hub.address).port));
  const iv = await newTablet(browser, gap, options);
  const ground = await newTablet(browser, hub, options);
  const watcher = await newTablet(browser, hub, options);
  const tablets = [iv, ground, watcher];
  await iv.page.goto("/");
  await chooseFile(iv.page, { name: "short.procedure.json", text: JSON.stringify(shortFile) });
  await iv.page.getByRole("button", { name: "Follow Short trial", exact: true }).click();
  await shareWalk(iv.page, hub, "Inside");
  await joinWalk(ground, await inviteFor(iv.page, "Marker"), "Ground");
  await joinWalk(watcher, await inviteFor(iv.page, "Watcher"), "Back room");
  for (const { page } of tablets) await expect(linkCell(page)).toContainText("Linked");
  return {
    iv,
    ground,
    watcher,
    pages: tablets.map(({ page }) => page),
    gap,
    close: async () => {
      for (const { context } of tablets) await context.close();
      await gap.close();
    },
  };
}

/** Starts the clock of the walk on one tablet; resolves once it runs on all. */
export async function startClockForAll(starting: Page, pages: readonly Page[]): Promise<void> {
  await startClock(starting);
  for (const page of pages) await expect(page.locator(".follow-bar")).toContainText("Running");
}

/** Each step of the list with its stage and times, as one text. */
export function listText(page: Page): Promise<string> {
  return page.locator("li[data-row][data-stage]").evaluateAll((rows) =>
    rows
      .map((row) => {
        const done = row.getAttribute("data-stage") === "done" ? row.querySelector(".follow-times") : null;
        return `${row.getAttribute("data-row")} ${row.getAttribute("data-stage")} ${done?.textContent ?? ""}`;
      })
      .join("\n"),
  );
}
