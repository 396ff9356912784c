import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { LineProblem } from "../log/index.ts";
import { jsonOf } from "../log/index.ts";
import type { Remark } from "./remark.ts";
import { REMARK_FORMAT, remarkSchema } from "./remark.ts";

/** The most remarks that are read from one file. */
export const MOST_REMARKS = 10_000;

/** What was read from a file of remarks. */
export interface ReadRemarks {
  readonly remarks: readonly Remark[];
  readonly problems: readonly LineProblem[];
}

/** Reads remarks, one a line. Empty lines are passed over; a line that is no remark is told, and the others are read. */
export function readRemarks(text: string): ReadRemarks {
  const remarks: Remark[] = [];
  const problems: LineProblem[] = [];
  for (const [index, line] of withoutMark(text).split("\n").entries()) {
    if (line.trim() === "") continue;
    if (remarks.length === MOST_REMARKS) {
      problems.push({ line: index + 1, problem: message("remarks/too-many", { most: MOST_REMARKS }) });
      break;
    }
    const read = readRemark(jsonOf(line));
    if (read.remark) remarks.push(read.remark);
    else problems.push({ line: index + 1, problem: read.problem });
  }
  return { remarks, problems };
}

/** Reads one remark, or says why it is none. */
export function readRemark(
  value: unknown,
):
  | { readonly remark: Remark; readonly problem: null }
  | { readonly remark: null; readonly problem: Message } {
  if (typeof value !== "object" || value === null)
    return { remark: null, problem: message("remarks/no-json") };
  const { format } = value as { readonly format?: unknown };
  if (typeof format === "string" && format !== REMARK_FORMAT && format.startsWith("tetherline.remark/"))
    return { remark: null, problem: message("remarks/newer") };
  const read = remarkSchema.safeParse(value);
  if (!read.success) {
    const [issue] = read.error.issues;
    const key = issue?.code === "unrecognized_keys" ? issue.keys[0] : issue?.path[0];
    return { remark: null, problem: message("remarks/unusable", { key: String(key ?? "format") }) };
  }
  const lack = lackOf(read.data);
  return lack ? { remark: null, problem: lack } : { remark: read.data, problem: null };
}

/** What a remark of its kind must have, where it has not. */
function lackOf({ kind, says, to }: Remark): Message | null {
  if (kind === "comment" && says.trim() === "") return message("remarks/says-nothing");
  const isAnswer = kind === "resolved" || kind === "reopened" || kind === "withdrawn";
  return isAnswer && to === null ? message("remarks/names-nothing") : null;
}

/** Writes remarks, one a line, by their times and then their ids: the same set gives the same text. */
export function writeRemarks(remarks: readonly Remark[]): string {
  return inOrder(remarks)
    .map((remark) => `${JSON.stringify(remark)}\n`)
    .join("");
}

/** Remarks by their times and then their ids. */
export const inOrder = (remarks: readonly Remark[]): readonly Remark[] =>
  remarks.toSorted((a, b) => keyOf(a).localeCompare(keyOf(b), "en"));

/** Times of several zones compare as instants. */
const keyOf = ({ at, id }: Remark) => `${new Date(at).toISOString()} ${id}`;

const withoutMark = (text: string) => (text.startsWith("\uFEFF") ? text.slice(1) : text);
