import type { LineProblem } from "../../core/log/index.ts";
import { importWalkLog, kindOfText, restoreBackup } from "../../io/backup/index.ts";
import type { GivenFile } from "../../io/browser-files/index.ts";
import type { DeviceStore } from "../../io/store/index.ts";
import { troubleMessage } from "../../io/store/index.ts";
import { inWords, words } from "../../words/index.ts";
import { wholeLanguage } from "../language/index.ts";
import type { OutsideFile } from "../outside-files/index.ts";
import { keepOutside } from "../outside-files/index.ts";

const MOST_LINES = 6;

/**
 * Imports the files that the reader chose: procedures, logs of walks, backups. Returns a sentence on the result for
 * each. What is to be looked at and not taken in is opened at its path.
 */
export async function takeIn(
  store: DeviceStore,
  files: readonly GivenFile[],
  open: (path: string) => void,
): Promise<readonly string[]> {
  // What is said of a file is no part of what the first load can say.
  await wholeLanguage();
  if (files.length === 0) return [words("shelf/nothing-given")];
  const lines: string[] = [];
  for (const { name, text, problem } of files) {
    const said =
      text === null
        ? [inWords(problem)]
        : kindOfText(text) === "extract"
          ? openedExtract({ name: inWords(name), text }, open)
          : await takeInText(store, text);
    lines.push(...said.map((sentence) => words("shelf/of-file", { file: inWords(name), what: sentence })));
  }
  return lines;
}

function openedExtract(file: OutsideFile, open: (path: string) => void): readonly string[] {
  open(`/extract/${keepOutside(file)}`);
  return [words("shelf/extract-opened")];
}

async function takeInText(store: DeviceStore, text: string): Promise<readonly string[]> {
  switch (kindOfText(text)) {
    case "procedure":
      return takeInProcedure(store, text);
    case "log": {
      const log = await importWalkLog(store.log, text);
      return [
        words("shelf/log-taken-in", { added: log.added, known: log.known, walks: log.walks.length }),
        ...(log.conflicting.length ? [words("shelf/conflicting", { count: log.conflicting.length })] : []),
        ...leftOutWords(log.problems),
        ...(log.problems.length > MOST_LINES
          ? [words("shelf/more-lines-left-out", { count: log.problems.length - MOST_LINES })]
          : []),
      ];
    }
    case "remarks":
      return (await import("../remarks/index.ts")).takeInRemarks(store, text);
    case "surprises":
      return (await import("../train/index.ts")).takeInSurprises(text);
    case "backup":
      return restoredWords(await restoreBackup(store, text));
    default:
      return [words("shelf/unknown-file")];
  }
}

function restoredWords(restored: Awaited<ReturnType<typeof restoreBackup>>): readonly string[] {
  const { problems } = restored;
  return [
    words("shelf/backup-taken-in", {
      procedures: restored.procedures.added,
      entries: restored.entries.added,
    }),
    ...leftOutWords(problems),
  ];
}

/** Which lines were left out, and why: the first of them. */
function leftOutWords(problems: readonly LineProblem[]): readonly string[] {
  return problems
    .slice(0, MOST_LINES)
    .map(({ line, problem }) => words("shelf/line-left-out", { line, why: inWords(problem) }));
}

async function takeInProcedure(store: DeviceStore, text: string): Promise<readonly string[]> {
  const added = await store.shelf.addProcedure(text);
  switch (added.kind) {
    case "added":
      return [words("shelf/procedure-taken-in", { title: added.procedure.title })];
    case "known":
      return [words("shelf/procedure-known", { title: added.procedure.title })];
    case "not-kept":
      return [inWords(troubleMessage(added.reason))];
    case "refused":
      return [
        words("shelf/procedure-refused"),
        ...added.findings
          .filter(({ level }) => level === "error")
          .slice(0, MOST_LINES)
          .map(({ message, position }) =>
            position
              ? words("shelf/finding-at-line", { line: position.line, finding: message })
              : inWords(message),
          ),
      ];
  }
}
