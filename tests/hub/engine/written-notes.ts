import type { Entry } from "../../../src/core/log/index.ts";
import { readEntry } from "../../../src/core/log/index.ts";
import type { Instant, WalkId } from "../../../src/core/units/index.ts";

export const WALK = "walk-1" as WalkId;

/** What of a note matters to a store. */
export interface Note {
  readonly source?: string;
  readonly number: number;
  readonly text?: string;
  readonly walk?: string;
}

/** An entry as a device would send it. */
export function note({ source = "/devices/one", number, text = "seen", walk = WALK }: Note): Entry {
  const sequence = String(number).padStart(10, "0");
  const { entry, problem } = readEntry({
    specversion: "1.0",
    id: sequence,
    source,
    type: "tetherline.note.made",
    subject: walk,
    time: "2021-04-02T09:12:31.500Z",
    recordedtime: "2021-04-02T09:12:31.500Z",
    sequence,
    // Of the past, so that no hub takes it for a clock that is ahead.
    hlc: "001617354751500-0000",
    actor: "iv",
    datacontenttype: "application/json",
    data: { text },
  });
  if (!entry) throw new Error(problem.key);
  return entry;
}

/** Notes numbered so, all else the same. */
export function notes(from: number, to: number, rest: Omit<Note, "number"> = {}): readonly Entry[] {
  return Array.from({ length: to - from + 1 }, (_, index) => note({ ...rest, number: from + index }));
}

/** A clock that stands still. */
export const NOON = Date.parse("2031-04-02T12:00:00.000Z") as Instant;
