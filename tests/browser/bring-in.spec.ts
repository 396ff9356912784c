import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, type Page, test } from "@playwright/test";
import { chooseFile, openImported } from "./imported-walk.ts";
import { shortFile, shortWalk } from "./short-walk.ts";
import { doneCount, tapDone } from "./walk-by-tapping.ts";

const procedureText = JSON.stringify(shortFile, null, 2);

/** What a file saved by the app holds. */
async function saved(page: Page, press: () => Promise<void>): Promise<{ name: string; text: string }> {
  const [download] = await Promise.all([page.waitForEvent("download"), press()]);
  return { name: download.suggestedFilename(), text: readFileSync(await download.path(), "utf8") };
}

/** The state the command line folds a log into. */
function stateOf(text: string): unknown {
  const folder = mkdtempSync(join(tmpdir(), "tetherline-state-"));
  try {
    const file = join(folder, "a.walk.jsonl");
    writeFileSync(file, text);
    // It ends with 1 where an entry had no effect, and says so beside the state.
    const { stdout } = spawnSync("node", ["src/tetherline.mjs", "state", file, "--json"], {
      encoding: "utf8",
    });
    return JSON.parse(stdout);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Gives the page a transfer, by dropping or pasting, as a browser would. */
async function give(page: Page, kind: "drop" | "paste", text: string, name: string | null): Promise<void> {
  await page.evaluate(
    ([type, words, file]) => {
      const transfer = new DataTransfer();
      if (file === null) transfer.setData("text/plain", words ?? "");
      else transfer.items.add(new File([words ?? ""], file ?? ""));
      const target = document.querySelector(".shelf") ?? document.body;
      target.dispatchEvent(
        type === "drop"
          ? new DragEvent("drop", { dataTransfer: transfer, bubbles: true, cancelable: true })
          : new ClipboardEvent("paste", { clipboardData: transfer, bubbles: true }),
      );
    },
    [kind, text, name] as const,
  );
}

test("a procedure is brought in by file, by dropping and by pasting, and told apart from what is none", async ({
  page,
}) => {
  await page.goto("/");
  await expect(page.getByRole("button", { name: /^Follow / }).first()).toBeVisible();
  expect(await chooseFile(page, { name: "trial.json", text: procedureText })).toContain(
    "“Short trial” is on the shelf.",
  );
  await give(page, "drop", procedureText, "again.json");
  await expect(page.locator(".shelf-message")).toContainText("“Short trial” was on the shelf already.");
  await give(
    page,
    "paste",
    procedureText.replace("Short trial", "Pasted trial").replace("short-trial", "pasted-trial"),
    null,
  );
  await expect(page.locator(".shelf-message")).toContainText("“Pasted trial” is on the shelf.");
  await expect(page.getByRole("button", { name: "Follow Pasted trial" })).toBeVisible();

  expect(await chooseFile(page, { name: "broken.json", text: procedureText.slice(0, 200) })).toMatch(
    /cannot be used as a procedure.*Line \d+/s,
  );
  const unknownKey = procedureText.replace(
    '"title": "Short trial"',
    '"title": "Short trial", "colour": "blue"',
  );
  expect(await chooseFile(page, { name: "key.json", text: unknownKey })).toContain("colour");
  expect(await chooseFile(page, { name: "prose.txt", text: "Dear all," })).toContain(
    "neither a procedure, nor the log of a walk, nor a backup",
  );
  await page.getByRole("button", { name: "Take Pasted trial off the shelf" }).click();
  await expect(page.getByRole("button", { name: "Follow Pasted trial" })).toHaveCount(0);
});

test("[LOG1] a log is brought in twice without harm, and without its torn last line", async ({ page }) => {
  const walk = shortWalk(9).done(["ev1-check", 2], ["ev2-check", 3]);
  await page.goto("/");
  const torn = walk.text.trimEnd().slice(0, -25);
  const told = await chooseFile(page, { name: "torn.walk.jsonl", text: torn });
  expect(told).toContain("3 entries taken in");
  expect(told).toMatch(/Line 4 was left out/);
  expect(await chooseFile(page, { name: "whole.walk.jsonl", text: walk.text })).toContain(
    "1 entry taken in, 3 known already",
  );
  await page.goto(`/follow/${walk.walk}`);
  await expect.poll(() => doneCount(page)).toBe(2);
});

test("[REV2] a walk exported here and brought in elsewhere folds into the same state", async ({
  page,
  browser,
  baseURL,
}) => {
  await openImported(page, shortWalk(9).done(["ev1-check", 2], ["nowhere", 2]));
  await tapDone(page.locator('[data-row="ev2-check"] .done-button'));
  await expect.poll(() => doneCount(page)).toBe(2);
  await page.getByRole("button", { name: "Undo" }).click();
  await expect.poll(() => doneCount(page)).toBe(1);
  await tapDone(page.locator('[data-row="ev2-check"] .done-button'));
  await expect.poll(() => doneCount(page)).toBe(2);
  await page.getByRole("navigation", { name: "Walk" }).getByRole("button", { name: "More" }).click();
  const here = await saved(page, () => page.getByRole("button", { name: "Export the log" }).click());
  expect(here.name).toBe("short-walk.walk.jsonl");

  const context = await browser.newContext(baseURL ? { baseURL } : {});
  try {
    const other = await context.newPage();
    await openImported(other, { walk: "short-walk", text: here.text });
    await expect.poll(() => doneCount(other)).toBe(2);
    await other.getByRole("navigation", { name: "Walk" }).getByRole("button", { name: "More" }).click();
    const there = await saved(other, () => other.getByRole("button", { name: "Export the log" }).click());
    expect(there.text).toBe(here.text);
    expect(stateOf(there.text)).toEqual(stateOf(here.text));
  } finally {
    await context.close();
  }
});

test("a full backup brings procedures and walks to another device", async ({ page, browser, baseURL }) => {
  await openImported(page, shortWalk(9).done(["ev1-check", 2]));
  await page.goto("/");
  await chooseFile(page, { name: "trial.json", text: procedureText });
  const backup = await saved(page, () => page.getByRole("button", { name: "Back up everything" }).click());
  const context = await browser.newContext(baseURL ? { baseURL } : {});
  try {
    const other = await context.newPage();
    await other.goto("/");
    expect(await chooseFile(other, backup)).toMatch(/1 procedure and \d+ entries taken in/);
    await expect(other.getByRole("button", { name: "Follow Short trial" })).toBeVisible();
    await expect(other.getByRole("button", { name: "Go on" })).toBeVisible();
  } finally {
    await context.close();
  }
});

test("without a store the walk goes on in memory, says so, and can be exported", async ({ page }) => {
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException("denied", "SecurityError");
    };
  });
  await page.goto("/");
  await expect(page.getByText("This browser does not let the app store anything")).toBeVisible();
  await page
    .getByRole("button", { name: /^Follow / })
    .first()
    .click();
  await page.getByRole("button", { name: "Start the clock" }).click();
  await tapDone(page.locator(".done-button").first());
  await expect.poll(() => doneCount(page)).toBe(1);
  await expect(page.locator(".follow-bar")).toContainText("In memory only");
  await page.getByRole("navigation", { name: "Walk" }).getByRole("button", { name: "More" }).click();
  const { text } = await saved(page, () => page.getByRole("button", { name: "Export the log" }).click());
  // What the program enters of alerts is beside what was tapped.
  const tapped = text
    .trimEnd()
    .split("\n")
    .filter((line) => !line.includes("tetherline.alert.raised"));
  expect(tapped).toHaveLength(3);
});
