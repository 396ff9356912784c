import { HYBRID_TIME_PATTERN } from "./hybrid-clock.ts";

/** An entry as it travels: a CloudEvents 1.0 event in JSON ([LOG1]). Further attributes of newer versions are kept. */
export interface WireEntry {
  readonly specversion: "1.0";
  readonly id: string;
  /** A URI reference, which has no blanks, so `source` and `id` joined by a blank form a unique key. */
  readonly source: string;
  readonly type: string;
  readonly subject: string;
  readonly time: string;
  readonly recordedtime?: string | undefined;
  readonly sequence: string;
  readonly hlc: string;
  /** The `hlc` that the entry was made with, once it was stamped anew. */
  readonly hlcmade?: string | undefined;
  readonly actor?: string | undefined;
  readonly datacontenttype?: string | undefined;
  readonly data?: unknown;
  readonly [attribute: string]: unknown;
}

type Check = (value: string) => boolean;

const filled =
  (longest: number): Check =>
  (value) =>
    value.length > 0 && value.length <= longest;
const like =
  (pattern: RegExp): Check =>
  (value) =>
    pattern.test(value);

const REQUIRED: readonly (readonly [attribute: keyof WireEntry & string, check: Check])[] = [
  ["specversion", (value) => value === "1.0"],
  ["id", filled(200)],
  ["source", (value) => value.length <= 400 && /^\S+$/.test(value)],
  ["type", filled(200)],
  ["subject", filled(200)],
  ["time", filled(100)],
  ["sequence", like(/^\d{1,20}$/)],
  ["hlc", like(HYBRID_TIME_PATTERN)],
];

const OPTIONAL: readonly (readonly [attribute: keyof WireEntry & string, check: Check])[] = [
  ["recordedtime", filled(100)],
  ["hlcmade", like(HYBRID_TIME_PATTERN)],
  ["actor", (value) => value.length <= 200],
  ["datacontenttype", () => true],
];

/**
 * The first attribute that keeps an object from being an entry; `null` when there is none. That its times are instants is left
 * to whoever reads them. Looked at attribute by attribute, not by
 * a schema that copies what it reads: a log has ten thousand entries, and each is kept as it was read.
 */
export function wrongAttribute(value: Readonly<Record<string, unknown>>): string | null {
  for (const [attribute, check] of REQUIRED) {
    const found = value[attribute];
    if (typeof found !== "string" || !check(found)) return attribute;
  }
  for (const [attribute, check] of OPTIONAL) {
    const found = value[attribute];
    if (found !== undefined && (typeof found !== "string" || !check(found))) return attribute;
  }
  return null;
}
