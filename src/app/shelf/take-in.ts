import { importWalkLog, kindOfText, restoreBackup } from "../../io/backup/index.ts";
import type { GivenFile } from "../../io/browser-files/index.ts";
import type { DeviceStore } from "../../io/store/index.ts";
import { troubleSentence } from "../../io/store/index.ts";

const count = (many: number, one: string, more = `${one}s`) => `${many} ${many === 1 ? one : more}`;

const MOST_LINES = 6;

/** Takes in files that the reader gave: procedures, logs of walks, backups. Says in sentences what each came to. */
export async function takeIn(store: DeviceStore, files: readonly GivenFile[]): Promise<readonly string[]> {
  if (files.length === 0) return ["There is nothing to take in: no file and no text."];
  const lines: string[] = [];
  for (const { name, text, problem } of files) {
    const said = text === null ? [problem] : await takeInText(store, text);
    lines.push(...said.map((sentence) => `${name}: ${sentence}`));
  }
  return lines;
}

async function takeInText(store: DeviceStore, text: string): Promise<readonly string[]> {
  switch (kindOfText(text)) {
    case "procedure":
      return takeInProcedure(store, text);
    case "log": {
      const log = await importWalkLog(store.log, text);
      return [
        `${count(log.added, "entry", "entries")} taken in, ${log.known} known already, for ${count(log.walks.length, "walk")}.`,
        ...(log.conflicting.length
          ? [`${log.conflicting.length} left out: other entries have the same source and id.`]
          : []),
        ...log.problems
          .slice(0, MOST_LINES)
          .map(({ line, problem }) => `Line ${line} was left out: ${problem}.`),
        ...(log.problems.length > MOST_LINES
          ? [`${log.problems.length - MOST_LINES} more lines were left out.`]
          : []),
      ];
    }
    case "backup":
      return restoredWords(await restoreBackup(store, text));
    case "unknown":
      return ["It is neither a procedure, nor the log of a walk, nor a backup of this app."];
  }
}

function restoredWords(restored: Awaited<ReturnType<typeof restoreBackup>>): readonly string[] {
  const { problems } = restored;
  return [
    `${count(restored.procedures.added, "procedure")} and ${count(restored.entries.added, "entry", "entries")} taken in; the rest was here already.`,
    ...problems.slice(0, MOST_LINES).map(({ line, problem }) => `Line ${line} was left out: ${problem}.`),
  ];
}

async function takeInProcedure(store: DeviceStore, text: string): Promise<readonly string[]> {
  const added = await store.shelf.addProcedure(text);
  switch (added.kind) {
    case "added":
      return [`“${added.procedure.title}” is on the shelf.`];
    case "known":
      return [`“${added.procedure.title}” was on the shelf already.`];
    case "not-kept":
      return [troubleSentence(added.reason)];
    case "refused":
      return [
        "It cannot be used as a procedure.",
        ...added.findings
          .filter(({ level }) => level === "error")
          .slice(0, MOST_LINES)
          .map(({ message, position }) => (position ? `Line ${position.line}: ${message}` : message)),
      ];
  }
}
