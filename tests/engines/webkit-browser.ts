import { type ChildProcess, spawn } from "node:child_process";
import { setTimeout as wait } from "node:timers/promises";
import type { WebElement } from "selenium-webdriver";
import { Builder, Capabilities, Key } from "selenium-webdriver";
import { freePort } from "../machine/free-port.ts";
import { type EngineBrowser, HEIGHT, WIDTH } from "./engine.ts";

/** What of the window is not page: the bar with the address, in CSS px. */
const BAR = 38;

/** How long a screenshot may take, in ms; that of the first page of all hangs at times. */
const SHOT = 10_000;

/** The programs that WebKit needs here. */
export interface WebkitPrograms {
  readonly driver: string;
  readonly browser: string;
  readonly screen: string;
}

/** Starts WebKit's browser on a screen of its own, driven by W3C WebDriver. */
export async function webkitBrowser({ driver, browser, screen }: WebkitPrograms): Promise<EngineBrowser> {
  const port = await freePort(4450);
  // The number of a screen is free where its port of old, 6000 above, is.
  const display = `:${(await freePort(6080)) - 6000}`;
  const shown = spawn(screen, [display, "-screen", "0", `${WIDTH}x${HEIGHT + BAR}x24`], { stdio: "ignore" });
  const driving = spawn(driver, [`--port=${port}`], {
    stdio: "ignore",
    env: {
      ...process.env,
      DISPLAY: display,
      LANG: "en_US.UTF-8",
      LANGUAGE: "en",
      // As root there is no sandbox; without a graphics card composing fails.
      WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS: "1",
      WEBKIT_DISABLE_COMPOSITING_MODE: "1",
    },
  });
  const end = async () => {
    for (const child of [driving, shown]) await ended(child);
  };
  try {
    const session = await sessionOf(`http://127.0.0.1:${port}`, browser);
    await session
      .manage()
      .window()
      .setRect({ x: 0, y: 0, width: WIDTH, height: HEIGHT + BAR });
    const elementOf = async (expression: string) => {
      const element = await session.executeScript<WebElement | null>(`return (${expression});`);
      if (element === null) throw new Error(`Nothing is at ${expression}.`);
      return element;
    };
    return {
      goto: (address) => session.get(address),
      reload: () => session.navigate().refresh(),
      run: <T>(expression: string) =>
        session.executeAsyncScript<T>(
          `const tell = arguments[arguments.length - 1]; Promise.resolve(${expression}).then(tell);`,
        ),
      tap: async (element) => (await elementOf(element)).click(),
      write: async (element, text) => {
        const field = await elementOf(element);
        await field.clear();
        await field.sendKeys(text.replaceAll("\n", Key.ENTER));
      },
      screenshot: async () =>
        Buffer.from(await Promise.race([session.takeScreenshot(), wait(SHOT).then(() => "")]), "base64"),
      paper: () => Promise.reject(new Error("WebKit's driver knows no printing.")),
      close: async () => {
        await session.quit();
        await end();
      },
    };
  } catch (failure) {
    await end();
    throw failure;
  }
}

/** A session with the driver, which takes a moment until it listens. */
async function sessionOf(server: string, binary: string) {
  const capabilities = new Capabilities({
    browserName: "MiniBrowser",
    "webkitgtk:browserOptions": { binary, args: ["--automation"] },
  });
  for (let tries = 1; ; tries += 1)
    try {
      return await new Builder().usingServer(server).withCapabilities(capabilities).build();
    } catch (failure) {
      if (tries === 20) throw failure;
      await wait(500);
    }
}

function ended(child: ChildProcess): Promise<void> {
  return new Promise((resolve) => {
    if (child.exitCode !== null || child.signalCode !== null) return resolve();
    child.once("exit", () => resolve());
    child.kill();
  });
}
