import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium, type Page } from "@playwright/test";
import type { ProcedureFile } from "../../src/core/procedure/index.ts";
import { chooseFile } from "../browser/imported-walk.ts";
import { chromiumArguments } from "../machine/browser-launch.ts";
import { obtainChromium } from "../machine/find-chromium.ts";
import { serveBuilt } from "../machine/serve-built.ts";
import { spreadOf, spreadWords } from "./spread.ts";

/**
 * Frames of the map of 40 places and 300 steps while it is moved, enlarged, scrubbed and played, in Chromium slowed down four times:
 * the time from each frame to the next, as a distribution, and what scripts, styles and layout take of it. At 60 frames a second
 * it is 16.7 ms.
 */
const PLACES = 40;
const STEPS = 300;
const SECONDS = 4;
const SLOWED = 4;

/** Places in rows of eight, joined to their neighbours, and two people who go from one to the next. */
function largeSite(): ProcedureFile {
  const id = (index: number) => `p${index}`;
  const places = Array.from({ length: PLACES }, (_, index) => ({
    id: id(index),
    label: `Handrail ${index + 1}, bay ${(index % 7) + 1}`,
    x: (index % 8) * 9,
    y: -Math.floor(index / 8) * 8,
    refuge: index === 0,
  }));
  const routes = places.flatMap(
    (_, index): NonNullable<ProcedureFile["routes"]> => [
      ...(index % 8 === 7
        ? []
        : [{ between: [id(index), id(index + 1)] as [string, string], length: 9, time: "PT40S" }]),
      ...(index + 8 >= PLACES
        ? []
        : [{ between: [id(index), id(index + 8)] as [string, string], length: 8, time: "PT40S" }]),
    ],
  );
  const steps = Array.from({ length: STEPS }, (_, index) => {
    const by = index % 2 === 0 ? "ev1" : "ev2";
    const at = id((Math.floor(index / 4) * 3 + (index % 2) * 5) % PLACES);
    return index % 4 < 2
      ? { id: `s${index}`, by: [by], do: `Go to ${at}`, to: at, time: "PT2M" }
      : { id: `s${index}`, by: [by], do: `Work on ${at}`, time: "PT3M" };
  });
  const outside = { station: "outside" as const, start: "p0", tether: { anchor: "p0", length: 90 } };
  return {
    format: "tetherline.procedure/2",
    id: "large-site",
    title: "Large site",
    crew: [
      { id: "ev1", call: "EV1", ...outside },
      { id: "ev2", call: "EV2", ...outside },
    ],
    places,
    routes,
    items: Array.from({ length: 60 }, (_, index) => ({
      id: `i${index}`,
      start: { place: id((index * 7) % PLACES) },
    })),
    tasks: [{ id: "all", title: "All", steps }],
  };
}

/** For some seconds the time from each frame to the next, in ms; where it is scrubbed, a minute of the plan passes in each. */
function frames(page: Page, slider: boolean): Promise<number[]> {
  return page.evaluate(
    ({ seconds, played }) =>
      new Promise<number[]>((resolve) => {
        const times: number[] = [];
        const input = document.querySelector<HTMLInputElement>(".map-at-moment input[type=range]");
        const set = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, "value")?.set;
        const begun = performance.now();
        let last = begun;
        const frame = (now: number) => {
          if (now > last && last !== begun) times.push(now - last);
          last = now;
          if (played && input) {
            // React hears of a value only when it is set past its own account of it.
            set?.call(input, String((Number(input.value) + 60_000) % Number(input.max)));
            input.dispatchEvent(new Event("input", { bubbles: true }));
          }
          if (now - begun < seconds * 1000) requestAnimationFrame(frame);
          else resolve(times);
        };
        requestAnimationFrame(frame);
      }),
    { seconds: SECONDS, played: slider },
  );
}

/** Moves the mouse, or turns its wheel, until the time is over. */
async function handle(
  page: Page,
  what: "panned" | "zoomed",
  middle: { x: number; y: number },
): Promise<void> {
  await page.mouse.move(middle.x, middle.y);
  if (what === "panned") await page.mouse.down();
  const until = Date.now() + SECONDS * 1000;
  for (let turn = 0; Date.now() < until; turn += 1) {
    if (what === "zoomed") await page.mouse.wheel(0, turn % 40 < 20 ? -12 : 12);
    else await page.mouse.move(middle.x + 120 * Math.sin(turn / 12), middle.y + 60 * Math.cos(turn / 9));
    await page.waitForTimeout(8);
  }
  if (what === "panned") await page.mouse.up();
}

const folder = mkdtempSync(join(tmpdir(), "tetherline-bench-"));
const served = await serveBuilt(join(folder, "app"));
const browser = await chromium.launch({ executablePath: obtainChromium(), args: [...chromiumArguments] });
try {
  const context = await browser.newContext({ viewport: { width: 1180, height: 820 } });
  const page = await context.newPage();
  // The compiler names functions by a helper that the page has not got.
  await page.addInitScript("globalThis.__name = (named) => named");
  await page.goto(served.address);
  await chooseFile(page, { name: "large-site.procedure.json", text: JSON.stringify(largeSite()) });
  await page.getByRole("button", { name: "Read Large site" }).click();
  await page.waitForURL(/\/read\//);
  await page.goto(page.url().replace("/read/", "/plan/"));
  await page.locator(".map-at-moment summary").click();
  await page.locator(".map-stage svg").waitFor();
  const session = await context.newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWED });
  const map = page.locator(".map-room");
  await page.getByRole("button", { name: "Larger" }).click();
  await map.scrollIntoViewIfNeeded();
  await map.focus();
  const room = await map.boundingBox();
  if (!room) throw new Error("there is no map");
  const middle = { x: room.x + room.width / 2, y: room.y + room.height / 2 };
  console.log(`${PLACES} places, ${STEPS} steps, processor slowed ${SLOWED}×; from frame to frame:`);
  // By the thread's own clock, so that what else runs on the machine counts for nothing.
  await session.send("Performance.enable", { timeDomain: "threadTicks" });
  /** What the page has worked so far, in ms: scripts, styles and layout. */
  const worked = async (): Promise<number> => {
    const { metrics } = await session.send("Performance.getMetrics");
    const parts = metrics.filter(({ name }) =>
      ["ScriptDuration", "RecalcStyleDuration", "LayoutDuration"].includes(name),
    );
    return parts.reduce((sum, { value }) => sum + 1000 * value, 0);
  };
  const measure = async (what: string, isScrubbed: boolean, during: () => Promise<void>) => {
    const before = await worked();
    const measured = frames(page, isScrubbed);
    await during();
    const times = await measured;
    const each = ((await worked()) - before) / Math.max(1, times.length);
    const inTime = times.filter((time) => time < 17.5).length / Math.max(1, times.length);
    console.log(
      `${what}: ${spreadWords(spreadOf(times))}; ${Math.floor(100 * inTime)} % of ${times.length} in time; ${each.toFixed(1)} ms of work each`,
    );
  };
  await measure("panned", false, () => handle(page, "panned", middle));
  await measure("zoomed", false, () => handle(page, "zoomed", middle));
  await measure("scrubbed", true, async () => {});
  await page.goto(page.url().replace("/plan/", "/brief/plan/"));
  await page.getByRole("button", { name: "Play", exact: true }).click();
  await measure("played", false, async () => {});
} finally {
  await browser.close();
  await served.stop();
  rmSync(folder, { recursive: true, force: true });
}
