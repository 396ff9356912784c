import type { ElementHandle } from "puppeteer-core";
import puppeteer from "puppeteer-core";
import { chromiumArguments } from "../machine/browser-launch.ts";
import { type EngineBrowser, HEIGHT, WIDTH } from "./engine.ts";

/** Starts Chromium or Firefox. Firefox is driven by WebDriver BiDi, the W3C's draft of 2024. */
export async function puppeteerBrowser(
  browser: "chrome" | "firefox",
  executablePath: string,
): Promise<EngineBrowser> {
  const started = await puppeteer.launch({
    browser,
    executablePath,
    headless: true,
    args: browser === "chrome" ? [...chromiumArguments] : [],
    // So that the page speaks English whatever the machine does.
    env: { ...process.env, LANG: "en_US.UTF-8", LANGUAGE: "en" },
  });
  const page = await started.newPage();
  await page.setViewport({ width: WIDTH, height: HEIGHT });
  const elementOf = async (expression: string) => {
    const handle = (await page.evaluateHandle(expression)).asElement();
    if (handle === null) throw new Error(`Nothing is at ${expression}.`);
    return handle as ElementHandle<Element>;
  };
  return {
    goto: async (address) => void (await page.goto(address)),
    reload: async () => void (await page.reload()),
    run: <T>(expression: string) => page.evaluate(expression) as Promise<T>,
    tap: async (element) => (await elementOf(element)).click(),
    write: async (element, text) => {
      const field = await elementOf(element);
      await field.click({ count: 3 });
      await field.type(text);
    },
    screenshot: async () => Buffer.from(await page.screenshot()),
    paper: async () => Buffer.from(await page.pdf({ format: "A4" })),
    close: () => started.close(),
  };
}
