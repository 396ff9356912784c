import { message } from "../../words/index.ts";
import { errorAt } from "./error-at.ts";
import type { Finding } from "./finding.ts";
import type { RawPart } from "./raw-file.ts";
import { entries, member, textOf } from "./raw-file.ts";
import { FORMATS } from "./schema.ts";

/** The way to a key: keys of objects, and `*` for every entry of a list. */
type KeyPath = readonly string[];

const IN_STEPS: readonly KeyPath[] = [
  ...[
    "needs",
    "sets",
    "notBefore",
    "doneBy",
    "or",
    "check",
    "pictures",
    "refs",
    "brief",
    "scene",
    "from",
  ].map((key) => [key]),
  ["after", "*", "within"],
  ["moves", "*", "to", "crews"],
  ["records", "*", "supply"],
];

const IN_TASKS: readonly KeyPath[] = [
  ["worth"],
  ["order"],
  ["brief"],
  ...IN_STEPS.map((path) => ["steps", "*", ...path]),
];

/** Every key that format 2 has and format 1 has not ([PRO11]). */
const KEYS_OF_2: readonly KeyPath[] = [
  ["states"],
  ["pictures"],
  ["site"],
  ["language"],
  ["words"],
  ["limits", "apart"],
  ["routes", "*", "needs"],
  ...["hands", "mass", "size"].map((key) => ["items", "*", key]),
  ["items", "*", "start", "crews"],
  ["items", "*", "end", "crews"],
  ["watches", "*", "time"],
  ...IN_TASKS.map((path) => ["tasks", "*", ...path]),
  ["contingencies", "*", "when"],
  ...IN_TASKS.map((path) => ["contingencies", "*", "tasks", "*", ...path]),
];

function partsAt(part: RawPart, path: KeyPath): RawPart[] {
  const [key, ...rest] = path;
  if (key === undefined) return part.value === undefined ? [] : [part];
  return key === "*"
    ? entries(part).flatMap((entry) => partsAt(entry, rest))
    : partsAt(member(part, key), rest);
}

const keysOf2In = (file: unknown): RawPart[] =>
  KEYS_OF_2.flatMap((path) => partsAt({ value: file, path: [] }, path));

/** An error for each key of format 2 in a file that says it is of format 1, with the repair of the format line. */
export function formatKeyFindings(file: unknown): Finding[] {
  const [older, newer] = FORMATS;
  if (textOf(member({ value: file, path: [] }, "format")) !== older) return [];
  return keysOf2In(file).map((part) => {
    const said = message("file/key-of-newer-format", {
      key: String(part.path.at(-1)),
      newer,
      older,
    });
    return errorAt(part, "file/key-of-newer-format", said, {
      repair: [{ op: "replace", path: "/format", value: newer }],
    });
  });
}

/**
 * A file in the oldest format, from its own on, that has every key it uses ([PRO11]): a file of format 1 that changes
 * brought a key of format 2 into. The same object when its own format has them all.
 */
export function inFormatOfItsKeys<File extends object>(file: File): File {
  const [older, newer] = FORMATS;
  const isOlder = (file as { readonly format?: unknown }).format === older;
  return isOlder && keysOf2In(file).length > 0 ? { ...file, format: newer } : file;
}
