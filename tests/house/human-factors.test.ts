import { existsSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";

/** A row of a table in the document: what is asked for, where it is met, and what holds it. */
interface Row {
  readonly item: string;
  readonly where: string;
  readonly held: string;
}

/** The rows of every table, without their heads. */
function rowsOf(document: string): Row[] {
  return document.split("\n").flatMap((line) => {
    const cells = line.split("|").map((cell) => cell.trim());
    const [, item = "", where = "", held = ""] = cells;
    return cells.length === 5 && item !== "item" && !/^-+$/.test(item) ? [{ item, where, held }] : [];
  });
}

/** The tests that a cell names: `tests/….test.ts`: “title”. */
const testsIn = (cell: string) =>
  [...cell.matchAll(/`(tests\/[^`]+)`: “([^”]+)”/g)].map(([, path = "", title = ""]) => ({ path, title }));

/** What is wrong with the rows, one line each; `textOf` gives the text of a file, or `null` when there is none. */
function findingsOf(rows: readonly Row[], textOf: (path: string) => string | null): string[] {
  return rows.flatMap(({ item, held }) => {
    const named = testsIn(held);
    const missing = named.flatMap(({ path, title }) => {
      const text = textOf(path);
      if (text === null) return [`${item}: there is no ${path}`];
      return text.includes(`"${title}"`) ? [] : [`${item}: ${path} has no test “${title}”`];
    });
    const mentioned = held.match(/`tests\//g)?.length ?? 0;
    if (mentioned !== named.length) missing.push(`${item}: a test is named without its title`);
    if (named.length === 0 && !/\*\*Not yet\*\*|^Does not apply: ./.test(held))
      missing.push(`${item}: neither a test nor a reason`);
    return missing;
  });
}

describe("the table of human factors", () => {
  const rows = rowsOf(readFileSync("src/app/HUMAN-FACTORS.md", "utf8"));

  it("[HUM1] names tests that exist, or says why there is none", () => {
    expect(rows.length).toBeGreaterThan(35);
    const read = (path: string) => (existsSync(path) ? readFileSync(path, "utf8") : null);
    expect(findingsOf(rows, read)).toEqual([]);
  });

  it("[HUM1] a test that went, was renamed or was never named is found", () => {
    const text = 'it("holds", () => {});';
    const of = (held: string) =>
      findingsOf([{ item: "A", where: "Follow", held }], (path) =>
        path === "tests/a.test.ts" ? text : null,
      );
    expect(of("`tests/a.test.ts`: “holds”")).toEqual([]);
    expect(of("`tests/a.test.ts`: “hold”")).toEqual(["A: tests/a.test.ts has no test “hold”"]);
    expect(of("`tests/b.test.ts`: “holds”")).toEqual(["A: there is no tests/b.test.ts"]);
    expect(of("`tests/a.test.ts` holds it")).toEqual([
      "A: a test is named without its title",
      "A: neither a test nor a reason",
    ]);
    expect(of("")).toEqual(["A: neither a test nor a reason"]);
    expect(of("**Not yet**: nobody did")).toEqual([]);
    expect(of("Does not apply: there is none")).toEqual([]);
  });

  it("[HUM1] every item stands in it once", () => {
    const items = rows.map(({ item }) => item);
    expect(new Set(items).size).toBe(items.length);
  });
});
