import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { TaggedFile } from "./rule-tags.ts";
import { ruleFindings } from "./rule-tags.ts";
import { filesUnder } from "./source-files.ts";

/** A tag in brackets, written so that this file itself cites none. */
const cite = (tag: string) => `[${tag}]`;
const rules = (text: string, path = "src/core/a/RULES.md"): TaggedFile => ({ path, text });
const test = (title: string, path = "tests/core/a.test.ts"): TaggedFile => ({
  path,
  text: `it("${title} holds", () => {});`,
});

describe("rules and the tests that quote them", () => {
  const sound = [rules(`# A\n\n- ${cite("ABC1")} One.\n`), test(cite("ABC1"))];

  it("are in order when each tag is defined once and tested", () => {
    expect(ruleFindings(sound)).toEqual([]);
    expect(
      ruleFindings([rules(`## ${cite("ABC")} All of it\n\n- **${cite("ABC1")}** One.\n`), ...sound.slice(1)]),
    ).toEqual([`${cite("ABC")} is defined in src/core/a/RULES.md and no test title cites it`]);
  });

  it.each([
    ["a docstring", { path: "src/core/a/a.ts", text: `/** As ${cite("ABC2")} has it. */` }],
    ["a test title", test(`${cite("ABC1")} ${cite("ABC2")}`)],
    ["a document", { path: "DEVELOPERS.md", text: `See ${cite("ABC2")}.` }],
    ["another rule", rules(`Not as in ${cite("ABC2")}.`, "src/core/b/RULES.md")],
    [
      "a row of a table of titles",
      { path: "tests/b.test.ts", text: `it.each([\n  ["ABC2", 1],\n])("${cite("%s")} x", () => {});` },
    ],
  ])("find a tag that only %s cites", (_where, file) => {
    expect(ruleFindings([...sound, file])).toEqual([
      `${cite("ABC2")} is cited in ${file.path} and defined in no RULES.md`,
    ]);
  });

  it("find a word in a title that is no rule, and let one stand elsewhere", () => {
    const code = { path: "tests/b.test.ts", text: `expect(walks).toEqual(${cite("WALK")});` };
    expect(ruleFindings([...sound, code])).toEqual([]);
    expect(ruleFindings([...sound, test(cite("WALK"))])).toEqual([
      `${cite("WALK")} is cited in tests/core/a.test.ts and defined in no RULES.md`,
    ]);
  });

  it("find a tag that is defined twice, in one file or in two", () => {
    const again = rules(`- ${cite("ABC1")} Otherwise.`, "src/core/b/RULES.md");
    expect(ruleFindings([...sound, again])).toEqual([
      `${cite("ABC1")} is defined more than once: src/core/a/RULES.md, src/core/b/RULES.md`,
    ]);
    expect(ruleFindings([rules(`- ${cite("ABC1")} A.\n- ${cite("ABC1")} B.\n`), ...sound.slice(1)])).toEqual([
      `${cite("ABC1")} is defined more than once: src/core/a/RULES.md, src/core/a/RULES.md`,
    ]);
  });

  it("find a tag that no test title cites, whatever a comment in a test or a string in the source says", () => {
    const untested = [`${cite("ABC1")} is defined in src/core/a/RULES.md and no test title cites it`];
    const definition = sound.slice(0, 1);
    expect(ruleFindings(definition)).toEqual(untested);
    const comment = { path: "tests/b.test.ts", text: `/** ${cite("ABC1")} */` };
    const source = { path: "src/b.ts", text: `const a = "${cite("ABC1")} a";` };
    expect(ruleFindings([...definition, comment, source])).toEqual(untested);
  });
});

describe("the rules of this project", () => {
  const documents = readdirSync(".").filter((name) => name.endsWith(".md"));
  const paths = [...documents, ...["src", "tests", "procedures"].flatMap(filesUnder)];
  const files = paths
    .filter((path) => /\.(tsx?|mjs|md)$/.test(path))
    .map((path): TaggedFile => ({ path, text: readFileSync(path, "utf8") }));

  it("are read from the checkout", () => {
    expect(files.filter(({ path }) => path.endsWith("RULES.md")).length).toBeGreaterThan(5);
    expect(files.length).toBeGreaterThan(500);
  });

  it("are each defined once, and cited by a test", () => {
    expect(ruleFindings(files)).toEqual([]);
  });
});
