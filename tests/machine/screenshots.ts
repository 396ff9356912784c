import { mkdirSync, mkdtempSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type BrowserContext, chromium, type Page } from "@playwright/test";
import { readLines, stamp, writeLines } from "../../src/core/log/index.ts";
import { type Duration, type Instant, inSeconds, later } from "../../src/core/units/index.ts";
import { foldLog, walkStateAt, watchStates } from "../../src/core/walk/index.ts";
import { openImported } from "../browser/imported-walk.ts";
import { bundledText, playedLog, procedureFile } from "../browser/written-walk.ts";
import { chromiumArguments } from "./browser-launch.ts";
import { obtainChromium } from "./find-chromium.ts";
import { palettePng } from "./palette-png.ts";
import { serveBuilt } from "./serve-built.ts";

/** Takes the pictures of the app that the readme shows, from the built app and the walk that comes with it. */
const FOLDER = "tests/screenshots";

/** When the walk in the pictures starts, and how it is played: EV1 is at a connector, and the others wait for it. */
const START = Date.UTC(2031, 3, 2, 9) as Instant;
const SEED = 39;
const SEEN_AT = later(START, (134 * 60_000) as Duration);

const file = procedureFile(bundledText("osier-ranging-head"));
const midway = watched(playedLog(file, { seed: SEED, start: START, until: SEEN_AT }));
const whole = playedLog(file, { seed: SEED, start: START, until: null });

/** A log with every watch that is due noted a few minutes before the picture. */
function watched({ walk, text }: ReturnType<typeof playedLog>): ReturnType<typeof playedLog> {
  const folded = foldLog(readLines(text).entries);
  const at = later(SEEN_AT, (-6 * 60_000) as Duration);
  if (!folded.ledger) throw new Error("the walk of the pictures was not opened");
  let seen = folded.entries.at(-1)?.hlc ?? null;
  const notes = watchStates(walkStateAt(folded.ledger, at))
    .filter(({ isOpen }) => isOpen)
    .map(({ watch, due }, made) => {
      const data = { watch: watch.id, due: inSeconds(due ?? 0) };
      const draft = { name: "watch.kept", data, at, actor: "iv" } as const;
      const entry = stamp(draft, walk, { source: "/devices/iv-tablet", made, seen }, at);
      seen = entry.hlc;
      return entry;
    });
  return { walk, text: text + writeLines(notes) };
}

interface Picture {
  readonly name: string;
  readonly theme: "day" | "night" | "dim";
  readonly width: number;
  readonly height: number;
  /** Brings what is to be seen onto the page. */
  readonly show: (page: Page) => Promise<void>;
}

const follow = async (page: Page) => {
  await openImported(page, midway);
  await page.locator('[data-stage="working"]').first().waitFor();
  // The odds are sampled a moment after the walk was opened.
  await page.getByText(/\d+ %/).first().waitFor({ state: "attached" });
};

const pictures: readonly Picture[] = [
  { name: "follow-day", theme: "day", width: 1180, height: 820, show: follow },
  { name: "follow-night-portrait", theme: "night", width: 820, height: 1180, show: follow },
  { name: "follow-phone-dim", theme: "dim", width: 390, height: 844, show: follow },
  {
    name: "review-day",
    theme: "day",
    width: 1180,
    height: 820,
    show: async (page) => {
      await openImported(page, whole, "review");
      await page.locator(".review").waitFor();
    },
  },
  {
    name: "timeline-day",
    theme: "day",
    width: 1180,
    height: 820,
    show: async (page) => {
      await openImported(page, midway, "timeline");
      await page.locator(".timeline-bar").waitFor();
    },
  },
  {
    name: "map-night",
    theme: "night",
    width: 1180,
    height: 820,
    show: async (page) => {
      await follow(page);
      await page.getByRole("button", { name: "Map", exact: true }).click();
      await page.locator(".map-stage svg").waitFor();
    },
  },
  {
    name: "briefing-day",
    theme: "day",
    width: 1180,
    height: 820,
    show: async (page) => {
      await page.goto("/");
      await page
        .getByRole("button", { name: /^Follow / })
        .first()
        .waitFor();
      await page.goto("/brief/plan/example-osier-ranging-head");
      await page.locator(".brief-map").waitFor();
      // To the exchange of the head, and on to the step at which both pull it off.
      for (const key of ["PageDown", "PageDown", "PageDown", ...Array<string>(9).fill("ArrowRight")])
        await page.keyboard.press(key);
    },
  },
  {
    name: "first-walk-day",
    theme: "day",
    width: 1180,
    height: 820,
    show: async (page) => {
      await page.goto("/");
      await page.getByRole("button", { name: "Open the practice walk" }).click();
      await page.getByRole("button", { name: "Start the rehearsal clock" }).click();
      for (const step of ["iv-door", "ev1-mast"]) {
        const done = page.locator(`[data-row="${step}"] .done-button`);
        await done.waitFor();
        // A button that has only just come takes no tap.
        await page.waitForTimeout(1500);
        await done.click();
      }
    },
  },
  {
    name: "shelf-day",
    theme: "day",
    width: 1180,
    height: 820,
    show: async (page) => {
      await openImported(page, midway);
      await page.goto("/");
      await page
        .getByRole("button", { name: /^Follow / })
        .first()
        .waitFor();
    },
  },
];

async function takePicture(context: BrowserContext, { name, theme, show }: Picture): Promise<void> {
  // The clock shows the moment of the picture and runs on from there.
  await context.addInitScript(
    ([at, colours]) => {
      const shift = at - Date.now();
      const now = Date.now.bind(Date);
      Date.now = () => now() + shift;
      localStorage.setItem("tetherline.theme", colours);
    },
    [SEEN_AT, theme] as const,
  );
  const page = await context.newPage();
  await show(page);
  await page.waitForTimeout(1500);
  const picture = join(FOLDER, `${name}.png`);
  writeFileSync(picture, await palettePng(page, await page.screenshot({ animations: "disabled" })));
  console.log(`${picture}: ${Math.round(statSync(picture).size / 1000)} kB`);
}

mkdirSync(FOLDER, { recursive: true });
const folder = mkdtempSync(join(tmpdir(), "tetherline-pictures-"));
const served = await serveBuilt(join(folder, "app"));
const browser = await chromium.launch({ executablePath: obtainChromium(), args: [...chromiumArguments] });
try {
  for (const picture of pictures) {
    const { width, height } = picture;
    const context = await browser.newContext({
      baseURL: served.address,
      viewport: { width, height },
      hasTouch: true,
      isMobile: width < 640,
    });
    await takePicture(context, picture);
    await context.close();
  }
} finally {
  await browser.close();
  await served.stop();
  rmSync(folder, { recursive: true, force: true });
}
