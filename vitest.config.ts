import { fileURLToPath } from "node:url";
import react from "@vitejs/plugin-react";
import { defineConfig } from "vitest/config";

const litReact = fileURLToPath(new URL("node_modules/@lit/react/index.js", import.meta.url));

const standInWorker = fileURLToPath(new URL("tests/app/update/stand-in-worker.ts", import.meta.url));

const standInFacts = fileURLToPath(new URL("tests/app/shelf/stand-in-facts.ts", import.meta.url));

/** For tests that run the program as a process: builds it where its sources are newer. */
const globalSetup = ["tests/machine/build-program.ts"];

const setupFiles = ["tests/machine/property-seed.ts", "tests/machine/speak-english.ts"];

/** Tests that put something else in place of a module: each needs its modules for itself. */
const withStandIns = ["tests/app/follow/alerts.test.tsx", "tests/app/help/help-panel.test.tsx"];

/** Pure code keeps nothing between tests, so that its files share their modules, and half of the time is saved. */
const isolate = false;

/** In milliseconds: a test that hangs still ends, and one on a machine that does much else besides comes to its end. */
const limits = { testTimeout: 120_000, hookTimeout: 120_000 };

/** What the tests of screens share, and those with stand-ins of their own. */
const screens = {
  environment: "jsdom" as const,
  ...limits,
  setupFiles: [...setupFiles, "tests/app/set-up-browser.ts"],
  server: { deps: { inline: [/@ionic\//, /@stencil\//, /@lit\//, /ionicons/] } },
};

/** How modules of the app are found in tests. */
const app = {
  plugins: [react()],
  // Under Node's conditions @lit/react resolves to a build that drops Ionic's handlers and properties.
  resolve: {
    alias: [
      { find: /^@lit\/react$/, replacement: litReact },
      // Made by the build, so that they are not there under test.
      { find: "virtual:pwa-register/react", replacement: standInWorker },
      { find: "virtual:bundled-facts", replacement: standInFacts },
    ],
  },
};

const config = defineConfig({
  test: {
    reporters: ["default"],
    // On a machine with two cores Vitest would leave one unused.
    maxWorkers: "100%",
    coverage: { provider: "v8", include: ["src/**/*.{ts,tsx}"], reporter: ["text-summary", "html"] },
    projects: [
      {
        test: {
          name: "core",
          include: ["tests/core/**/*.test.ts"],
          ...limits,
          setupFiles,
          isolate,
        },
      },
      {
        test: {
          name: "edges",
          include: ["tests/{io,cli,hub,procedures}/**/*.test.ts"],
          ...limits,
          setupFiles,
          globalSetup,
        },
      },
      {
        test: {
          name: "words",
          include: ["tests/words/**/*.test.ts"],
          ...limits,
          setupFiles,
          isolate,
        },
      },
      {
        test: {
          name: "engines",
          include: ["tests/engines/**/*.test.ts"],
          ...limits,
          setupFiles,
          globalSetup,
          retry: 2,
        },
      },
      {
        test: {
          name: "truth",
          include: ["tests/truth/**/*.test.ts"],
          ...limits,
          setupFiles,
          isolate,
        },
      },
      {
        test: {
          name: "house",
          include: ["tests/house/**/*.test.ts"],
          ...limits,
          setupFiles,
          globalSetup,
        },
      },
      {
        ...app,
        test: {
          ...screens,
          name: "parts",
          include: ["tests/app/**/*.test.{ts,tsx}"],
          exclude: withStandIns,
          isolate,
        },
      },
      { ...app, test: { ...screens, name: "parts with stand-ins", include: withStandIns } },
    ],
  },
});

// Vitest reads the default export.
export default config;
