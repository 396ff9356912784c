import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Browser, chromium, type Page } from "@playwright/test";
import { type Duration, type Instant, later } from "../../src/core/units/index.ts";
import { bundledText, procedureFile, WrittenWalk } from "../browser/written-walk.ts";
import { chromiumArguments } from "../machine/browser-launch.ts";
import { obtainChromium } from "../machine/find-chromium.ts";
import { serveBuilt } from "../machine/serve-built.ts";
import { spreadOf, spreadWords } from "./spread.ts";

/**
 * From a tap on Done to the frame that shows the step as done, with a walk of more than 110 steps and 1,000 entries in
 * its log, the processor slowed down four times; in turns on a tablet that seals its entries and on one that cannot. Exits with 1
 * when it is slower than it may be.
 */
const ENTRIES = 1000;
const TURNS = 10;
const TAPS_IN_TURN = 10;
const SLOWED = 4;
const BETWEEN = 1000;
/** After so long a tap was not taken, in ms. */
const LONGEST = 5000;
const MOST_MEDIAN = 50;
const MOST_P95 = 100;
const MOST_FOR_SEALING = 1.05;

/** A walk that has just begun, with a log as full as after hours: notes, readings and records, but no step done. */
function fullLog(): { readonly walk: string; readonly steps: number; readonly text: string } {
  const file = procedureFile(bundledText("osier-ranging-head"));
  const length = 20;
  const walk = new WrittenWalk(file, {
    start: later(Date.now() as Instant, (-length * 60_000) as Duration),
    walk: "bench-walk",
  });
  const supplies = file.supplies ?? [];
  while (walk.count < ENTRIES) {
    const at = (walk.count / ENTRIES) * length;
    const supply = supplies[walk.count % supplies.length];
    if (walk.count % 3 === 0 || !supply) walk.enter("note.made", { text: `Note ${walk.count}` }, at);
    else if (walk.count % 3 === 1)
      walk.enter("supply.read", { crew: supply.crew, supply: supply.id, value: supply.full }, at);
    else
      walk.enter(
        "record.taken",
        { step: "lock-pressure", record: "lock-pressure", value: (walk.count % 50) / 100 },
        at,
      );
  }
  return { walk: walk.walk, steps: file.tasks.flatMap(({ steps }) => steps).length, text: walk.text };
}

interface Tap {
  /** From the finger's lifting, which makes the tap, to the end of the frame that shows the step done; ms. */
  readonly lifted: number;
  /** The same from the finger's touching down. */
  readonly touched: number;
}

/** Sets the page up to time taps: each ends when a frame has been drawn in which one more row is marked done. */
async function timeTaps(page: Page): Promise<void> {
  await page.evaluate(() => {
    const taps: { touched: number; lifted: number }[] = [];
    let [touched, lifted] = [0, 0];
    addEventListener(
      "pointerdown",
      ({ timeStamp }) => {
        touched = timeStamp;
      },
      { capture: true },
    );
    addEventListener(
      "pointerup",
      ({ timeStamp }) => {
        lifted = timeStamp;
      },
      { capture: true },
    );
    const list = document.querySelector("ol[aria-label=Steps]");
    if (!list) throw new Error("there is no list of steps");
    new MutationObserver((changes) => {
      const isDone = changes.some(
        ({ target, attributeName }) =>
          attributeName === "data-stage" &&
          (target as HTMLElement).dataset["stage"] === "done" &&
          (target as HTMLElement).matches("li"),
      );
      if (!isDone || lifted === 0) return;
      const [down, up] = [touched, lifted];
      lifted = 0;
      requestAnimationFrame(() => {
        // A message posted from the frame is handled after the frame was laid out and painted.
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => {
          const end = performance.now();
          taps.push({ touched: end - down, lifted: end - up });
          (window as unknown as { tapShown: () => void }).tapShown();
        };
        port2.postMessage(null);
      });
    }).observe(list, { subtree: true, attributes: true, attributeFilter: ["data-stage"] });
    Object.assign(window, { timedTaps: taps });
  });
}

const timedTaps = (page: Page) => page.evaluate(() => (window as unknown as { timedTaps: Tap[] }).timedTaps);

/** A page on which taps are timed, one after the other. */
async function tappedPage(browser: Browser, address: string, isSealing: boolean) {
  const context = await browser.newContext({ viewport: { width: 1180, height: 820 }, hasTouch: true });
  if (!isSealing) {
    // As where the browser gives no keys: entries go without links and seals.
    await context.addInitScript(() => {
      Object.defineProperty(Crypto.prototype, "subtle", { get: () => undefined });
    });
  }
  const page = await context.newPage();
  const { walk, steps, text } = fullLog();
  await page.goto(address);
  const [chooser] = await Promise.all([
    page.waitForEvent("filechooser"),
    page.getByRole("button", { name: "Choose files" }).click(),
  ]);
  await chooser.setFiles({
    name: "bench.walk.jsonl",
    mimeType: "application/jsonl",
    buffer: Buffer.from(text),
  });
  await page.getByText(`${ENTRIES} entries taken in`).waitFor();
  await page.goto(`${address}/follow/${walk}`);
  await page.locator(".done-button").first().waitFor();
  await timeTaps(page);
  // The page says when it has shown a tap: asking it again and again would take up its time.
  let onShown = () => {};
  await page.exposeFunction("tapShown", () => onShown());
  const session = await context.newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWED });
  const turn = async () => {
    await page.bringToFront();
    await page.waitForTimeout(BETWEEN);
    for (let tap = 0; tap < TAPS_IN_TURN; tap += 1) {
      const done = page.locator(".done-button").first();
      await done.scrollIntoViewIfNeeded();
      const box = await done.boundingBox();
      if (!box) throw new Error("There was nothing to tap.");
      const shown = new Promise<void>((resolve) => {
        onShown = resolve;
      });
      await page.touchscreen.tap(box.x + box.width / 2, box.y + box.height / 2);
      // A tap on what has only just come under the finger does not count: the next one may.
      await Promise.race([shown, page.waitForTimeout(LONGEST)]);
      // Nobody reads and does the next step within a second: by then the list has come to rest.
      await page.waitForTimeout(BETWEEN);
    }
  };
  return { turn, steps, taps: () => timedTaps(page) };
}

const folder = mkdtempSync(join(tmpdir(), "tetherline-bench-"));
const served = await serveBuilt(join(folder, "app"));
const browser = await chromium.launch({ executablePath: obtainChromium(), args: [...chromiumArguments] });
try {
  const sealing = await tappedPage(browser, served.address, true);
  const plain = await tappedPage(browser, served.address, false);
  for (let turn = 0; turn < TURNS; turn += 1) {
    // The first of a pair by turns, so that neither is always met by the machine as the other left it.
    for (const { turn: take } of turn % 2 === 0 ? [sealing, plain] : [plain, sealing]) await take();
  }
  const taps = await sealing.taps();
  const lifted = spreadOf(taps.map((tap) => tap.lifted));
  const touched = spreadOf(taps.map((tap) => tap.touched));
  const unsealed = spreadOf((await plain.taps()).map((tap) => tap.lifted));
  console.log(
    `${sealing.steps} steps, ${ENTRIES} entries before the first tap, ${taps.length} taps on each tablet, processor slowed ${SLOWED}×`,
  );
  console.log(
    `From the lifting of the finger to the end of the frame that shows the step done: ${spreadWords(lifted)}`,
  );
  console.log(
    `From its touching down:                                                          ${spreadWords(touched)}`,
  );
  console.log(
    `From its lifting where nothing is sealed:                                        ${spreadWords(unsealed)}`,
  );
  const share = lifted.median / unsealed.median;
  const isFast = lifted.median < MOST_MEDIAN && lifted.p95 < MOST_P95;
  const isUnchanged = share <= MOST_FOR_SEALING;
  console.log(`median under ${MOST_MEDIAN} ms and 95 % under ${MOST_P95} ms: ${isFast ? "yes" : "no"}`);
  console.log(
    `the median with seals is ${share.toFixed(3)} × that without, at most ${MOST_FOR_SEALING}: ${isUnchanged ? "yes" : "no"}`,
  );
  process.exitCode = isFast && isUnchanged ? 0 : 1;
} finally {
  await browser.close();
  await served.stop();
  rmSync(folder, { recursive: true, force: true });
}
