import { areSurprises } from "../../core/training/index.ts";

/** The format that the first line of a backup names. */
export const BACKUP_FORMAT = "tetherline.backup/1";

/** What a text given to the app is: a procedure or a broken one, the log of walks, an extract of one, remarks, surprises, a backup, or none of these. */
export type FileKind = "procedure" | "log" | "extract" | "remarks" | "surprises" | "backup" | "unknown";

const SURPRISES = "tetherline.surprises/";

/**
 * What a text is by its looks; whether it is sound is for its reader to say. A text that is one JSON object is taken for
 * a procedure, or for a log of one line when it says so.
 */
export function kindOfText(text: string): FileKind {
  const trimmed = text.replace(/^\uFEFF/, "").trimStart();
  if (!trimmed.startsWith("{")) return "unknown";
  const first = objectIn(trimmed.split("\n", 1)[0] ?? "");
  const format = typeof first?.["format"] === "string" ? first["format"] : "";
  for (const kind of ["backup", "extract", "remark"] as const) {
    if (format.startsWith(`tetherline.${kind}/`)) return kind === "remark" ? "remarks" : kind;
  }
  if (first && Object.hasOwn(first, "specversion")) return "log";
  // A procedure may be long, and is read once more by whoever takes it in.
  return trimmed.includes(SURPRISES) && areSurprises(objectIn(trimmed)) ? "surprises" : "procedure";
}

/** The JSON object that a line is; `null` when it is none. */
export function objectIn(line: string): Readonly<Record<string, unknown>> | null {
  try {
    const value: unknown = JSON.parse(line);
    return typeof value === "object" && value !== null && !Array.isArray(value)
      ? (value as Record<string, unknown>)
      : null;
  } catch {
    return null;
  }
}
