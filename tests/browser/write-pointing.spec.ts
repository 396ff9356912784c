import { type CDPSession, expect, type Locator, type Page, test } from "@playwright/test";
import { violations } from "./axe-violations.ts";

test.use({ actionTimeout: 15_000 });

interface Point {
  readonly x: number;
  readonly y: number;
}

const tool = (page: Page, name: string) => page.getByRole("button", { name, exact: true });
const steps = (page: Page) => page.locator(".write-step");
const actions = (page: Page) =>
  page.locator(".write-step .write-do").evaluateAll((all) => all.map((one) => one.textContent ?? ""));
const rowOf = (page: Page, id: string) => page.locator(`.write-table [data-row="${id}"]`);

/** The table of a procedure that comes with the app, once its plan is there. */
async function opened(page: Page, name = "osier-pool-rehearsal"): Promise<void> {
  await page.goto(`/write/example-${name}`);
  await expect(page.getByText("of what is written")).toBeVisible();
}

async function middleOf(locator: Locator): Promise<Point> {
  const box = await locator.boundingBox();
  if (!box) throw new Error("it is not on the page");
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** Just above the lower edge of a row. */
async function lowIn(row: Locator): Promise<Point> {
  const box = await row.boundingBox();
  if (!box) throw new Error("it is not on the page");
  return { x: box.x + box.width / 2, y: box.y + box.height - 4 };
}

/** A pointer that is put down, moved in some steps, and let go. */
interface Pointer {
  down(at: Point): Promise<void>;
  move(to: Point): Promise<void>;
  up(): Promise<void>;
}

const mouse = (page: Page): Pointer => ({
  down: async ({ x, y }) => {
    await page.mouse.move(x, y);
    await page.mouse.down();
  },
  move: ({ x, y }) => page.mouse.move(x, y, { steps: 6 }),
  up: () => page.mouse.up(),
});

function finger(session: CDPSession): Pointer {
  let at: Point = { x: 0, y: 0 };
  const send = (type: "touchStart" | "touchMove" | "touchEnd", points: readonly Point[]) =>
    session.send("Input.dispatchTouchEvent", { type, touchPoints: [...points] }).then(() => undefined);
  return {
    down: async (point) => {
      at = point;
      await send("touchStart", [at]);
    },
    move: async (to) => {
      const from = at;
      for (let part = 1; part <= 6; part += 1) {
        at = { x: from.x + ((to.x - from.x) * part) / 6, y: from.y + ((to.y - from.y) * part) / 6 };
        await send("touchMove", [at]);
      }
    },
    up: () => send("touchEnd", []),
  };
}

for (const kind of ["mouse", "finger"] as const)
  test(`[WRT2] a row is dragged by its handle with a ${kind}, as one gesture`, async ({ page, context }) => {
    await opened(page);
    const pointer = kind === "mouse" ? mouse(page) : finger(await context.newCDPSession(page));
    const before = await actions(page);
    const [first = "", second = "", third = ""] = before;
    const handle = steps(page).nth(2).locator("[data-handle]");
    await handle.scrollIntoViewIfNeeded();

    // A tap on it does nothing, and Escape leaves everything as it was.
    await pointer.down(await middleOf(handle));
    await pointer.up();
    await expect(tool(page, "Undo")).toBeDisabled();
    await pointer.down(await middleOf(handle));
    await pointer.move(await lowIn(steps(page).nth(0)));
    await expect(page.locator(".write-drop")).toHaveText("Behind 1.1");
    await page.keyboard.press("Escape");
    await expect(page.locator(".write-drop")).toHaveCount(0);
    await pointer.up();
    expect(await actions(page)).toEqual(before);
    await expect(tool(page, "Undo")).toBeDisabled();

    await pointer.down(await middleOf(handle));
    await pointer.move(await lowIn(steps(page).nth(0)));
    await pointer.up();
    await expect.poll(async () => (await actions(page)).slice(0, 3)).toEqual([first, third, second]);
    await expect(steps(page).nth(1)).toHaveAttribute("aria-selected", "true");
    await tool(page, "Undo").click();
    await expect.poll(() => actions(page)).toEqual(before);
    await expect(tool(page, "Undo")).toBeDisabled();
    await tool(page, "Redo").click();
    await expect.poll(async () => (await actions(page)).slice(0, 3)).toEqual([first, third, second]);
  });

test("[WRT1] [WRT2] the page is scrolled under a row that is dragged, and undo brings scroll and selection back", async ({
  page,
}) => {
  await opened(page);
  const scrolled = () =>
    page
      .locator("ion-content:visible")
      .evaluate((content) => content.shadowRoot?.querySelector(".inner-scroll")?.scrollTop ?? -1);
  const row = steps(page).nth(1);
  await row.locator('[data-column="do"]').click();
  const before = await actions(page);
  await row.locator("[data-handle]").scrollIntoViewIfNeeded();
  const from = await scrolled();
  const pointer = mouse(page);
  await pointer.down(await middleOf(row.locator("[data-handle]")));
  await pointer.move({ x: 600, y: 815 });
  await expect.poll(scrolled).toBeGreaterThan(from + 600);
  await pointer.move({ x: 600, y: 500 });
  const still = await scrolled();
  await page.waitForTimeout(200);
  expect(await scrolled()).toBe(still);
  await pointer.up();
  await expect.poll(() => actions(page)).not.toEqual(before);
  await page.keyboard.press("Control+z");
  await expect.poll(() => actions(page)).toEqual(before);
  await expect.poll(async () => Math.abs((await scrolled()) - from)).toBeLessThan(2);
  await expect(row).toHaveAttribute("aria-selected", "true");
});

test("[WRT3] a step is linked by a tap on the timeline; what cannot be says why", async ({ page }) => {
  await opened(page);
  const ids = await steps(page).evaluateAll((all) => all.map((one) => one.getAttribute("data-row") ?? ""));
  await tool(page, "Timeline").click();
  const bars = page.locator(".write-timeline [data-bar]");
  await expect(bars.first()).toBeVisible();
  const lane = await bars.evaluateAll((all) =>
    all.map((one) => one.getAttribute("data-bar") ?? "").filter((key) => key.startsWith("0 ")),
  );
  const [first = "", , , later = ""] = lane.map((key) => key.slice(2));
  expect(ids).toContain(first);
  const tapBar = async (id: string) => {
    const { x, y } = await middleOf(page.locator(`[data-bar="0 ${id}"] rect`).first());
    await page.touchscreen.tap(x, y);
  };
  // Outside of Link it selects the step in the table.
  await tapBar(later);
  await tool(page, "Table").click();
  await expect(rowOf(page, later)).toHaveAttribute("aria-selected", "true");
  await expect(rowOf(page, later)).toBeInViewport();
  const after = rowOf(page, later).locator('[data-column="after"]');
  const had = await after.textContent();
  const number = await rowOf(page, first).locator(".hint").first().textContent();

  await tool(page, "Timeline").click();
  await tool(page, "Link").click();
  expect(await violations(page, "body")).toEqual([]);
  await page.getByLabel("Minutes that must pass in between").fill("2");
  await tapBar(first);
  await expect(page.getByRole("status").filter({ hasText: /comes after .* now\.$/ })).toBeVisible();
  await tool(page, "Table").click();
  await expect(after).toHaveText(new RegExp(`(^|, )${number} \\+ 2$`));
  await tool(page, "Undo").click();
  await expect(after).toHaveText(had ?? "");
  // The lag of one link is not that of the next.
  await tool(page, "Timeline").click();
  await tool(page, "Link").click();
  await tapBar(first);
  await tool(page, "Table").click();
  await expect(after).toHaveText(new RegExp(`(^|, )${number}$`));
  await tool(page, "Undo").click();
  await expect(after).toHaveText(had ?? "");
  await expect(tool(page, "Undo")).toBeDisabled();

  // The first step of the lane cannot wait for a later one, nor for itself.
  await tool(page, "Timeline").click();
  await tapBar(first);
  await tool(page, "Link").click();
  await tapBar(later);
  await expect(page.getByRole("alert").filter({ hasText: "they would wait for each other" })).toBeVisible();
  await tapBar(first);
  await expect(page.getByRole("alert").filter({ hasText: "A step cannot come after itself." })).toBeVisible();
  await expect(tool(page, "Undo")).toBeDisabled();
  await page.keyboard.press("Escape");
  await expect(tool(page, "Link")).toHaveAttribute("aria-pressed", "false");
});

test("[WRT3] strands that are tapped make a joint step and leave it again", async ({ page }) => {
  await opened(page);
  const alone = steps(page)
    .filter({ has: page.locator('[data-column="who"]', { hasText: /^EV1$/ }) })
    .first();
  const id = (await alone.getAttribute("data-row")) ?? "";
  const who = rowOf(page, id).locator('[data-column="who"]');
  await alone.locator('[data-column="do"]').click();
  await tool(page, "Joint step").click();
  const strands = page.getByRole("group", { name: /^Who does step/ });
  for (const strand of await strands.getByRole("button").all()) await expect(strand).toBeInViewport();
  const { x, y } = await middleOf(strands.getByRole("button", { name: /^Let EV2 take part/ }));
  await page.touchscreen.tap(x, y);
  await expect(who).toHaveText(/EV1.*EV2/);
  // Above its knot, which moved nothing else: another tap takes EV2 out again.
  await strands.getByRole("button", { name: /^Take EV2 out/ }).click();
  await expect(who).toHaveText("EV1");
  await strands.getByRole("button", { name: /^Take EV1 out/ }).click();
  await expect(page.getByRole("alert").filter({ hasText: "Somebody must do the step" })).toBeVisible();
  expect(await violations(page, "body")).toEqual([]);
  await tool(page, "Undo").click();
  await expect(who).toHaveText(/EV1.*EV2/);
  await tool(page, "Undo").click();
  await expect(tool(page, "Undo")).toBeDisabled();
});

test("[WRT5] ways and places are put on the map by taps, each undone as one gesture", async ({ page }) => {
  await opened(page);
  await tool(page, "Lists").click();
  await page.getByLabel("List", { exact: true }).selectOption("places");
  const map = page.getByRole("region", { name: "Places on the map" });
  await map.getByRole("button", { name: "Way", exact: true }).click();
  const marks = map.locator("svg.worksite .place");
  const tapPlace = async (place: number) => {
    await marks.nth(place).scrollIntoViewIfNeeded();
    const { x, y } = await middleOf(marks.nth(place));
    await page.touchscreen.tap(x, y);
  };
  // The fin and the mast, which no way joins.
  await tapPlace(5);
  await tapPlace(4);
  await expect(map.getByLabel("From", { exact: true })).toHaveValue("fin-root");
  await expect(map.getByLabel("To", { exact: true })).toHaveValue("mast-head");
  await expect(map.getByLabel("Length by the way, m")).toHaveValue(/^11\.\d$/);
  await expect(map.getByText(/is the pace of the slowest way of this procedure/)).toBeVisible();
  await map.getByRole("button", { name: /^Take \d/ }).click();
  expect(await violations(page, "body")).toEqual([]);
  await map.getByRole("button", { name: "Put the way in" }).click();
  await expect(map.getByRole("status")).toHaveText(/^The way is in/);
  const out = map.getByRole("button", { name: /^Take out the way: Fin .* – Mast head/ });
  await out.click();
  await expect(out).toHaveCount(0);
  await tool(page, "Undo").click();
  await expect(out).toHaveCount(1);
  await tool(page, "Undo").click();
  await expect(out).toHaveCount(0);
  await expect(tool(page, "Undo")).toBeDisabled();

  const count = await map
    .getByLabel("Place to move")
    .locator("option")
    .count()
    .catch(() => 0);
  await map.getByRole("button", { name: "New place", exact: true }).click();
  const drawing = await map.locator("svg.worksite").boundingBox();
  if (!drawing) throw new Error("there is no map");
  await page.touchscreen.tap(drawing.x + drawing.width * 0.12, drawing.y + drawing.height * 0.1);
  await expect(tool(page, "Undo")).toBeEnabled();
  await expect(map.getByLabel("Place to move").locator("option:checked")).toHaveText("Place");
  expect(await map.getByLabel("Place to move").locator("option").count()).toBeGreaterThan(count);
  await tool(page, "Undo").click();
  await expect(tool(page, "Undo")).toBeDisabled();
});
