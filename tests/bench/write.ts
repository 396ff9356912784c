import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium, type Page } from "@playwright/test";
import type { ProcedureFile } from "../../src/core/procedure/index.ts";
import { bundledText, procedureFile } from "../browser/written-walk.ts";
import { chromiumArguments } from "../machine/browser-launch.ts";
import { obtainChromium } from "../machine/find-chromium.ts";
import { serveBuilt } from "../machine/serve-built.ts";
import { spreadOf, spreadWords } from "./spread.ts";

/**
 * Writing a procedure: from a key in a cell to the end of the frame that shows it, with 300 steps and the processor slowed down four
 * times; and from the end of an edit of the walk of 157 steps, and of one of 1,000, to its findings, plan and chance. Edits are of texts and of
 * times in turn. Exits with 1 when one is slower than it may be.
 */
const STEPS = 300;
const SLOWED = 4;
const KEYS = 40;
const EDITS = 8;
const MOST_KEY = 50;
const MOST_ANSWER = 200;
const MANY = 1000;
const MOST_OF_MANY = 600;

const base = procedureFile(bundledText("osier-ranging-head"));

/** The walk that comes with the app, with a task of plain steps behind it that makes it so long. */
function longFile(count: number): ProcedureFile {
  const there = base.tasks.flatMap(({ steps }) => steps).length;
  const more = Array.from({ length: count - there }, (_, index) => ({
    id: `more-${index}`,
    by: ["iv"],
    do: `Read figure ${index + 1} of the list`,
    time: "PT10S",
  }));
  return {
    ...base,
    id: "long",
    title: "Long",
    tasks: [...base.tasks, { id: "more", title: "More", steps: more }],
  };
}

async function open(page: Page, address: string, file: ProcedureFile): Promise<void> {
  await page.goto(address);
  const [chooser] = await Promise.all([
    page.waitForEvent("filechooser"),
    page.getByRole("button", { name: "Choose files" }).click(),
  ]);
  await chooser.setFiles({
    name: `${file.id}.procedure.json`,
    mimeType: "application/json",
    buffer: Buffer.from(JSON.stringify(file, null, 2)),
  });
  await page.getByRole("button", { name: `Edit ${file.title}` }).waitFor();
  await page.goto(`${address}/write/${file.id}`);
  await page.locator('.write-figures[aria-busy="false"]').waitFor();
}

/** Opens a cell of a step for typing. */
async function edit(page: Page, step: string, column: "do" | "time" = "do"): Promise<void> {
  const cell = page.locator(`[data-row="${step}"] [data-column="${column}"]`);
  await cell.click();
  // A tap on the cell that is chosen already opens it.
  if ((await page.locator(".write-editor").count()) === 0) await page.keyboard.press("Enter");
  await page.locator(".write-editor").waitFor();
}

/** The times from each key to the end of the frame that shows it, in ms. */
async function keyTimes(page: Page, step: string): Promise<readonly number[]> {
  await edit(page, step);
  await page.evaluate(() => {
    const times: number[] = [];
    Object.assign(window, { keyTimes: times });
    document.querySelector(".write-editor")?.addEventListener("input", (event) => {
      const pressed = event.timeStamp;
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => times.push(performance.now() - pressed);
        port2.postMessage(null);
      });
    });
  });
  for (let key = 0; key < KEYS; key += 1) {
    await page.keyboard.press("x");
    await page.waitForTimeout(60);
  }
  const times = await page.evaluate(() => (window as unknown as { keyTimes: number[] }).keyTimes);
  await page.keyboard.press("Escape");
  return times;
}

/** From the Enter that ends an edit to the frame with it, and to the answers about it, in ms. */
async function editTimes(page: Page, step: string, round: number) {
  const isOfTime = round % 2 === 1;
  await edit(page, step, isOfTime ? "time" : "do");
  await page.keyboard.type(isOfTime ? `${20 + round}` : `Another text ${round}`);
  // In two calls, so that all is watched before the key is pressed.
  await page.evaluate(() => {
    Object.assign(window, {
      timedEdit: new Promise<{ shown: number; answered: number }>((resolve) => {
        const figures = document.querySelector(".write-figures");
        const editor = document.querySelector(".write-editor");
        let [pressed, shown] = [0, 0];
        editor?.addEventListener("keydown", ({ timeStamp }) => {
          pressed = timeStamp;
          requestAnimationFrame(() => {
            const { port1, port2 } = new MessageChannel();
            port1.onmessage = () => {
              shown = performance.now() - pressed;
            };
            port2.postMessage(null);
          });
        });
        let wasBusy = false;
        new MutationObserver(() => {
          const isBusy = figures?.getAttribute("aria-busy") === "true";
          if (wasBusy && !isBusy) resolve({ shown, answered: performance.now() - pressed });
          wasBusy ||= isBusy;
        }).observe(figures ?? document.body, { attributes: true });
      }),
    });
  });
  await page.keyboard.press("Enter");
  return page.evaluate(
    () => (window as unknown as { timedEdit: Promise<{ shown: number; answered: number }> }).timedEdit,
  );
}

const folder = mkdtempSync(join(tmpdir(), "tetherline-bench-"));
const served = await serveBuilt(join(folder, "app"));
const browser = await chromium.launch({ executablePath: obtainChromium(), args: [...chromiumArguments] });
try {
  const context = await browser.newContext({ viewport: { width: 1180, height: 820 } });
  const page = await context.newPage();
  await open(page, served.address, { ...base, id: "as-flown", title: "As flown" });
  const edits = [];
  for (let round = 0; round < EDITS; round += 1) edits.push(await editTimes(page, "ev1-suit", round));
  const answered = spreadOf(edits.map((one) => one.answered));
  await open(page, served.address, { ...longFile(MANY), id: "many", title: "Many" });
  const ofMany = [];
  for (let round = 0; round < EDITS; round += 1) ofMany.push(await editTimes(page, "ev1-suit", round));
  const many = spreadOf(ofMany.map((one) => one.answered));
  await open(page, served.address, longFile(STEPS));
  const session = await context.newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWED });
  const keys = spreadOf(await keyTimes(page, "more-3"));
  const slowed = [];
  for (let round = 0; round < EDITS; round += 1) slowed.push(await editTimes(page, "more-3", round));
  console.log(`A key in a cell, ${STEPS} steps, processor slowed ${SLOWED}×:  ${spreadWords(keys)}`);
  console.log(
    `An edit on the screen, the same:               ${spreadWords(spreadOf(slowed.map((one) => one.shown)))}`,
  );
  console.log(
    `Findings, plan and chance after it, the page slowed: ${spreadWords(spreadOf(slowed.map((one) => one.answered)))}`,
  );
  console.log(`Findings, plan and chance after it, 157 steps: ${spreadWords(answered)}`);
  console.log(`The same for ${MANY} steps:                      ${spreadWords(many)}`);
  const isFast = keys.p95 <= MOST_KEY && answered.median <= MOST_ANSWER && many.median <= MOST_OF_MANY;
  console.log(
    `95 % of keys within ${MOST_KEY} ms and half of the answers within ${MOST_ANSWER} and ${MOST_OF_MANY} ms: ${isFast ? "yes" : "no"}`,
  );
  process.exitCode = isFast ? 0 : 1;
} finally {
  await browser.close();
  await served.stop();
  rmSync(folder, { recursive: true, force: true });
}
