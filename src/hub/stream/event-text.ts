import type { Cursor } from "../../core/link/index.ts";
import { writeCursor } from "../../core/link/index.ts";
import type { StoredEntry } from "../engine/index.ts";

/**
 * Entries as unnamed server-sent events, their places as ids, and behind them a `cursor` event. `sent` are those that the reader
 * is sent for them.
 */
export function entriesText(
  kept: readonly StoredEntry[],
  behind: (last: StoredEntry) => Cursor,
  sent: readonly StoredEntry[] = kept,
): string {
  const last = kept.at(-1);
  if (!last) return "";
  const cursor = behind(last);
  let text = "";
  for (const entry of sent) text += `id: ${cursor.epoch}:${entry.offset}\ndata: ${entry.text}\n\n`;
  return text + cursorText(cursor);
}

/** An event that says that up to here there is nothing more for this reader. Its check stands apart from its id, which all versions read. */
export function cursorText({ epoch, offset, check }: Cursor): string {
  return `event: cursor\nid: ${writeCursor({ epoch, offset })}\ndata: ${JSON.stringify({ check })}\n\n`;
}

/** A named event without an id. */
export function eventText(name: "hello" | "presence" | "beyond", data: unknown): string {
  return `event: ${name}\ndata: ${JSON.stringify(data)}\n\n`;
}

/** A comment, which serves as a sign of life. */
export const HEARTBEAT_TEXT = ": alive\n\n";
