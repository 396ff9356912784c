import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { expect, type Page, test } from "@playwright/test";

let folder = "";
let html = "";

// Tests of one file may run one by one, so that this comes before each of them.
test.beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "tetherline-briefing-"));
  html = join(folder, "briefing.html");
  const path = "procedures/osier-ranging-head.procedure.json";
  execFileSync("node", ["src/tetherline.mjs", "brief", path, "--html", html], { stdio: "ignore" });
});
test.afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Opens the file; what it asks for besides itself is collected, and so are mistakes of its script. */
async function open(page: Page): Promise<{ readonly asked: string[]; readonly mistakes: string[] }> {
  const [asked, mistakes]: [string[], string[]] = [[], []];
  const own = pathToFileURL(html).href;
  page.on("request", (request) => request.url() !== own && asked.push(request.url()));
  page.on("pageerror", ({ message }) => mistakes.push(message));
  page.on("console", (said) => said.type() === "error" && mistakes.push(said.text()));
  await page.goto(own);
  return { asked, mistakes };
}

test("a briefing's file plays by buttons and keys, and asks for nothing", async ({ page }) => {
  const { asked, mistakes } = await open(page);
  const clock = page.locator("#clock");
  const caption = page.locator("#caption");
  await expect(caption).toContainText("Switch both suits to battery power");
  await page.getByRole("button", { name: "Next step" }).click();
  await expect(clock).not.toHaveText("0:00:00");
  await page.getByRole("button", { name: "Next task" }).click();
  await expect(page.locator('#chapters [aria-current="true"]')).toHaveText("2 Leave the airlock");
  const before = await page.locator("#map").innerHTML();
  await page.keyboard.press("PageDown");
  await expect(page.locator('#chapters [aria-current="true"]')).toHaveText("3 Move to the approach mast");
  expect(await page.locator("#map").innerHTML()).not.toBe(before);
  await page.getByLabel("Speed").selectOption("120");
  await expect(caption).toContainText("3 Move to the approach mast: EV1");
  const stood = await clock.textContent();
  await page.getByRole("button", { name: "Play" }).click();
  await expect(clock).not.toHaveText(stood ?? "");
  await page.getByRole("button", { name: "Pause" }).click();
  await expect(page.getByLabel("Time in the walk")).toHaveAttribute("aria-valuetext", /^PET \d:\d\d:\d\d$/);
  // What its policy forbids, a script in it cannot do either.
  const refused = await page.evaluate(async () => {
    try {
      await fetch("http://localhost:1/");
      return false;
    } catch {
      return true;
    }
  });
  expect(refused).toBe(true);
  expect(asked.filter((url) => !url.startsWith("http://localhost:1/"))).toEqual([]);
  expect(mistakes.filter((text) => !/localhost:1/.test(text))).toEqual([]);
});

test.describe("without a script", () => {
  test.use({ javaScriptEnabled: false });

  test("a briefing's file is its storyboard, and asks for nothing", async ({ page }) => {
    const { asked } = await open(page);
    await expect(page.locator("#player")).toBeHidden();
    expect(await page.locator("article.frame").count()).toBeGreaterThanOrEqual(12);
    await expect(page.locator("article.frame").first()).toContainText("Checks after depress");
    expect(asked).toEqual([]);
  });
});
