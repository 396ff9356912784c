/** A file of the project, its path from the checkout. */
export interface TaggedFile {
  readonly path: string;
  readonly text: string;
}

/** A numbered tag, such as the first rule of procedures; rules of a whole folder have a word without a number. */
const NUMBERED = /\[([A-Z]{3}\d{1,2})\]/g;
/** A rule is defined by a list item or a heading that begins with its tag. */
const DEFINITION = /^(?:[-*]|#{1,6}) +(?:\*\*)?\[([A-Z]{3}\d{1,2}|[A-Z]{3,})\]/gm;
/** The tags with which a string begins: in a test, its title. */
const TITLE = /["'`]((?:\[(?:[A-Z]{3}\d{1,2}|[A-Z]{3,})\] )+)/g;
const IN_TITLE = /\[([A-Z]+\d*)\]/g;
/** Titles of a table of cases take the tag from a row of the table. */
const TABLE_TITLE = /["'`]\[%s\] /;
const TABLE_ROW = /^\s*\[?\s*"([A-Z]{3}\d{1,2})",/gm;

const isRules = (path: string) => /(^|\/)RULES\.md$/.test(path);
const isTest = (path: string) => path.startsWith("tests/") && /\.tsx?$/.test(path);

function tagsIn(text: string, pattern: RegExp): string[] {
  return [...text.matchAll(pattern)].flatMap(([, tag]) => tag ?? []);
}

/** The tags that the titles of a test file carry. */
function tagsOfTitles(text: string): string[] {
  const titles = tagsIn(text, TITLE).flatMap((tags) => tagsIn(tags, IN_TITLE));
  return TABLE_TITLE.test(text) ? [...titles, ...tagsIn(text, TABLE_ROW)] : titles;
}

/**
 * What is wrong with the rules of a project, one sentence each, with the tag and the file it concerns: a tag that is cited in a
 * file and defined in no RULES.md, a tag that is defined more than once, a tag that is defined and stands in no test title.
 */
export function ruleFindings(files: readonly TaggedFile[]): string[] {
  const definedIn = new Map<string, string[]>();
  const tested = new Set<string>();
  for (const { path, text } of files) {
    if (isRules(path))
      for (const tag of tagsIn(text, DEFINITION)) definedIn.set(tag, [...(definedIn.get(tag) ?? []), path]);
    if (isTest(path)) for (const tag of tagsOfTitles(text)) tested.add(tag);
  }
  const undefinedTags = files.flatMap(({ path, text }) => {
    const cited = new Set([...tagsIn(text, NUMBERED), ...(isTest(path) ? tagsOfTitles(text) : [])]);
    return [...cited]
      .filter((tag) => !definedIn.has(tag))
      .map((tag) => `[${tag}] is cited in ${path} and defined in no RULES.md`);
  });
  const doubled = [...definedIn]
    .filter(([, paths]) => paths.length > 1)
    .map(([tag, paths]) => `[${tag}] is defined more than once: ${paths.join(", ")}`);
  const untested = [...definedIn]
    .filter(([tag]) => !tested.has(tag))
    .map(([tag, [path]]) => `[${tag}] is defined in ${path} and no test title cites it`);
  return [...undefinedTags, ...doubled, ...untested];
}
