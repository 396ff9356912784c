import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { gzip } from "node:zlib";
import react from "@vitejs/plugin-react";
import { defineConfig, type Plugin } from "vite";
import { VitePWA } from "vite-plugin-pwa";
import { factsOf } from "./src/app/shelf/procedure-facts.ts";
import { japaneseWords } from "./src/words/japanese/index.ts";

const checkout = fileURLToPath(new URL(".", import.meta.url));

/** satellite.js ships its WebAssembly build through the same entry; only its plain SGP4 is used, and the app stays small. */
const withoutWasm = (): Plugin => ({
  name: "without-satellite-wasm",
  enforce: "pre",
  resolveId: (id, importer) =>
    id === "./wasm/index.js" && importer?.includes("satellite.js") ? "\0no-satellite-wasm" : null,
  load: (id) => (id === "\0no-satellite-wasm" ? "export {};" : null),
});

/** Messages call functions of our own and, of messageformat's, `string` alone: dates, currencies and units stay out of the first load. */
const withOwnMessageFunctions = (): Plugin => ({
  name: "with-own-message-functions",
  enforce: "pre",
  resolveId: (id, importer) =>
    id === "./functions/index.js" && importer?.endsWith("messageformat/lib/messageformat.js")
      ? "\0own-message-functions"
      : null,
  load: (id) =>
    id === "\0own-message-functions"
      ? `import { string } from "${checkout}node_modules/messageformat/lib/functions/string.js";
         export const DefaultFunctions = { string };`
      : null,
});

const PROCEDURE_ENDING = ".procedure.json";

/** The procedures that come with the app are checked and planned here, so that the shelf is drawn without the checker. */
const withBundledFacts = (): Plugin => ({
  name: "with-bundled-facts",
  resolveId: (id) => (id === "virtual:bundled-facts" ? "\0bundled-facts" : null),
  load(id) {
    if (id !== "\0bundled-facts") return null;
    const folder = join(checkout, "procedures");
    const names = readdirSync(folder)
      .filter((name) => name.endsWith(PROCEDURE_ENDING))
      .sort();
    const facts = names.map((name) => {
      const path = join(folder, name);
      this.addWatchFile(path);
      return [name.slice(0, -PROCEDURE_ENDING.length), factsOf(readFileSync(path, "utf8"))];
    });
    return `export const bundledFacts = ${JSON.stringify(Object.fromEntries(facts))};`;
  },
});

type SubsetFont = (font: Buffer, text: string, options: { targetFormat: "woff2" }) => Promise<Buffer>;
// The package declares no types.
const subsetFont: SubsetFont = createRequire(import.meta.url)("subset-font");

const JAPANESE_FACE = "virtual:japanese-face/";
/** Kana and full-width forms, whichever of them are used today. */
const KANA = Array.from({ length: 0x100 }, (_, at) => String.fromCharCode(0x3000 + at, 0xff00 + at)).join("");

/** The Japanese characters that the app's own words use, cut out of a megabyte each of the two weights. */
const withJapaneseFaces = (): Plugin => {
  let isServed = false;
  return {
    name: "with-japanese-faces",
    configResolved({ command }) {
      isServed = command === "serve";
    },
    resolveId: (id) => (id.startsWith(JAPANESE_FACE) ? `\0${id}` : null),
    async load(id) {
      if (!id.startsWith(`\0${JAPANESE_FACE}`)) return null;
      const file = `@fontsource/noto-sans-jp/files/noto-sans-jp-japanese-${id.slice(JAPANESE_FACE.length + 1)}-normal.woff2`;
      // With hot reload nothing is cut.
      if (isServed) return `export { default as url } from "${file}?url";`;
      const whole = readFileSync(join(checkout, "node_modules", file));
      const source = await subsetFont(whole, Object.values(japaneseWords).join("") + KANA, {
        targetFormat: "woff2",
      });
      const made = this.emitFile({ type: "asset", name: "face-japanese.woff2", source });
      return `export const url = import.meta.ROLLUP_FILE_URL_${made};`;
    },
  };
};

/** The store is opened once the first screen is drawn; what opens it is fetched meanwhile. */
const withEarlyServices = (): Plugin => ({
  name: "with-early-services",
  transformIndexHtml: {
    order: "post",
    handler: (html, { bundle = {} }) => {
      const parts = Object.values(bundle).filter((part) => part.type === "chunk");
      const importsOf = (name: string) => parts.find(({ fileName }) => fileName === name)?.imports ?? [];
      const opening = parts.filter(({ facadeModuleId, moduleIds }) =>
        [facadeModuleId, ...moduleIds].some((id) => id?.endsWith("/app/open-services.ts")),
      );
      if (opening.length === 0) throw new Error("What opens the services is not a part of the build.");
      const needed = new Set(opening.flatMap(({ fileName }) => [fileName, ...importsOf(fileName)]));
      const isListed = (name: string) => html.includes(`"/${name}"`);
      return [...needed]
        .filter((name) => !isListed(name))
        .map((name) => ({
          tag: "link",
          attrs: { rel: "modulepreload", crossorigin: true, href: `/${name}` },
          injectTo: "head",
        }));
    },
  },
});

/** What packs well, and less than this does not pay, in bytes. */
const PACKS = { names: /\.(js|css|svg|json|wasm)$/, least: 1024 };

/** Lays the files of the build beside themselves packed, so that the hub need not pack them at each request. Browsers take Gzip over plain http too. */
const withPackedFiles = (): Plugin => ({
  name: "with-packed-files",
  async writeBundle({ dir = "" }, bundle) {
    const pack = promisify(gzip);
    const names = Object.keys(bundle).filter((name) => name.startsWith("assets/") && PACKS.names.test(name));
    for (const name of names) {
      const bytes = readFileSync(join(dir, name));
      if (bytes.length >= PACKS.least) writeFileSync(join(dir, `${name}.gz`), await pack(bytes));
    }
  },
});

/** What the hub answers itself; everything else under its address is the app. */
const HUB_PATHS = [/^\/api\//, /^\/metrics$/, /^\/tetherline-hub\.crt$/];

/** What lies in folders that the first screen is made of, and is for other pages alone. */
const LATER =
  /[\\/]src[\\/](core[\\/](procedure|custody)[\\/]|app[\\/](parts[\\/](?!(error-words|missing-part|mistake-boundary|index|parts)\.)|shelf[\\/](bundled-light|use-(shelf-)?revisions|use-procedure-text)\.))/;

/** What need not be bundled though it is imported. */
const treeshake = {
  // @ionic/core 9.0 declares no `sideEffects`; without this every one of its components is bundled.
  moduleSideEffects: [
    { test: /@ionic[\\/]core[\\/]components[\\/]/, sideEffects: false },
    // The core is pure, and these do nothing by being imported: whoever does not use them need not load them.
    { test: /[\\/]src[\\/](core|words|app[\\/](session|language))[\\/]/, sideEffects: false },
    { test: LATER, sideEffects: false },
    {
      test: /node_modules[\\/](satellite\.js|astronomy-engine|fast-xml-parser|messageformat)[\\/]/,
      sideEffects: false,
    },
  ],
};

/** The solver of the second proof lies beside the program, which reads it when it is asked for a proof. */
const withSolver = (): Plugin => ({
  name: "with-solver",
  generateBundle() {
    const path = createRequire(import.meta.url).resolve("highs/runtime");
    this.emitFile({ type: "asset", fileName: "highs.wasm", source: readFileSync(path) });
  },
});

/** How long parts of a build took is nothing to whoever starts the app. */
const CHECKS = { bundlerTimings: false, pluginTimings: false };

/** The command line with the hub, for Node; one file can then be started without a compiler. */
const program = defineConfig({
  plugins: [withoutWasm(), withSolver()],
  // What has no JavaScript to bundle is found among the installed packages.
  ssr: { noExternal: true, external: ["better-sqlite3"] },
  build: {
    outDir: "dist/program",
    emptyOutDir: true,
    minify: false,
    target: "node20",
    rolldownOptions: {
      checks: CHECKS,
      output: { entryFileNames: "[name].js", chunkFileNames: "[name]-[hash].js" },
    },
  },
});

/** The app, for the browser. */
export const app = defineConfig({
  root: "src/app",
  // With hot reload the app asks the hub that `npm start` runs.
  server: {
    fs: { allow: [checkout] },
    proxy: Object.fromEntries(HUB_PATHS.map(({ source }) => [source, "http://localhost:4173"])),
  },
  build: {
    outDir: "../../dist/app",
    emptyOutDir: true,
    target: "es2022",
    modulePreload: {
      // A later part asks for what it imports itself. To name all of it beforehand takes a slow device longer than to find it, and its names would be in the first load.
      resolveDependencies: (_, names, { hostType }) =>
        hostType === "html" ? names : names.filter((name) => name.endsWith(".css")),
    },
    rolldownOptions: {
      checks: CHECKS,
      output: {
        // A file that several pages share would be named after all of them, and each name is loaded with the first screen.
        chunkFileNames: ({ name }) => `assets/${name.replace(/~.*/, "")}-[hash].js`,
        // What is needed together is one file each: a device that takes many small ones from its store waits for each of them. What the
        // first screen shares a folder with and does not need is kept apart from it.
        codeSplitting: {
          groups: [
            // Zod is told not to make code before any schema is made: in one file with it that holds whichever part comes first.
            { name: "zod", test: /node_modules[\\/]zod[\\/]|[\\/]no-eval\.ts$/, priority: 5 },
            {
              name: "pages",
              test: LATER,
              priority: 4,
              includeDependenciesRecursively: false,
              entriesAware: true,
              entriesAwareMergeThreshold: 4000,
            },
            { name: "first", test: /[\\/]src[\\/]app[\\/]main\.tsx$/, priority: 3 },
            { name: "services", test: /[\\/]src[\\/]app[\\/]open-services\.ts$/, priority: 2 },
            { name: "frame", test: /[\\/]src[\\/]app[\\/]frame\.tsx$/, priority: 1 },
          ],
        },
      },
      treeshake,
    },
  },
  worker: {
    format: "es",
    plugins: () => [withoutWasm(), withOwnMessageFunctions()],
    // What the solver asks of Node it never asks in a browser.
    rolldownOptions: { treeshake, checks: CHECKS, external: ["node:module"] },
  },
  plugins: [
    withoutWasm(),
    withOwnMessageFunctions(),
    withBundledFacts(),
    withJapaneseFaces(),
    withEarlyServices(),
    withPackedFiles(),
    react(),
    VitePWA({
      registerType: "prompt",
      // The manifest's icons are found by the pattern below already; a file listed twice fails the install.
      includeManifestIcons: false,
      manifest: {
        name: "Tetherline",
        short_name: "Tetherline",
        description: "Prepare, follow and review a two-person walk, offline.",
        id: "/",
        start_url: "/",
        display: "standalone",
        orientation: "any",
        background_color: "#f3f0e8",
        theme_color: "#fbf9f4",
        icons: [
          { src: "/icon.svg", sizes: "any", type: "image/svg+xml" },
          { src: "/icon-192.png", sizes: "192x192", type: "image/png" },
          { src: "/icon-512.png", sizes: "512x512", type: "image/png" },
          { src: "/icon-512.png", sizes: "512x512", type: "image/png", purpose: "maskable" },
        ],
      },
      workbox: {
        globPatterns: ["**/*.{js,css,html,svg,png,woff2,json}"],
        // A face comes with its language, and stays from then on.
        globIgnores: ["**/face-*", "**/noto-*", "**/solver-*", "**/proof-worker-*"],
        runtimeCaching: [
          {
            urlPattern: /\/(face|noto)-[^/]*\.woff2$/,
            handler: "CacheFirst",
            options: { cacheName: "faces" },
          },
          // So does what proves a best split a second time, once that was asked for.
          {
            urlPattern: /\/(highs|solver|proof-worker)-[^/]*\.(wasm|js)$/,
            handler: "CacheFirst",
            options: { cacheName: "solver" },
          },
        ],
        navigateFallback: "index.html",
        navigateFallbackDenylist: HUB_PATHS,
        // From the first visit on, pages opened later come from the store, so that losing the network does no harm.
        clientsClaim: true,
        cleanupOutdatedCaches: true,
      },
    }),
  ],
});

// Vite reads the default export.
export default defineConfig(({ isSsrBuild }) => (isSsrBuild ? program : app));
