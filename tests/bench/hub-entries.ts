import { readEntry, type WireEntry, wallOf } from "../../src/core/log/index.ts";
import { formatInstant, type Instant, parseInstant } from "../../src/core/units/index.ts";
import { busyLog } from "./busy-log.ts";

const LOG_ENTRIES = 10_000;
const LOG_DEVICES = 8;
/** Of the past, so that no hub takes it for a clock that is ahead. */
const BEGAN = Date.UTC(2021, 3, 2, 9) as Instant;

const hlcAt = (at: number) => `${String(at).padStart(15, "0")}-0000`;

/** The `number`th entry of a device, of about 280 characters. */
export function benchEntry(walk: string, device: string, number: number): WireEntry {
  const digits = String(number).padStart(10, "0");
  const at = (BEGAN + number * 1000) as Instant;
  return {
    specversion: "1.0",
    id: digits,
    source: device,
    type: "tetherline.note.made",
    subject: walk,
    time: formatInstant(at),
    sequence: digits,
    hlc: hlcAt(at),
    actor: "iv",
    data: { text: "The tether runs free over the rail." },
  };
}

/** The log of a busy walk of 10,000 entries, as it travels, moved into the past. */
export function benchLog(): readonly WireEntry[] {
  const entries = busyLog(LOG_ENTRIES, LOG_DEVICES);
  const first = entries[0];
  if (!first) throw new Error("the log is empty");
  const shift = first.at - BEGAN;
  const earlier = (text: unknown) => {
    const at = typeof text === "string" ? parseInstant(text) : null;
    return at === null ? text : formatInstant((at - shift) as Instant);
  };
  return entries.map(({ wire, hlc }) => {
    const moved = {
      ...wire,
      time: earlier(wire.time) as string,
      ...("recordedtime" in wire ? { recordedtime: earlier(wire["recordedtime"]) as string } : {}),
      hlc: `${hlcAt(wallOf(hlc) - shift).slice(0, 15)}${hlc.slice(15)}`,
    };
    const { problem } = readEntry(moved);
    if (problem !== null) throw new Error(`an entry of the log is none: ${problem.key}`);
    return moved;
  });
}
