import { defineConfig, devices } from "@playwright/test";
import { chromiumArguments } from "./tests/machine/browser-launch.ts";
import { installedChromium } from "./tests/machine/find-chromium.ts";

const port = process.env["TETHERLINE_PORT"] ?? "4179";
const executablePath = installedChromium();
const serve = `npx tsx tests/machine/serve-once.ts --port ${port}`;

const tablet = {
  ...devices["Desktop Chrome"],
  hasTouch: true,
  launchOptions: {
    args: [...chromiumArguments],
    ...(executablePath === null ? {} : { executablePath }),
  },
};

/** What is the same at every size is looked at in one. */
const atOneSize =
  /\/(bring-in|compare|first-load|first-screen|first-hour|keyboard|killed-browser|language|late-at-the-mast|linked-hubs|linked-roles|linked-walk|library|lost-store|map|learn|native-shell|print|record|remarks|shell|two-tabs|wrist-cards|write-pointing|write-table|briefing-file|briefing|training|split-of-rest|second-planner|second-proof|languages)\.spec\.ts$/;

/** What is the same on a tablet however it is held is tried lying, and on a phone. */
const atTwoSizes = /\/(axe|follow|whole-walk)\.spec\.ts$/;

const config = defineConfig({
  testDir: "tests/browser",
  outputDir: "test-results",
  fullyParallel: true,
  workers: 2,
  forbidOnly: Boolean(process.env["CI"]),
  // A machine that does other work besides takes its time; a test that hangs still ends.
  timeout: 180_000,
  expect: { timeout: 20_000 },
  reporter: [
    ["list"],
    ...(process.env["PLAYWRIGHT_JSON_OUTPUT_FILE"] ? ([["json"]] satisfies [[string]]) : []),
  ],
  // The worker that stores the app takes a new browser as long as its first screens: who needs the app stored says so.
  use: { baseURL: `http://localhost:${port}`, trace: "on-first-retry", serviceWorkers: "block" },
  webServer: {
    // Under `npm test` the build is a stage of its own.
    command: process.env["TETHERLINE_BUILT"] ? serve : `npm run -s build && ${serve}`,
    url: `http://localhost:${port}`,
    reuseExistingServer: false,
    // So that the hub ends as it should, and its data folder goes.
    gracefulShutdown: { signal: "SIGTERM", timeout: 5_000 },
    timeout: 120_000,
  },
  projects: [
    { name: "landscape", use: { ...tablet, viewport: { width: 1180, height: 820 } } },
    {
      name: "portrait",
      testIgnore: [atOneSize, atTwoSizes],
      use: { ...tablet, viewport: { width: 820, height: 1180 } },
    },
    {
      name: "phone",
      testIgnore: atOneSize,
      use: { ...tablet, viewport: { width: 390, height: 844 }, isMobile: true },
    },
  ],
});

// Playwright reads the default export.
export default config;
