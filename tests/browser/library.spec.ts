import { expect, type Page, test } from "@playwright/test";
import { violations } from "./axe-violations.ts";
import { chooseFile } from "./imported-walk.ts";
import { newTablet, type Tablet } from "./linked-tablet.ts";
import { shortFile } from "./short-walk.ts";
import { type StartedHub, startHubProcess } from "./started-hub.ts";

let hub: StartedHub;

test.beforeAll(async ({ browserName: _ }, testInfo) => {
  hub = await startHubProcess(4590 + testInfo.parallelIndex * 3, "--name", "Test hub");
});

test.afterAll(async () => hub?.stop());

const B = JSON.stringify({ ...shortFile, revision: "B" });
const withSummary = (revision: string, summary: string) =>
  JSON.stringify({ ...shortFile, revision, summary });
const withTitle = (revision: string, title: string) => JSON.stringify({ ...shortFile, revision, title });

async function openLibrary(page: Page): Promise<void> {
  await page.goto("/");
  await page.getByRole("button", { name: "Join a walk" }).click();
  await page.getByRole("button", { name: "Hub’s library" }).click();
  await expect(page.getByRole("heading", { name: "Keep a revision in the library" })).toBeVisible();
}

async function link(page: Page, name: string): Promise<void> {
  await page.getByLabel("Code (nine letters and digits)").fill(hub.ownerCode);
  await page.getByLabel("Who uses this tablet").fill(name);
  await page.getByRole("button", { name: "Link the library" }).click();
  await expect(page.getByText("Test hub: linked, lead")).toBeVisible();
}

/** Brings a revision in from a file, and keeps it in the library. */
async function keep(
  { page }: Tablet,
  { text, revision, why }: { readonly text: string; readonly revision: string; readonly why: string },
): Promise<void> {
  await page.goto("/");
  await chooseFile(page, { name: `short-${revision}.procedure.json`, text });
  await openLibrary(page);
  await page
    .getByLabel("Which one on this device’s shelf")
    .selectOption({ label: `${(JSON.parse(text) as { title: string }).title}, revision ${revision}` });
  await page.getByLabel("Who keeps it").fill("Ada");
  await page.getByLabel("Why").fill(why);
  await page.getByRole("button", { name: "Keep it in the library" }).click();
}

test("[WRT7] [CHG5] two planners go on from one revision, one of them without a link: both are told, and bring it together", async ({
  browser,
  viewport,
}) => {
  test.slow();
  const ada = await newTablet(browser, hub, { viewport, hasTouch: true });
  const ben = await newTablet(browser, hub, { viewport, hasTouch: true });

  await test.step("Ada keeps a revision before she is linked, and it goes to the hub when she is", async () => {
    await openLibrary(ada.page);
    await keep(ada, { text: B, revision: "B", why: "The first." });
    await expect(ada.page.getByText("revision B by", { exact: false }).first()).toBeVisible();
    await link(ada.page, "Ada");
  });

  await test.step("Ben finds it, and takes it to his device", async () => {
    await openLibrary(ben.page);
    await link(ben.page, "Ben");
    await ben.page.getByRole("button", { name: /^Take revision B by .* to this device$/ }).click();
    await expect(ben.page.getByRole("button", { name: /^Take revision B/ })).toBeHidden();
  });

  await test.step("both go on from it, Ben offline", async () => {
    await ben.page.goto("/");
    await chooseFile(ben.page, {
      name: "short-C.procedure.json",
      text: withSummary("C", "Written by Ben."),
    });
    await openLibrary(ben.page);
    await ben.context.setOffline(true);
    await expect(ben.page.getByRole("checkbox", { name: /^revision B/ })).toBeChecked();
    await ben.page.getByLabel("Who keeps it").fill("Ben");
    await ben.page.getByLabel("Why").fill("A summary.");
    await ben.page.getByRole("button", { name: "Keep it in the library" }).click();
    await expect(ben.page.getByText("One revision kept here has not been sent yet.")).toBeVisible();
    await keep(ada, { text: withTitle("C", "Short trial, once more"), revision: "C", why: "A title." });
    await expect(ada.page.getByText("revision C by Ada is in the library.")).toBeVisible();
    await ben.context.setOffline(false);
  });

  await test.step("each is told, and nothing is lost", async () => {
    for (const { page } of [ada, ben]) {
      await expect(
        page.getByText(/revision C by \w+ and revision C by \w+ both went on from revision B/),
      ).toBeVisible({
        timeout: 60_000,
      });
      expect(await violations(page, ".library")).toEqual([]);
    }
  });

  await test.step("Ada brings them together, and keeps what comes of it as made from both", async () => {
    const { page } = ada;
    await page.getByRole("button", { name: "Bring them together" }).click();
    await expect(page).toHaveURL(/\/compare\?.*base=/);
    await page.getByLabel("Who saves it").fill("Ada");
    await page.getByLabel("Why").fill("Both.");
    await page.getByRole("button", { name: /^Save as revision/ }).click();
    await expect(page.getByText(/^Revision D/)).toBeVisible();
    await openLibrary(page);
    await page
      .getByLabel("Which one on this device’s shelf")
      .selectOption({ label: "Short trial, once more, revision D" });
    await expect(page.getByRole("button", { name: "Keep it in the library" })).toBeDisabled();
    for (const name of ["Ada", "Ben"]) {
      await page.getByRole("checkbox", { name: new RegExp(`^revision C by ${name}`) }).check();
    }
    await page.getByRole("button", { name: "Keep it in the library" }).click();
    for (const tablet of [ada, ben]) {
      await expect(tablet.page.getByText("revision D by Ada", { exact: true })).toBeVisible();
      await expect(tablet.page.getByText(/both went on from/)).toBeHidden();
    }
  });

  await ada.context.close();
  await ben.context.close();
});
