import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, normalize } from "node:path";
import { describe, expect, it } from "vitest";
import { HELP } from "../../src/app/help/help-sections.ts";

const app = readFileSync("src/app/frame.tsx", "utf8");

/** The files of the pages that an address of the app leads to, by the name of the page. */
function routedPages(): Map<string, string> {
  const later = readFileSync("src/app/pages/later-pages.ts", "utf8");
  const first = readFileSync("src/app/pages/index.ts", "utf8");
  const files = new Map([
    ...[...later.matchAll(/import\("\.\/([\w-]+\.tsx)"\)\)\.(\w+)/g)].map(
      ([, file = "", page = ""]) => [page, file] as const,
    ),
    ...[...first.matchAll(/export \{ (\w+) \} from "\.\/([\w-]+\.tsx)"/g)].map(
      ([, page = "", file = ""]) => [page, file] as const,
    ),
  ]);
  const drawn = new Set([...app.matchAll(/<(?!Ion)(\w+Page)\b/g)].map(([, page = ""]) => page));
  return new Map(
    [...drawn].map((page) => [page, `src/app/pages/${files.get(page) ?? `${page}, of no file`}`]),
  );
}

/** Printable pages are paper: what they show is explained on the screen that leads to them. */
const PAPER = new Set([
  "PrintPage",
  "PrintReviewPage",
  "PrintPaperPage",
  "PrintComparePage",
  "BriefSheetPage",
]);

/** The text of a file with those of the app's files that it imports, so far down. */
function reachable(file: string, depth: number, seen = new Set<string>()): string {
  if (seen.has(file)) return "";
  seen.add(file);
  const text = readFileSync(file, "utf8");
  if (depth === 0) return text;
  const imported = [...text.matchAll(/from "(\.[^"]+\.tsx?)"/g)]
    .map(([, path = ""]) => normalize(join(dirname(file), path)))
    .filter((path) => path.startsWith("src/app/") && !path.startsWith("src/app/help/"));
  return [text, ...imported.map((path) => reachable(path, depth - 1, seen))].join("\n");
}

/** The screens whose help a text opens. */
const helpIn = (text: string): string[] =>
  [...text.matchAll(/<(?:HelpButton|HelpPanel|ScreenPage)[^>]*?\bscreen="([\w-]+)"/g)].map(
    ([, screen = ""]) => screen,
  );

describe("the help of every screen", () => {
  const pages = routedPages();
  const screens = [...pages].filter(([page]) => !PAPER.has(page));

  it("[HLP1] is looked for on every page that an address leads to", () => {
    expect(pages.size).toBeGreaterThan(18);
    const files = readdirSync("src/app/pages").filter(
      (name) => /-page\.tsx$/.test(name) && name !== "screen-page.tsx",
    );
    expect([...pages.values()].sort()).toEqual(files.map((name) => `src/app/pages/${name}`).sort());
  });

  it.each(screens)("[HLP1] stands a tap away on %s", (_page, file) => {
    // A page opens its help itself, or through the parts that it draws.
    const found = helpIn(readFileSync(file, "utf8"));
    expect(found.length > 0 ? found : helpIn(reachable(file, 3))).not.toEqual([]);
  });

  it("[HLP1] is written for every screen that opens it, and opened somewhere when it is written", () => {
    const opened = new Set(screens.flatMap(([, file]) => helpIn(reachable(file, 3))));
    expect([...opened].sort()).toEqual(Object.keys(HELP).sort());
  });

  it("[HLP1] that a page lacks is found", () => {
    expect(helpIn('<ScreenHead title="x"><HelpMark screen="read" /></ScreenHead>')).toEqual([]);
    expect(helpIn('<ScreenPage\n  screen="review"\n  title={t}>')).toEqual(["review"]);
  });
});
