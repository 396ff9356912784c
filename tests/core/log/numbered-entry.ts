import type { Entry } from "../../../src/core/log/index.ts";
import { entryFrom, ZERO } from "../log-writer.ts";

/** The note that a source made as its so manyth entry, a millisecond after the one before. */
export function numberedEntry(number: number, overrides: Record<string, unknown> = {}): Entry {
  const sequence = String(number).padStart(10, "0");
  return entryFrom({
    specversion: "1.0",
    id: sequence,
    source: "/devices/iv-tablet",
    type: "tetherline.note.made",
    subject: "walk-1",
    time: new Date(ZERO + number).toISOString(),
    sequence,
    hlc: `${String(ZERO + number).padStart(15, "0")}-0000`,
    actor: "iv",
    data: { text: `note ${number}` },
    ...overrides,
  });
}

/** Entries numbered from `from`. */
export function numberedEntries(count: number, from = 1): readonly Entry[] {
  return Array.from({ length: count }, (_, index) => numberedEntry(from + index));
}
