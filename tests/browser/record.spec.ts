import { readFileSync } from "node:fs";
import { expect, type Page, test } from "@playwright/test";
import { readLines } from "../../src/core/log/index.ts";
import { readExtract, verifyExtract, verifyLog } from "../../src/core/seal/index.ts";
import { violations } from "./axe-violations.ts";
import { openImported } from "./imported-walk.ts";
import { linesOf, SEALED_WALK, sealedWalk, VEHICLE_KEY } from "./sealed-walk.ts";

const seal = (page: Page) => page.getByRole("region", { name: "Is the log as it was entered?" });
const device = (page: Page, name: string) => seal(page).getByRole("listitem").filter({ hasText: name });

/** Opens the review of a log that was brought in, and trusts the hub whose key is on the slip. */
async function examine(page: Page, text: string): Promise<void> {
  await openImported(page, { walk: SEALED_WALK, text }, "review");
  await seal(page).getByLabel("Key of a hub").fill(VEHICLE_KEY);
  await seal(page).getByRole("button", { name: "Trust this key" }).click();
  await expect(seal(page).getByText("This was a quick look")).toBeVisible();
}

const hear = (page: Page, code: string) =>
  seal(page).getByLabel("The code that the other site reads").fill(code);

test("[SEL6] [SEL7] three logs of one walk and a slip with a code: which one agrees, and who entered what", async ({
  browser,
}) => {
  const whole = sealedWalk();
  const slip = verifyLog(readLines(linesOf(whole)).entries, [])?.code ?? "";
  const changed = structuredClone(whole);
  const note = changed.find((wire) => wire["source"] === "/devices/mast");
  Object.assign(note ?? {}, { data: { text: "Mast, another note" } });
  const cut = whole.filter((wire) => !(wire["source"] === "/devices/ground" && wire["id"] === "0000000002"));

  const first = await browser.newPage();
  await examine(first, linesOf(whole));
  await expect(seal(first).getByText(/^Whole: the walk is closed/)).toBeVisible();
  await first.getByRole("button", { name: "The log is whole" }).click();
  await expect(seal(first).getByRole("heading", { level: 2 })).toBeFocused();
  await hear(first, slip.toLowerCase());
  await expect(seal(first).getByText(/^The same: both sites hold these 14 entries/)).toBeVisible();
  await expect(device(first, "Inside tablet, lead")).toContainText("3 entries");
  await expect(device(first, "Mast tablet, marker")).toContainText("3 entries");
  await expect(device(first, "Ground tablet, marker")).toContainText("3 entries");
  await expect(device(first, "Vehicle, hub")).toContainText("whole");

  const second = await browser.newPage();
  await examine(second, linesOf(cut));
  await expect(seal(second).getByText(/^Cut: entries are missing/)).toBeVisible();
  await expect(device(second, "Ground tablet, marker")).toContainText("Number 2: from this number on");
  await expect(device(second, "Mast tablet, marker")).not.toContainText("cut");
  await hear(second, slip);
  await expect(seal(second).getByText(/^Not the same/)).toBeVisible();

  const third = await browser.newPage();
  await examine(third, linesOf(changed));
  await expect(seal(third).getByText(/^Broken: /)).toBeVisible();
  await expect(device(third, "Mast tablet, marker")).toContainText(
    "Number 1: the seal does not fit the entry.",
  );
  await expect(seal(third).getByText(/^This does not prove that an entry is true/)).toBeVisible();
  await hear(third, slip);
  await expect(
    seal(third)
      .getByText(/^Group \d: here \w{3} \(.+\), there \w{3} \(.+\)$/)
      .first(),
  ).toBeVisible();
  for (const page of [first, second, third]) await page.close();
});

test("[SEL7] every seal is looked at, the exports say what came of it, and an extract is verified by itself", async ({
  page,
  browser,
}) => {
  await examine(page, linesOf(sealedWalk()));
  await seal(page).getByRole("button", { name: "Look at every seal" }).click();
  await expect(seal(page).getByText("Every seal was looked at.")).toBeVisible();
  const saved = async (press: () => Promise<void>) => {
    const [download] = await Promise.all([page.waitForEvent("download"), press()]);
    return readFileSync(await download.path(), "utf8");
  };
  const review = await saved(() => page.getByRole("button", { name: "Review (JSON)" }).click());
  expect(JSON.parse(review)).toMatchObject({
    record: { verified: true, verdict: "whole", quick: false, trusted: [VEHICLE_KEY] },
  });
  await seal(page).getByText("Extract for others").click();
  await seal(page).getByLabel("a note (6)").check();
  const text = await saved(() => seal(page).getByRole("button", { name: "Make the extract" }).click());
  const extract = readExtract(text)?.extract;
  expect(extract && verifyExtract(extract, [VEHICLE_KEY])).toMatchObject({ verdict: "whole" });
  expect(text).not.toContain("Enough.");

  // Whoever was given the file opens it from the shelf of another device, which has none of the walk.
  const other = await (await browser.newContext()).newPage();
  await other.goto("/");
  const choose = async (name: string, given: string) => {
    const [chooser] = await Promise.all([
      other.waitForEvent("filechooser"),
      other.getByRole("button", { name: "Choose files" }).click(),
    ]);
    await chooser.setFiles({ name, mimeType: "application/jsonl", buffer: Buffer.from(given) });
  };
  await choose("public.extract.jsonl", text);
  const read = other.getByRole("region", { name: "An extract of a log" });
  await expect(read.getByText(/^Partly vouched for: /)).toBeVisible();
  await expect(read.getByText("Mast, note 2")).toBeVisible();
  await read.getByLabel("Key of a hub").fill(VEHICLE_KEY);
  await read.getByRole("button", { name: "Trust this key" }).click();
  await expect(read.getByText(/^Whole: every entry in this extract/)).toBeVisible();
  for (const theme of ["day", "night", "dim"]) {
    await other.locator("html").evaluate((html, name) => {
      html.dataset["theme"] = name;
    }, theme);
    expect.soft(await violations(other, ".seal"), theme).toEqual([]);
  }
  await other.reload();
  await expect(read.getByText(/^Whole: /)).toBeVisible();
  await other.getByRole("button", { name: "Shelf" }).click();
  await expect(other.getByText("Start here")).toBeVisible();
  await choose("spoiled.extract.jsonl", text.replace("Mast, note 2", "Mast, note 9"));
  await expect(read.getByText(/^Broken: an entry was changed or put in/)).toBeVisible();
  await other.context().close();
});

test("[SEL6] the printed review has the verdict, the code with its words, root, and the key of the hub", async ({
  page,
}) => {
  await examine(page, linesOf(sealedWalk()));
  await page.goto(`/print-walk/${SEALED_WALK}`);
  await page.emulateMedia({ media: "print" });
  await expect(seal(page).getByText(/^Whole: /)).toBeVisible();
  await expect(seal(page).getByText(VEHICLE_KEY).first()).toBeVisible();
  await expect(seal(page).getByText("Root", { exact: true })).toBeVisible();
  await expect(seal(page).getByRole("img", { name: /^QR code/ })).toBeVisible();
  await expect(seal(page).getByLabel("Key of a hub")).toBeHidden();
  await expect(seal(page).getByText("Extract for others")).toBeHidden();
});

test("[SEL6] axe finds nothing on what is said of the log, nor on the voice code beside the link", async ({
  page,
}) => {
  await openImported(page, { walk: SEALED_WALK, text: linesOf(sealedWalk()) }, "review");
  await expect(seal(page).getByText("This was a quick look")).toBeVisible();
  await hear(page, "AAA-AAA-AAA-AAA");
  await seal(page).getByText("Extract for others").click();
  for (const theme of ["day", "night", "dim"]) {
    await page.locator("html").evaluate((html, name) => {
      html.dataset["theme"] = name;
    }, theme);
    expect.soft(await violations(page, ".seal"), theme).toEqual([]);
  }
  await page.goto(`/follow/${SEALED_WALK}`);
  await page.getByRole("button", { name: "More", exact: true }).click();
  await page.getByRole("button", { name: "Link and followers", exact: true }).click();
  await page.getByRole("button", { name: "Work out the voice code" }).click();
  await expect(page.getByLabel("The code that the other site reads")).toBeVisible();
  expect(await violations(page, ".side-panel")).toEqual([]);
});
