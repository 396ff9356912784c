import { readFile } from "node:fs/promises";
import { expect, test } from "@playwright/test";
import { violations } from "./axe-violations.ts";
import { chooseFile } from "./imported-walk.ts";
import { shortFile } from "./short-walk.ts";

test("a plan is briefed on two windows: played, gone through by step, asked about, and closed", async ({
  page,
  context,
}) => {
  await page.goto("/plan/example-osier-ranging-head");
  await page.getByRole("button", { name: "Briefing" }).click();
  const caption = page.locator(".brief-caption");
  await expect(caption).toContainText("Switch both suits to battery power");
  const [audience] = await Promise.all([
    context.waitForEvent("page"),
    page.getByRole("button", { name: "Window for the audience" }).click(),
  ]);
  await expect(page.getByRole("complementary", { name: "For the presenter" })).toContainText("Alerts ahead");
  const shown = audience.locator(".brief-clock");
  await expect(shown).toHaveText("0:00:00");
  await page.getByRole("button", { name: "Next task" }).click();
  await page.keyboard.press("ArrowRight");
  await expect(page.getByLabel("Time in the walk")).not.toHaveAttribute("aria-valuetext", "PET 0:00:00");
  const stood = (await page.locator(".brief .brief-clock").textContent()) ?? "";
  await expect(shown).toHaveText(stood);
  await page.getByRole("button", { name: "Quiz" }).click();
  await page.getByLabel("Speed").selectOption("120");
  await page.getByRole("button", { name: "Play" }).click();
  await expect(page.getByRole("button", { name: "Show the answer" })).toBeVisible();
  // The audience is asked as well: its map shows nobody until the answer is shown.
  await expect(audience.locator(".layer-people")).toHaveCount(0);
  await page.getByRole("button", { name: "Show the answer" }).click();
  await expect(audience.locator(".layer-people")).toHaveCount(1);
  expect(await violations(page, ".brief")).toEqual([]);
  expect(await violations(audience, ".brief-audience")).toEqual([]);
  const status = audience.getByRole("status");
  await page.goBack();
  await expect(status).toHaveText("The presenter’s window was closed. This stands where it was.");
  await page.goForward();
  await expect(status).toHaveText("");
  // A busy browser may end a window before its last word is out: then its silence is told of.
  await page.close();
  await expect(status).toHaveText(
    /^(The presenter’s window was closed|Nothing is heard from the presenter’s window)/,
  );
});

test("the storyboard is landscape on A4 and letter, each frame has one page, with its pictures and all its alerts, and nothing is wider than the paper", async ({
  page,
}) => {
  await page.goto("/storyboard/example-osier-ranging-head");
  const frames = page.locator(".storyboard-frame");
  await expect(frames.first()).toBeVisible();
  const count = await frames.count();
  expect(count).toBeGreaterThanOrEqual(12);
  await page.setViewportSize({ width: 980, height: 700 });
  await page.emulateMedia({ media: "print" });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(980);
  for (const format of ["A4", "Letter"]) {
    const pdf = (await page.pdf({ format, landscape: true })).toString("latin1");
    expect(/MediaBox\s*\[0 0 (\d+)/.exec(pdf)?.[1], format).toBe(format === "A4" ? "842" : "792");
    const pages = (pdf.match(/\/Type\s*\/Page\b/g) ?? []).length;
    expect(pages, format).toBe(count);
  }
});

test("[BRF6] a plan becomes a video that plays, and one that is cancelled leaves nothing", async ({
  page,
  context,
}) => {
  test.slow();
  await page.goto("/");
  await chooseFile(page, { name: "short.procedure.json", text: JSON.stringify(shortFile) });
  await page.goto(`/brief/plan/${shortFile.id}`);
  await page.getByRole("button", { name: "Video", exact: true }).click();
  await page.getByLabel("Speed and length of the video").selectOption("10");
  await page.getByRole("button", { name: "Make the video" }).click();
  await page.getByRole("button", { name: "Cancel the video" }).click();
  await expect(page.getByText("The video was cancelled, and nothing was saved.")).toBeVisible();
  await page.getByLabel("Speed and length of the video").selectOption("120");
  const [saved] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Make the video" }).click(),
  ]);
  expect(saved.suggestedFilename()).toMatch(/\.briefing\.(mp4|webm)$/);
  await expect(page.getByText(/^Saved as .*briefing/)).toBeVisible();
  const bytes = (await readFile(await saved.path())).toString("base64");
  // The app's own policy lets no video be shown.
  const elsewhere = await context.newPage();
  const video = await elsewhere.evaluate(async (data) => {
    const blob = new Blob([Uint8Array.from(atob(data), (letter) => letter.charCodeAt(0))]);
    const shown = document.createElement("video");
    shown.muted = true;
    shown.src = URL.createObjectURL(blob);
    await new Promise((resolve, reject) => {
      shown.onloadeddata = resolve;
      shown.onerror = () => reject(new Error(shown.error?.message));
    });
    return { length: shown.duration, width: shown.videoWidth, height: shown.videoHeight };
  }, bytes);
  expect(video).toMatchObject({ width: 1280, height: 720 });
  expect(video.length).toBeGreaterThan(2);
});
