import { describe, expect, it } from "vitest";
import { englishWords } from "../../src/words/english/index.ts";
import { shellWords } from "../../src/words/english/shell/index.ts";
import { shownLiterals } from "./shown-literals.ts";
import { sourceFiles } from "./source-files.ts";

/** Where the words have not all come to `src/words` yet. This list shrinks to nothing; nothing is ever added to it. */
const NOT_YET = [
  ...["src/core/plan", "src/core/walk", "src/core/review", "src/core/log", "src/io", "src/hub"],
  // A sentence in the log, a step's text in a mend, and what becomes a folder of its own.
  ...["src/cli/played-walk.ts", "src/core/place/whereabouts.ts", "src/core/procedure/changed-file.ts"],
];

/** What is drawn before the words of the other screens are there. */
const FIRST_LOAD = [
  ...[
    "src/app/app.tsx",
    "src/app/main.tsx",
    "src/app/pages/shelf-page.tsx",
    "src/app/shelf",
    "src/app/parts",
  ],
  ...["src/app/update", "src/app/theme", "src/app/session", "src/app/language"],
];

const isUnder = (path: string, folder: string) => path === folder || path.startsWith(`${folder}/`);
const isUnderAny = (path: string, folders: readonly string[]) =>
  folders.some((folder) => isUnder(path, folder));

describe("the words", () => {
  const files = sourceFiles().filter(({ path }) => !isUnder(path, "src/words"));
  const shownIn = (path: string, text: string) =>
    shownLiterals(path, text).map((one) => `${path}:${one.line} ${one.text}`);

  it("[WRD1] stand in one folder: no text that a person reads is written anywhere else", () => {
    expect(files.length).toBeGreaterThan(100);
    const shown = files.flatMap(({ path, text }) => (isUnderAny(path, NOT_YET) ? [] : shownIn(path, text)));
    expect(shown).toEqual([]);
  });

  it("[WRD1] what has no more of them is taken off the list", () => {
    const left = NOT_YET.filter((folder) =>
      files.some(({ path, text }) => isUnder(path, folder) && shownIn(path, text).length > 0),
    );
    expect(left).toEqual(NOT_YET);
  });

  it("[WRD1] a text that a person reads is told from one that only machines read", () => {
    const found = (source: string) => shownLiterals("example.tsx", source).map(({ text }) => text);
    for (const [source, text] of [
      ["<p>Waits</p>", "Waits"],
      ['<p aria-label="Crew" />', "Crew"],
      ['<p title={isOpen ? "open" : label} />', "open"],
      ['<p>{time > 0 ? length : "none"}</p>', "none"],
      ['const why = "nobody is there";', "nobody is there"],
      [`const late = \`\${time} behind\`;`, "… behind"],
      ['throw new UnusableInputError("There is no such file.");', "There is no such file."],
    ] as const)
      expect(found(source)).toEqual([text]);
    for (const source of [
      '<p className="plain-button wide" />',
      "<p>·</p>",
      'throw new NoServicesError("no services were provided above this screen");',
      'import { a } from "./with a blank.ts";',
      'database.prepare("SELECT a FROM b WHERE c = ?");',
      `const keyOf = (step) => \`task \${step.id}\`;`,
      'const isDark = window.matchMedia("(prefers-color-scheme: dark)");',
      'const shape = <path d="M2 9H38 M2 13H38" />;',
      'type Place = "in the bag" | "at hand";',
    ])
      expect(found(source), source).toEqual([]);
  });
});

describe("the keys of the words", () => {
  const files = sourceFiles().filter(({ path }) => !isUnder(path, "src/words"));
  const keys = Object.keys(englishWords);
  const literal = (text: string) =>
    new Set([...text.matchAll(/"([a-z-]+\/[a-z0-9-]+)"/g)].map(([, key]) => key ?? ""));
  /** Keys that are put together from a code, as a pattern: "follow/phase-…-rehearsal". */
  const patterns = (text: string) =>
    [...text.matchAll(/`([a-z-]+\/[a-z-]*)\$\{[^`]*?\}([a-z-]*)`/g)].map(
      ([, head, tail]) => new RegExp(`^${head}[a-z-]+${tail}$`),
    );

  it("[WRD1] are area and what, in lower case, each used somewhere", () => {
    expect(keys.filter((key) => !/^[a-z]+(-[a-z]+)*\/[a-z]+(-[a-z0-9]+)*$/.test(key))).toEqual([]);
    const used = new Set(files.flatMap(({ text }) => [...literal(text)]));
    const made = files.flatMap(({ text }) => patterns(text));
    expect(keys.filter((key) => !used.has(key) && !made.some((pattern) => pattern.test(key)))).toEqual([]);
  });

  it("[WRD1] what the first screen says comes with the first load", () => {
    const first = files.filter(({ path }) => isUnderAny(path, FIRST_LOAD));
    expect(first.length).toBeGreaterThan(20);
    const needed = first.flatMap(({ text }) => [
      ...keys.filter((key) => literal(text).has(key)),
      ...keys.filter((key) => patterns(text).some((pattern) => pattern.test(key))),
    ]);
    expect(needed.length).toBeGreaterThan(50);
    expect(needed.filter((key) => !Object.hasOwn(shellWords, key))).toEqual([]);
  });
});
