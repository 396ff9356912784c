import { writeCursor } from "../../core/link/index.ts";
import type { StoredEntry } from "../engine/index.ts";

/** Entries as unnamed server-sent events, their cursors as ids. `withheld` are left out; their end goes as a `cursor` event. */
export function entriesText(
  epoch: string,
  kept: readonly StoredEntry[],
  withheld: (entry: StoredEntry) => boolean = () => false,
): string {
  let text = "";
  let passed: number | null = null;
  for (const entry of kept) {
    if (withheld(entry)) {
      passed = entry.offset;
      continue;
    }
    passed = null;
    text += `id: ${epoch}:${entry.offset}\ndata: ${entry.text}\n\n`;
  }
  return passed === null ? text : text + cursorText(epoch, passed);
}

/** An event that says that up to here there is nothing more for this reader. */
export function cursorText(epoch: string, offset: number): string {
  return `event: cursor\nid: ${writeCursor({ epoch, offset })}\ndata: {}\n\n`;
}

/** A named event without an id. */
export function eventText(name: "hello" | "presence" | "beyond", data: unknown): string {
  return `event: ${name}\ndata: ${JSON.stringify(data)}\n\n`;
}

/** A comment, which serves as a sign of life. */
export const HEARTBEAT_TEXT = ": alive\n\n";
