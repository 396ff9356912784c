import { delimiter, join } from "node:path";
import { installedChromium } from "../machine/find-chromium.ts";
import { isExecutable } from "../machine/is-executable.ts";
import { isSoak } from "../machine/test-size.ts";
import type { Engine } from "./engine.ts";
import { puppeteerBrowser } from "./puppeteer-browser.ts";
import { webkitBrowser } from "./webkit-browser.ts";

/** Where Debian keeps WebKit's own browser, which is on no path. */
const MINI_BROWSERS = ["x86_64-linux-gnu", "aarch64-linux-gnu"].flatMap((machine) =>
  ["4.1", "4.0"].map((version) => `/usr/lib/${machine}/webkit2gtk-${version}/MiniBrowser`),
);

const onPath = (...names: readonly string[]) =>
  (process.env["PATH"] ?? "")
    .split(delimiter)
    .flatMap((folder) => names.map((name) => join(folder, name)))
    .find(isExecutable) ?? null;

/** The main job takes minutes in each. */
const notNow = isSoak ? null : "one of the long tests, see npm run soak";

/** The three engines: those of Debian's packages chromium, webkit2gtk-driver with xvfb, and firefox-esr. */
export const engines: readonly Engine[] = [chromium(), webkit(), firefox()];

function chromium(): Engine {
  const path = installedChromium();
  return {
    name: "Chromium",
    missing: notNow ?? (path === null ? "no Chromium is installed" : null),
    prints: true,
    open: () => puppeteerBrowser("chrome", path ?? ""),
  };
}

function webkit(): Engine {
  const [driver, screen] = [onPath("WebKitWebDriver"), onPath("Xvfb")];
  const browser = MINI_BROWSERS.find(isExecutable) ?? null;
  const programs = driver && screen && browser ? { driver, screen, browser } : null;
  return {
    name: "WebKit",
    missing: notNow ?? (programs === null ? "needs the packages webkit2gtk-driver and xvfb" : null),
    prints: false,
    open: () => {
      if (programs === null) throw new Error("WebKit is not here.");
      return webkitBrowser(programs);
    },
  };
}

function firefox(): Engine {
  const path = onPath("firefox-esr", "firefox");
  return {
    name: "Firefox",
    missing: notNow ?? (path === null ? "needs the package firefox-esr" : null),
    prints: true,
    open: () => puppeteerBrowser("firefox", path ?? ""),
  };
}
