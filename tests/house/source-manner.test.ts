import { readdirSync, readFileSync } from "node:fs";
import { basename, dirname, matchesGlob } from "node:path";
import { describe, expect, it } from "vitest";
import vitestConfig from "../../vitest.config.ts";
import { filesUnder, sourceFiles } from "./source-files.ts";

const forbiddenNames = /(^|\/)(utils?|helpers?|common|shared|misc)(\.[a-z]+)?(\/|$)|(^|\/)types\.tsx?$/;

/** Code without comments, so that a docstring may say what the code may not do. */
const code = (text: string) => text.replace(/\/\*[\s\S]*?\*\//g, "").replace(/(^|[^:"'`])\/\/.*$/gm, "$1");

const impure: readonly [string, RegExp][] = [
  ["the clock", /\bDate\.now\b|\bnew Date\(\s*\)|\bperformance\.now\b/],
  ["chance", /\bMath\.random\b|\bcrypto\.(randomUUID|getRandomValues)\b/],
  ["the network", /\bfetch\(|\bXMLHttpRequest\b|\bWebSocket\b|\bEventSource\b/],
  ["the machine", /["']node:|\bprocess\.|\brequire\(/],
  [
    "the screen or a store",
    /(?<![-/])\b(document|localStorage|indexedDB|navigator|globalThis)\.|\bwindow\.(document|location|navigator)\b/,
  ],
  ["a timer", /\bset(Timeout|Interval)\(/],
];

const impuritiesOf = (text: string) =>
  impure.filter(([, pattern]) => pattern.test(code(text))).map(([name]) => name);

describe("the manner of the source", () => {
  const files = sourceFiles();

  it("has files to look at", () => {
    expect(files.length).toBeGreaterThan(0);
  });

  it("gives no file or folder a name that says nothing", () => {
    expect(
      [...filesUnder("src"), ...filesUnder("tests")].filter((path) => forbiddenNames.test(path)),
    ).toEqual([]);
    for (const name of ["src/core/utils/a.ts", "src/io/helpers.ts", "src/app/types.ts", "tests/common/x.ts"])
      expect(name).toMatch(forbiddenNames);
  });

  it("re-exports by name and has no default exports", () => {
    const unnamed = /^\s*export\s+(type\s+)?\*|^\s*export\s+default\b/m;
    expect(files.filter(({ text }) => unnamed.test(code(text))).map(({ path }) => path)).toEqual([]);
    expect('export * from "./a.ts";').toMatch(unnamed);
  });

  it("keeps the core pure", () => {
    const core = files.filter(({ path }) => path.startsWith("src/core/"));
    expect(core.length).toBeGreaterThan(0);
    expect(
      core.flatMap(({ path, text }) => impuritiesOf(text).map((what) => `${path} reaches for ${what}`)),
    ).toEqual([]);
  });

  it("would notice what is not pure, and lets a comment speak of it", () => {
    expect(impuritiesOf("const now = Date.now();")).toEqual(["the clock"]);
    expect(impuritiesOf("const today = new Date();")).toEqual(["the clock"]);
    expect(impuritiesOf("const at = new Date(instant).toISOString();")).toEqual([]);
    expect(impuritiesOf('import { readFile } from "node:fs";')).toEqual(["the machine"]);
    expect(
      impuritiesOf("/** Never calls Date.now() or fetch(). */ export const zero = 0; // Math.random"),
    ).toEqual([]);
  });

  it("gives every folder one index of named re-exports", () => {
    // The entries of programs, and pages that are loaded one by one, are reached by their own file.
    const withoutIndex = new Set(["src", "src/app", "src/app/pages"]);
    const folders = new Set(files.map(({ path }) => dirname(path)));
    const indexed = new Set(
      files.filter(({ path }) => basename(path) === "index.ts").map(({ path }) => dirname(path)),
    );
    expect([...folders].filter((folder) => !indexed.has(folder) && !withoutIndex.has(folder))).toEqual([]);
  });

  it("keeps every file short enough to read at once", () => {
    expect(files.filter(({ text }) => text.split("\n").length > 400).map(({ path }) => path)).toEqual([]);
  });
});

describe("the tests", () => {
  const tests = filesUnder("tests").filter((path) => /\.test\.tsx?$/.test(path));

  it("all belong to exactly one project, so that none is silently left out", () => {
    const projects = (vitestConfig.test?.projects ?? []) as {
      test: { name: string; include: string[]; exclude?: string[] };
    }[];
    const isAmong = (path: string, patterns: readonly string[] = []) =>
      patterns.some((pattern) => matchesGlob(path, pattern));
    const owners = (path: string) =>
      projects.filter(({ test }) => isAmong(path, test.include) && !isAmong(path, test.exclude));
    expect(tests.length).toBeGreaterThan(0);
    expect(tests.filter((path) => owners(path).length !== 1)).toEqual([]);
  });

  it("leaves none focused or skipped", () => {
    const all = [...tests, ...filesUnder("tests/browser").filter((path) => path.endsWith(".spec.ts"))];
    const held = /\b(it|test|describe)\.(only|skip|todo|fixme)\b/;
    expect(all.filter((path) => held.test(readFileSync(path, "utf8")))).toEqual([]);
  });
});

/** What `.gitignore` lets lie about, as patterns of names. */
const ignoredByGit = (): readonly string[] =>
  readFileSync(".gitignore", "utf8")
    .split("\n")
    .map((line) => line.trim().replace(/\/$/, ""))
    .filter((line) => line !== "" && !line.startsWith("#"));

describe("the top level", () => {
  it("holds only what people read and what tools insist on", () => {
    const made = [".git", ...ignoredByGit()];
    const belongs = [
      ...["README.md", "DEVELOPERS.md", "src", "tests", "procedures", "android", "ios"],
      ...["package.json", "package-lock.json", "tsconfig.json", "biome.json", ".dependency-cruiser.mjs"],
      ...["vite.config.ts", "vitest.config.ts", "playwright.config.ts", "capacitor.config.ts"],
      ...[".ci", ".gitignore", ".gitattributes"],
    ];
    expect(
      readdirSync(".").filter(
        (name) => !belongs.includes(name) && !made.some((pattern) => matchesGlob(name, pattern)),
      ),
    ).toEqual([]);
  });

  it("starts what ships from the source", () => {
    const { scripts } = JSON.parse(readFileSync("package.json", "utf8")) as {
      scripts: Record<string, string>;
    };
    const started = /\S+\.(ts|mjs)\b/.exec(scripts["start"] ?? "")?.[0];
    expect(started).toMatch(/^src\//);
    expect(filesUnder("src")).toContain(started);
  });

  it("pins every package to one version", () => {
    const manifest = JSON.parse(readFileSync("package.json", "utf8")) as Record<
      string,
      Record<string, string>
    >;
    const versions = Object.values({ ...manifest["dependencies"], ...manifest["devDependencies"] });
    expect(versions.length).toBeGreaterThan(0);
    expect(versions.filter((version) => !/^(npm:@?[\w/-]+@)?\d+\.\d+\.\d+$/.test(version))).toEqual([]);
  });
});
