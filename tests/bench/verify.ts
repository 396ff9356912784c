import { generateKeyPairSync, type KeyObject, sign } from "node:crypto";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium } from "@playwright/test";
import { writeLines } from "../../src/core/log/index.ts";
import type { ChainEnd, Sealer } from "../../src/core/seal/index.ts";
import { chainEndOf, chainedTo, sealed } from "../../src/core/seal/index.ts";
import { chromiumArguments } from "../machine/browser-launch.ts";
import { obtainChromium } from "../machine/find-chromium.ts";
import { serveBuilt } from "../machine/serve-built.ts";
import { busyLog } from "./busy-log.ts";

/**
 * A log of 10,000 entries of three devices, every seal of it looked at in the review: how long that takes, and the longest time in which the page drew
 * no frame meanwhile. The page's thread is slowed down four times; the browser slows no worker down, so that what the worker took is taken four times.
 * Exits with 1 when it takes longer than it may.
 */
const ENTRIES = 10_000;
const DEVICES = 3;
const SLOWED = 4;
const MOST = 5000;

/** As text: names that the compiler gives to functions are unknown in the page. */
const NOTES_FRAMES = `
  window.drawn = { last: performance.now(), longest: 0 };
  requestAnimationFrame(function draw(now) {
    drawn.longest = Math.max(drawn.longest, now - drawn.last);
    drawn.last = now;
    requestAnimationFrame(draw);
  });
`;

/** Has the page note how long its workers take to answer. */
const NOTES_WORKERS = `
  window.worked = 0;
  window.Worker = class extends Worker {
    postMessage(...of) {
      const asked = performance.now();
      this.addEventListener("message", ({ data }) => {
        if (data.kind === "verified") window.worked = performance.now() - asked;
      });
      super.postMessage(...of);
    }
  };
`;

function newSealer(): Sealer {
  const { publicKey, privateKey }: { publicKey: KeyObject; privateKey: KeyObject } =
    generateKeyPairSync("ed25519");
  return {
    publicKey: publicKey.export({ format: "jwk" }).x ?? "",
    sign: async (bytes) => sign(null, bytes, privateKey).toString("base64url"),
  };
}

/** The busy log, sealed by its devices. */
async function sealedLog(): Promise<string> {
  const sealers = new Map<string, Sealer>();
  const ends = new Map<string, ChainEnd>();
  const all = [];
  for (const entry of busyLog(ENTRIES, DEVICES)) {
    const { source } = entry.wire;
    const sealer = sealers.get(source) ?? newSealer();
    sealers.set(source, sealer);
    const chained = chainedTo(entry, ends.get(source) ?? null, sealer.publicKey);
    ends.set(source, chainEndOf(chained));
    const one = await sealed(chained, sealer);
    if (!one) throw new Error("an entry cannot be sealed");
    all.push(one);
  }
  return writeLines(all);
}

const folder = mkdtempSync(join(tmpdir(), "tetherline-bench-"));
const served = await serveBuilt(join(folder, "app"));
const browser = await chromium.launch({ executablePath: obtainChromium(), args: [...chromiumArguments] });
try {
  const context = await browser.newContext({ viewport: { width: 1180, height: 820 } });
  await context.addInitScript(NOTES_WORKERS);
  const page = await context.newPage();
  await page.goto(served.address);
  const [chooser] = await Promise.all([
    page.waitForEvent("filechooser"),
    page.getByRole("button", { name: "Choose files" }).click(),
  ]);
  const buffer = Buffer.from(await sealedLog());
  await chooser.setFiles({ name: "bench.walk.jsonl", mimeType: "application/jsonl", buffer });
  await page.getByText(`${ENTRIES} entries taken in`).waitFor({ timeout: 120_000 });
  await page.goto(`${served.address}/review/bench`);
  const seal = page.getByRole("region", { name: "Is the log as it was entered?" });
  const again = seal.getByRole("button", { name: "Look at every seal" });
  await again.waitFor({ timeout: 120_000 });
  const session = await context.newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWED });
  await page.evaluate(NOTES_FRAMES);
  const began = performance.now();
  await again.click();
  await seal.getByText("Every seal was looked at").waitFor({ timeout: 120_000 });
  const took = performance.now() - began;
  const { longest, worked } = await page.evaluate(() => {
    const noted = window as unknown as { drawn: { longest: number }; worked: number };
    return { longest: noted.drawn.longest, worked: noted.worked };
  });
  const slowed = took + (SLOWED - 1) * worked;
  console.log(
    `${ENTRIES} entries of ${DEVICES} devices, every seal: ${Math.round(took)} ms from the tap to the verdict, of which the worker took ${Math.round(worked)} ms; ${Math.round(slowed)} ms where that is slowed down ${SLOWED} times as well`,
  );
  console.log(`the longest time without a frame meanwhile, the page slowed down: ${Math.round(longest)} ms`);
  const isFast = slowed < MOST;
  console.log(`under ${MOST} ms at ${SLOWED}×: ${isFast ? "yes" : "no"}`);
  process.exitCode = isFast ? 0 : 1;
} finally {
  await browser.close();
  await served.stop();
  rmSync(folder, { recursive: true, force: true });
}
