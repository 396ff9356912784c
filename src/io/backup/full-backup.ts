import type { Entry, LineProblem, TakenIn } from "../../core/log/index.ts";
import { mergeEntries, readEntry, writeLines } from "../../core/log/index.ts";
import type { Instant } from "../../core/units/index.ts";
import { formatInstant, parseInstant } from "../../core/units/index.ts";
import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { ProcedureShelf, RemarkStore, RevisionNote, WalkStore } from "../store/index.ts";
import { troubleMessage } from "../store/index.ts";
import { BACKUP_FORMAT, objectIn } from "./file-kind.ts";

/** Where a backup is taken from and restored to. */
export interface BackupParts {
  readonly log: Pick<WalkStore, "walks" | "read" | "seal" | "takeIn">;
  readonly shelf: Pick<ProcedureShelf, "procedures" | "addProcedure">;
  readonly remarks: Pick<RemarkStore, "remarks" | "addRemarks">;
}

/** What restoring a backup came to. */
export interface RestoredBackup {
  readonly procedures: {
    readonly added: number;
    /** Were here already. */
    readonly known: number;
  };
  readonly entries: TakenIn;
  /** Lines that could not be used, and what is missing; all else was taken in. Line 0 speaks of the whole file. */
  readonly problems: readonly LineProblem[];
}

/**
 * Everything on this device as one text, JSON Lines: a header, each procedure exactly as imported, each remark, then all entries, walk
 * by walk in the order of the log. The device's own id is not in it: two devices must never enter under one source.
 */
export async function writeBackup({ log, shelf, remarks }: BackupParts, now: Instant): Promise<string> {
  const procedures = await shelf.procedures();
  const logs: string[] = [];
  let count = 0;
  for (const { walk } of await log.walks()) {
    await log.seal(walk);
    const { ordered } = mergeEntries((await log.read(walk, 0)).entries);
    count += ordered.length;
    logs.push(writeLines(ordered));
  }
  const header = {
    format: BACKUP_FORMAT,
    made: formatInstant(now),
    procedures: procedures.length,
    entries: count,
  };
  const shelfLines = procedures.map(({ text, importedAt, saved }) => ({
    procedure: { text, importedAt: formatInstant(importedAt), ...(saved && { saved }) },
  }));
  const remarkLines = (await remarks.remarks(null)).map((remark) => ({ remark }));
  return (
    [header, ...shelfLines, ...remarkLines].map((line) => `${JSON.stringify(line)}\n`).join("") +
    logs.join("")
  );
}

/** What the file of a backup is called. */
export function backupFileName(now: Instant): string {
  return `tetherline-${formatInstant(now).slice(0, 16).replaceAll(":", "")}.backup.jsonl`;
}

/** Merges a backup into what is here; nothing here is changed or lost, and restoring it again adds nothing. */
export async function restoreBackup(
  { log, shelf, remarks }: BackupParts,
  text: string,
): Promise<RestoredBackup> {
  const [headLine = "", ...lines] = (text.startsWith("\uFEFF") ? text.slice(1) : text).split("\n");
  const header = objectIn(headLine);
  if (header?.["format"] !== BACKUP_FORMAT) {
    const entries = { added: 0, known: 0, restamped: [], conflicting: [] };
    return {
      procedures: { added: 0, known: 0 },
      entries,
      problems: [{ line: 1, problem: headProblem(header) }],
    };
  }
  const problems: LineProblem[] = [];
  const entries: Entry[] = [];
  const procedures = { added: 0, known: 0 };
  let procedureLines = 0;
  for (const [index, content] of lines.entries()) {
    if (content.trim() === "") continue;
    const value = objectIn(content);
    let problem: Message | null;
    if (value && Object.hasOwn(value, "procedure")) {
      procedureLines += 1;
      const added = await addProcedure(shelf, value["procedure"]);
      problem = added.problem;
      if (added.kind) procedures[added.kind] += 1;
    } else if (value && Object.hasOwn(value, "remark")) {
      problem = await addRemark(remarks, value["remark"]);
    } else {
      const read = readEntry(value);
      problem = read.problem;
      if (read.entry) entries.push(read.entry);
    }
    if (problem !== null) problems.push({ line: index + 2, problem });
  }
  const lost = [
    ...missing(header["procedures"], procedureLines, "procedures"),
    ...missing(header["entries"], entries.length, "entries"),
  ];
  return { procedures, entries: await log.takeIn(entries), problems: [...problems, ...lost] };
}

function headProblem(header: Readonly<Record<string, unknown>> | null): Message {
  const format = header?.["format"];
  return typeof format === "string" && format.startsWith("tetherline.backup/")
    ? message("backup/newer")
    : message("backup/not-a-backup");
}

function missing(told: unknown, found: number, what: "procedures" | "entries"): LineProblem[] {
  if (typeof told !== "number" || told <= found) return [];
  return [{ line: 0, problem: message(`backup/${what}-missing`, { told, found }) }];
}

async function addProcedure(
  shelf: BackupParts["shelf"],
  value: unknown,
): Promise<{ readonly kind: "added" | "known" | null; readonly problem: Message | null }> {
  const { text, importedAt, saved } = (typeof value === "object" && value !== null ? value : {}) as Record<
    string,
    unknown
  >;
  if (typeof text !== "string") return { kind: null, problem: message("backup/no-text") };
  const at = typeof importedAt === "string" ? parseInstant(importedAt) : null;
  const added = await shelf.addProcedure(text, at ?? undefined, noteOf(saved) ?? undefined);
  if (added.kind === "refused") {
    const why = added.findings[0]?.message ?? message("walk/empty-procedure");
    return { kind: null, problem: message("walk/unusable-procedure", { why }) };
  }
  if (added.kind === "not-kept")
    return { kind: null, problem: message("backup/not-kept", { why: troubleMessage(added.reason) }) };
  return { kind: added.kind, problem: null };
}

/** Puts back a remark, or says why that cannot be done. */
async function addRemark(remarks: BackupParts["remarks"], value: unknown): Promise<Message | null> {
  // The reader of remarks is no part of the first load.
  const { readRemark } = await import("../../core/remarks/index.ts");
  const read = readRemark(value);
  if (!read.remark) return read.problem;
  const added = await remarks.addRemarks([read.remark]);
  return added.kind === "kept" ? null : message("backup/not-kept", { why: troubleMessage(added.reason) });
}

/** Who saved a revision and why, as a backup has it; `null` where it does not say both. */
function noteOf(value: unknown): RevisionNote | null {
  if (typeof value !== "object" || value === null) return null;
  const { by, why } = value as Readonly<Record<string, unknown>>;
  return typeof by === "string" && typeof why === "string" ? { by, why } : null;
}
