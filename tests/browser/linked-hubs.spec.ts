import { expect, type Page, test } from "@playwright/test";
import { GapProxy } from "../machine/gap-proxy.ts";
import { violations } from "./axe-violations.ts";
import { chooseFile } from "./imported-walk.ts";
import { linkCell, listText, newTablet, shareWalk, startClockForAll } from "./linked-tablet.ts";
import { shortFile } from "./short-walk.ts";
import { type StartedHub, startHubProcess } from "./started-hub.ts";
import { startClock, tapDone } from "./walk-by-tapping.ts";

let ground: StartedHub;
let vehicle: StartedHub;
let gap: GapProxy;

test.beforeAll(async ({ browserName: _ }, testInfo) => {
  const from = 5010 + testInfo.parallelIndex * 40;
  ground = await startHubProcess(from, "--name", "Ground");
  gap = await GapProxy.open(() => Number(new URL(ground.address).port));
  vehicle = await startHubProcess(
    from + 20,
    ...["--name", "Vehicle", "--upstream", gap.address, "--upstream-code", ground.ownerCode],
  );
});

test.afterAll(async () => {
  await vehicle?.stop();
  await gap?.close();
  await ground?.stop();
});

const row = (page: Page, step: string) => page.locator(`[data-row="${step}"]`);
const strip = (page: Page) => page.getByRole("region", { name: "Over the gap" });

test("[HUB] two sites mark on while nothing comes over the gap, see how far the other has read, and agree after", async ({
  browser,
  viewport,
}) => {
  test.slow();
  const options = { viewport, hasTouch: true };
  const inside = await newTablet(browser, vehicle, options);
  const planner = await newTablet(browser, ground, options);
  const pages = [inside.page, planner.page];

  await test.step("the vehicle's tablet shares a walk with its hub, which passes it on", async () => {
    await inside.page.goto("/");
    await chooseFile(inside.page, { name: "short.procedure.json", text: JSON.stringify(shortFile) });
    await inside.page.getByRole("button", { name: "Follow Short trial", exact: true }).click();
    await shareWalk(inside.page, vehicle, "Inside");
    await expect(strip(inside.page)).toContainText("Ground has got all");
  });

  await test.step("the planner finds it on the ground's hub with that hub's own code", async () => {
    await planner.page.goto("/join");
    await planner.page.getByLabel("Code (nine letters and digits)").fill(ground.ownerCode);
    await planner.page.getByLabel("Who uses this tablet").fill("Planner");
    await planner.page.getByRole("button", { name: "Join the walk" }).click();
    await expect(planner.page.getByRole("radio", { name: /Short trial/ })).toBeChecked();
    await planner.page.getByRole("button", { name: "Join the walk" }).click();
    await expect(linkCell(planner.page)).toContainText("Linked");
    await expect(strip(planner.page)).toContainText("Vehicle has seen all");
    await startClockForAll(inside.page, pages);
  });

  await test.step("nothing comes over: each goes on, and sees how old the other's knowledge is", async () => {
    gap.set("closed");
    await tapDone(row(inside.page, "ev1-check").locator(".done-button"));
    await tapDone(row(planner.page, "ev2-check").locator(".done-button"));
    await expect(strip(inside.page)).toContainText(/Ground has got all up to 0:0\d · 1 waiting to be sent/, {
      timeout: 60_000,
    });
    await expect(strip(planner.page)).toContainText("Vehicle away", { timeout: 90_000 });
    for (const page of pages) {
      await expect(linkCell(page)).toContainText("all sent");
      expect(await violations(page, ".beyond-strip")).toEqual([]);
    }
    await expect(row(inside.page, "ev2-check")).toHaveAttribute("data-stage", "working");
    await expect(row(planner.page, "ev1-check")).toHaveAttribute("data-stage", "working");
  });

  await test.step("contact again: both agree", async () => {
    gap.set("open");
    for (const page of pages) {
      for (const step of ["ev1-check", "ev2-check"])
        await expect(row(page, step)).toHaveAttribute("data-stage", "done", { timeout: 90_000 });
    }
    await expect(strip(inside.page)).toContainText("Ground has got all");
    const expected = await listText(inside.page);
    await expect.poll(() => listText(planner.page)).toBe(expected);
  });
  for (const { context } of [inside, planner]) await context.close();
});

test("[HUB] without its hub a tablet says so in full, however narrow", async ({ browser }) => {
  const tablet = await newTablet(browser, vehicle, { viewport: { width: 1180, height: 820 } });
  await tablet.page.goto("/");
  await chooseFile(tablet.page, { name: "short.procedure.json", text: JSON.stringify(shortFile) });
  await tablet.page.getByRole("button", { name: "Follow Short trial", exact: true }).click();
  await shareWalk(tablet.page, vehicle, "Inside");
  await startClock(tablet.page);
  await vehicle.kill();
  await expect(linkCell(tablet.page)).toContainText(/Linking · heard \d+ s ago/, { timeout: 60_000 });
  for (const [width, height] of [
    [1180, 820],
    [1024, 768],
    [820, 1180],
    [390, 844],
  ] as const) {
    await tablet.page.setViewportSize({ width, height });
    const cut = await linkCell(tablet.page).evaluate((cell) =>
      [...cell.querySelectorAll("span")]
        .filter((span) => {
          const { left, right } = span.getBoundingClientRect();
          return span.scrollWidth > span.clientWidth + 1 || left < 0 || right > innerWidth;
        })
        .map((span) => span.textContent),
    );
    expect(cut, `at ${width} px`).toEqual([]);
  }
  await vehicle.start();
  await tablet.context.close();
});
