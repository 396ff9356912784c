import { mkdtempSync, rmSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { type Browser, type BrowserContext, chromium, type Page } from "@playwright/test";
import { type Duration, type Instant, later } from "../../src/core/units/index.ts";
import { bundledText, procedureFile, WrittenWalk } from "../browser/written-walk.ts";
import { chromiumArguments } from "../machine/browser-launch.ts";
import { obtainChromium } from "../machine/find-chromium.ts";
import { serveBuilt } from "../machine/serve-built.ts";
import { spreadOf, spreadWords } from "./spread.ts";

/**
 * How much the first load is, and how long the app takes to open on a processor slowed down four times: from a hub for the first time,
 * again without one, with a walk of 10,000 entries, and that walk by a tap on the shelf. Beside each stands a bare page of one line in the same run, so that a slow machine
 * is seen as such. Times are from the start of the navigation, or from the tap.
 */
const SLOWED = 4;
const TURNS = 3;
const ENTRIES = 10_000;
const GOALS = { largest: 1500, ready: 2000, offline: 1000, walk: 1500 } as const;

/** How long the running app is left alone before a walk is opened from its shelf, in ms. */
const AT_REST = 3000;

/** What is tapped on the first screen to follow a procedure. */
const SHELF = ".shelf-item .main-button";

/** A page of one line, which takes as long as a browser needs for any. */
async function serveBare() {
  const page = '<!doctype html><title>Bare</title><link rel="icon" href="data:,"><p>Bare</p>';
  const server = createServer((_, answer) => answer.setHeader("content-type", "text/html").end(page));
  await new Promise<void>((resolve) => server.listen(0, "localhost", resolve));
  const { port } = server.address() as AddressInfo;
  return { address: `http://localhost:${port}`, stop: () => server.close() };
}

/** A walk that has gone on for hours, with notes, readings and records. */
function longLog(): { readonly walk: string; readonly text: string } {
  const file = procedureFile(bundledText("osier-ranging-head"));
  const length = 20;
  const walk = new WrittenWalk(file, {
    start: later(Date.now() as Instant, (-length * 60_000) as Duration),
    walk: "long-walk",
  });
  const supplies = file.supplies ?? [];
  while (walk.count < ENTRIES) {
    const at = (walk.count / ENTRIES) * length;
    const supply = supplies[walk.count % supplies.length];
    if (walk.count % 2 === 0 || !supply) walk.enter("note.made", { text: `Note ${walk.count}` }, at);
    else walk.enter("supply.read", { crew: supply.crew, supply: supply.id, value: supply.full }, at);
  }
  return { walk: walk.walk, text: walk.text };
}

async function slowed(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  // The compiler names functions by a helper that the page has not got.
  await page.addInitScript("globalThis.__name = (named) => named");
  const session = await context.newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWED });
  return page;
}

/** Has a page note at which time by its own clock what is looked for can be tapped, from the next frame on. */
const noteReady = (sought: string): void => {
  const look = () => {
    const found = document.querySelector<HTMLElement>(sought);
    const box = found?.getBoundingClientRect();
    const isThere = box && box.width > 0 && found?.checkVisibility({ opacityProperty: true });
    if (!isThere) {
      requestAnimationFrame(look);
      return;
    }
    // A message posted from the frame is handled after the frame was painted.
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => Object.assign(window, { readyAt: performance.now() });
    port2.postMessage(null);
  };
  look();
};

/** When the page noted it. */
async function notedReady(page: Page): Promise<number> {
  await page.waitForFunction(() => "readyAt" in window, null, { timeout: 60_000 });
  return page.evaluate(() => (window as unknown as { readyAt: number }).readyAt);
}

/** Ms from the start of a navigation until what is looked for can be tapped, by the page's own clock. */
async function ready(page: Page, address: string, selector: string): Promise<number> {
  await page.addInitScript(noteReady, selector);
  await page.goto(address);
  return notedReady(page);
}

/** Ms from the tap that goes on with the only walk of the shelf until what is looked for can be tapped. */
async function readyFromShelf(page: Page, address: string, selector: string): Promise<number> {
  await page.goto(address);
  const goOn = page.getByRole("button", { name: "Go on", exact: true });
  await goOn.waitFor();
  await page.waitForTimeout(AT_REST);
  await page.evaluate(noteReady, selector);
  const tapped = await goOn.evaluate((button: HTMLElement) => {
    const at = performance.now();
    button.click();
    return at;
  });
  return (await notedReady(page)) - tapped;
}

/** Ms until the largest thing on the page was drawn. */
const largestOf = (page: Page): Promise<number> =>
  page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        new PerformanceObserver((list) => resolve(list.getEntries().at(-1)?.startTime ?? 0)).observe({
          type: "largest-contentful-paint",
          buffered: true,
        });
      }),
  );

async function firstLoad(browser: Browser, address: string): Promise<void> {
  const context = await browser.newContext({ serviceWorkers: "block" });
  const page = await context.newPage();
  const bodies: Promise<{ readonly kind: string; readonly body: Buffer }>[] = [];
  page.on("response", (answer) => {
    const kind = answer.request().resourceType();
    bodies.push(
      answer.body().then(
        (body) => ({ kind, body }),
        () => ({ kind, body: Buffer.alloc(0) }),
      ),
    );
  });
  await page.goto(address, { waitUntil: "networkidle" });
  const sizes = new Map<string, { count: number; bytes: number }>();
  for (const { kind, body } of await Promise.all(bodies)) {
    const size = sizes.get(kind) ?? { count: 0, bytes: 0 };
    // Faces are compressed already.
    size.bytes += kind === "font" ? body.length : gzipSync(body).length;
    size.count += 1;
    sizes.set(kind, size);
  }
  for (const [kind, { count, bytes }] of sizes)
    console.log(`first load, ${kind}: ${count}, ${(bytes / 1000).toFixed(1)} kB gzipped`);
  await context.close();
}

const bare = await serveBare();
const folder = mkdtempSync(join(tmpdir(), "tetherline-bench-"));
const served = await serveBuilt(join(folder, "app"));
const browser = await chromium.launch({ executablePath: obtainChromium(), args: [...chromiumArguments] });

/** Prints times beside those of the bare page, and whether they keep the goal. */
function tell(what: string, times: readonly number[], bareTimes: readonly number[], most: number): void {
  const [spread, least] = [spreadOf(times), spreadOf(bareTimes)];
  console.log(
    `${what}: ${spreadWords(spread)}; ${(spread.median / least.median).toFixed(1)} × a bare page (${least.median.toFixed(0)} ms); under ${most} ms: ${spread.median < most ? "yes" : "no"}`,
  );
}

try {
  await firstLoad(browser, served.address);
  const bareTimes: number[] = [];
  const largest: number[] = [];
  const first: number[] = [];
  const again: number[] = [];
  const opened: number[] = [];
  const tapped: number[] = [];
  const walked = await browser.newContext({ viewport: { width: 1180, height: 820 } });
  const { walk, text } = longLog();
  const filled = await walked.newPage();
  await filled.goto(served.address);
  const [chooser] = await Promise.all([
    filled.waitForEvent("filechooser"),
    filled.getByRole("button", { name: "Choose files" }).click(),
  ]);
  await chooser.setFiles({
    name: "long.walk.jsonl",
    mimeType: "application/jsonl",
    buffer: Buffer.from(text),
  });
  await filled.getByText(/entries taken in/).waitFor({ timeout: 120_000 });
  await filled.evaluate(() => navigator.serviceWorker.ready);
  await filled.close();
  for (let turn = 0; turn < TURNS; turn += 1) {
    const fresh = await browser.newContext({ viewport: { width: 1180, height: 820 } });
    bareTimes.push(await ready(await slowed(fresh), bare.address, "p"));
    const page = await slowed(fresh);
    first.push(await ready(page, served.address, SHELF));
    largest.push(await largestOf(page));
    await fresh.close();
    await walked.setOffline(true);
    const second = await slowed(walked);
    again.push(await ready(second, served.address, SHELF));
    await second.close();
    const long = await slowed(walked);
    opened.push(await ready(long, `${served.address}/follow/${walk}`, ".done-button"));
    await long.close();
    const shelf = await slowed(walked);
    tapped.push(await readyFromShelf(shelf, served.address, ".done-button"));
    await shelf.close();
    await walked.setOffline(false);
  }
  tell("largest drawn, first start from the hub", largest, bareTimes, GOALS.largest);
  tell("ready to tap, first start from the hub", first, bareTimes, GOALS.ready);
  tell("ready to tap, next start without a network", again, bareTimes, GOALS.offline);
  tell(`${ENTRIES} entries, ready to tap without a network`, opened, bareTimes, GOALS.walk);
  tell(`${ENTRIES} entries, ready to tap from the shelf`, tapped, bareTimes, GOALS.walk);
} finally {
  await browser.close();
  await served.stop();
  bare.stop();
  rmSync(folder, { recursive: true, force: true });
}
