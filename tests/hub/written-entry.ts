import type { WireEntry } from "../../src/core/log/index.ts";
import { formatInstant, type Instant } from "../../src/core/units/index.ts";
import { NOON, WALK } from "./test-hub.ts";

/** What of an entry is to be other than usual. */
export type EntryParts = Partial<WireEntry> & { readonly at?: Instant };

/** A note of a device, as it travels, the `number`th of its source. */
export function written(source: string, number: number, parts: EntryParts = {}): WireEntry {
  const { at = NOON, ...rest } = parts;
  const digits = String(number).padStart(10, "0");
  return {
    specversion: "1.0",
    id: digits,
    source,
    type: "tetherline.note.made",
    subject: WALK,
    time: formatInstant(at),
    sequence: digits,
    hlc: `${String(at).padStart(15, "0")}-0000`,
    data: { text: `note ${number}` },
    ...rest,
  };
}

/** Notes of a device, numbered from one to another. */
export function writtenNotes(source: string, from: number, to: number): WireEntry[] {
  return Array.from({ length: to - from + 1 }, (_, index) => written(source, from + index));
}
