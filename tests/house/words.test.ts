import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { englishWords } from "../../src/words/english/index.ts";
import { shellWords } from "../../src/words/english/shell/index.ts";
import { shownLiterals } from "./shown-literals.ts";
import { filesUnder, sourceFiles } from "./source-files.ts";

/** What is drawn before the words of the other screens are there. */
const FIRST_LOAD = [
  ...[
    "src/app/app.tsx",
    "src/app/main.tsx",
    "src/app/pages/shelf-page.tsx",
    "src/app/shelf",
    "src/app/parts",
  ],
  ...["src/app/help/help-button.tsx", "src/app/help/help-panel.tsx", "src/app/update"],
  ...["src/app/theme", "src/app/session", "src/app/language"],
];

/** Loaded when a file is given to the shelf, with the words of all screens. */
const LATER = "src/app/shelf/take-in.ts";

const isUnder = (path: string, folder: string) => path === folder || path.startsWith(`${folder}/`);
const isUnderAny = (path: string, folders: readonly string[]) =>
  folders.some((folder) => isUnder(path, folder));

describe("the words", () => {
  const files = sourceFiles().filter(({ path }) => !isUnder(path, "src/words"));
  const shownIn = (path: string, text: string) =>
    shownLiterals(path, text).map((one) => `${path}:${one.line} ${one.text}`);

  it("[WRD1] stand in one folder: no text that a person reads is written anywhere else", () => {
    expect(files.length).toBeGreaterThan(100);
    const shown = files.flatMap(({ path, text }) => shownIn(path, text));
    expect(shown).toEqual([]);
  });

  it("[WRD1] are put in by whoever shows them: core and io hand on what there is to say", () => {
    // A mend writes text into the author's own file, in the language in use.
    const mends = "src/core/place/translation-step.ts";
    const saying = files.flatMap(({ path, text }) =>
      /^src\/(core|io)\//.test(path) && /\b(inWords|inMarkedWords|words)\(/.test(text) ? [path] : [],
    );
    expect(saying).toEqual([mends]);
  });

  it("[WRD1] a text that a person reads is told from one that only machines read", () => {
    const found = (source: string) =>
      shownLiterals(source.includes("<Value>") ? "example.ts" : "example.tsx", source).map(
        ({ text }) => text,
      );
    for (const [source, text] of [
      ["<p>Waits</p>", "Waits"],
      ['<p aria-label="Crew" />', "Crew"],
      ['<p title={isOpen ? "open" : label} />', "open"],
      ['<p>{time > 0 ? length : "none"}</p>', "none"],
      ['const why = "nobody is there";', "nobody is there"],
      [`const late = \`\${time} behind\`;`, "… behind"],
      ['throw new UnusableInputError("There is no such file.");', "There is no such file."],
      ['const whyNot = () => "the walk is closed";', "the walk is closed"],
      ['const of = <Value>(value: Value) => ignored("nothing is there");', "nothing is there"],
      ['throw new AnswerError(400, "bad-body", "Send one event.");', "Send one event."],
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
      'const headers = { "content-type": "application/json; charset=utf-8" };',
      'const status = "400 Bad Request";',
      `const credential = \`Bearer \${token}\`;`,
    ])
      expect(found(source), source).toEqual([]);
  });
});

describe("the keys of the words", () => {
  // The functions of messages use some themselves; the languages only define them.
  const files = sourceFiles().filter(({ path }) => !/^src\/words\/[a-z]+\//.test(path));
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

  it("[WRD1] stand once each, in one part of the words", () => {
    const written = filesUnder("src/words/english").flatMap((path) =>
      [...readFileSync(path, "utf8").matchAll(/^ {2}"([a-z-]+\/[a-z0-9-]+)":/gm)].map(([, key]) => key ?? ""),
    );
    expect(written.toSorted()).toEqual(keys.toSorted());
  });

  it("[WRD1] what the first screen says comes with the first load", () => {
    const first = files.filter(({ path }) => isUnderAny(path, FIRST_LOAD) && path !== LATER);
    expect(first.length).toBeGreaterThan(20);
    const needed = first.flatMap(({ text }) => [
      ...keys.filter((key) => literal(text).has(key)),
      ...keys.filter((key) => patterns(text).some((pattern) => pattern.test(key))),
    ]);
    expect(needed.length).toBeGreaterThan(50);
    expect(needed.filter((key) => !Object.hasOwn(shellWords, key))).toEqual([]);
  });
});
