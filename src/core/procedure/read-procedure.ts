import { message } from "../../words/index.ts";
import type { Finding } from "./finding.ts";
import { finding, hasErrors } from "./finding.ts";
import { formatKeyFindings } from "./format-keys.ts";
import { readJsonText } from "./json-text.ts";
import { withoutKnown } from "./known-parts.ts";
import { referenceFindings } from "./reference-findings.ts";
import type { Procedure, ProcedureFile } from "./schema.ts";
import { FORMAT, procedureSchema } from "./schema.ts";
import { schemaFindings } from "./schema-findings.ts";
import { SIZE_LIMITS, sizeFindings } from "./size-findings.ts";
import { wordsInShownOrder } from "./words-in-shown-order.ts";

/** The result of reading a procedure. */
export interface ReadProcedure {
  /** The procedure; `null` when a finding is an error. */
  readonly procedure: Procedure | null;
  /** The procedure as written, to be kept and passed on; `null` when a finding is an error. */
  readonly file: ProcedureFile | null;
  readonly findings: readonly Finding[];
  /** Returns the findings with line and column filled in, where the text of the file is known. */
  locate(findings: readonly Finding[]): Finding[];
}

type Parsed = Omit<ReadProcedure, "locate">;

const refused = (findings: readonly Finding[]): Parsed => ({ procedure: null, file: null, findings });

const VERSION = /^tetherline\.procedure\/(\d+)$/;
/** The newest version that is read. */
const READ_VERSION = Number(VERSION.exec(FORMAT)?.[1]);

/**
 * Returns a refusal when the file has another format or a newer version of this one ([PRO11]), `null` otherwise.
 */
function formatFinding(value: unknown): Finding | null {
  const format =
    typeof value === "object" && value !== null ? (value as { format?: unknown }).format : undefined;
  if (typeof format !== "string") return null;
  const version = VERSION.exec(format)?.[1];
  if (version === undefined) {
    return finding(
      "error",
      "file/other-format",
      "/format",
      message("file/other-format", { format: format.slice(0, 60), read: FORMAT }),
    );
  }
  if (Number(version) <= READ_VERSION) return null;
  const newer = message("file/newer-version", { version, read: READ_VERSION });
  return finding("error", "file/newer-version", "/format", newer);
}

/** Reads a procedure from a JSON value of any shape and reports all errors together ([PRO10]). Never throws. */
export function parseProcedure(value: unknown): Parsed {
  const otherFormat = formatFinding(value);
  if (otherFormat) return refused([otherFormat]);
  const oversize = sizeFindings(value);
  if (oversize.length > 0) return refused(oversize);
  const parsed = procedureSchema.safeParse(value);
  const findings = [
    ...(parsed.success ? [] : schemaFindings(value, parsed.error)),
    ...formatKeyFindings(value),
    ...referenceFindings(value),
  ];
  const isSound = parsed.success && !hasErrors(findings);
  return {
    procedure: isSound ? wordsInShownOrder(parsed.data, value as ProcedureFile) : null,
    file: isSound ? (value as ProcedureFile) : null,
    findings,
  };
}

/**
 * Returns a JSON value as a procedure file when its shape is right, even if it refers to things that do not exist. Such
 * a file can be changed, though not planned. Returns `null` for any other shape. What it shares with a file that is `known` to be right is
 * not looked at again.
 */
export function procedureFileOf(value: unknown, known: ProcedureFile | null = null): ProcedureFile | null {
  if (formatFinding(value) || sizeFindings(value).length > 0) return null;
  if (formatKeyFindings(value).length > 0) return null;
  const unknown = known ? withoutKnown(value, known) : value;
  return procedureSchema.safeParse(unknown).success ? (value as ProcedureFile) : null;
}

/** Reads a procedure from the text of its file. Every finding has its line and column. Never throws. */
export function readProcedure(text: string): ReadProcedure {
  const bytes = new TextEncoder().encode(text).length;
  if (bytes > SIZE_LIMITS.bytes) {
    const oversize = message("file/too-many-bytes", {
      size: bytes / 1024 / 1024,
      most: SIZE_LIMITS.bytes / 1024 / 1024,
    });
    return {
      ...refused([finding("error", "file/too-large", "", oversize)]),
      locate: (findings) => [...findings],
    };
  }
  const json = readJsonText(text);
  const locate = (findings: readonly Finding[]) =>
    findings.map((one) => ({ ...one, position: one.position ?? json.positionOf(one.pointer) }));
  if (json.value === undefined) return { ...refused(json.findings), locate };
  const read = parseProcedure(json.value);
  const findings = locate([...json.findings, ...read.findings]);
  return hasErrors(findings) ? { ...refused(findings), locate } : { ...read, findings, locate };
}
