import { jsonOf, readEntry } from "../log/index.ts";
import type { WalkId } from "../units/index.ts";
import type { Cursor } from "./cursor.ts";
import { isCursorCheck, readCursor } from "./cursor.ts";
import { beyondSchema, helloSchema, presenceSchema } from "./exchange.ts";
import type { FarMessage } from "./link-sides.ts";

/** A server-sent event, as parsers give it. */
export interface StreamEvent {
  /** Its name; without one it is an entry. */
  readonly event?: string | undefined;
  readonly id?: string | undefined;
  readonly data: string;
}

/** What an event of the stream of a walk says; `null` for one that means nothing to this version. */
export function messageOf({ event, id, data }: StreamEvent, walk: WalkId): FarMessage | null {
  const value = jsonOf(data);
  const cursor = id === undefined ? null : readCursor(id);
  switch (event ?? "message") {
    case "message": {
      const { entry } = readEntry(value);
      // Without a cursor, or of another walk, it could not be kept.
      return entry && cursor && entry.walk === walk
        ? { kind: "entry", entry, cursor }
        : { kind: "unreadable", cursor };
    }
    case "cursor":
      return cursor && { kind: "cursor", cursor: withCheck(cursor, value) };
    case "hello": {
      const { data: hello } = helloSchema().safeParse(value);
      return hello ? { kind: "hello", hello } : null;
    }
    case "presence": {
      const { data: presence } = presenceSchema().safeParse(value);
      return presence ? { kind: "presence", followers: presence.followers } : null;
    }
    case "beyond": {
      const { data: beyond } = beyondSchema().safeParse(value);
      return beyond ? { kind: "beyond", hubs: beyond.hubs } : null;
    }
    default:
      return null;
  }
}

/** The check of a cursor comes beside its id, where versions that know none pass it over. */
function withCheck(cursor: Cursor, value: unknown): Cursor {
  if (typeof value !== "object" || value === null || !("check" in value)) return cursor;
  return isCursorCheck(value.check) ? { ...cursor, check: value.check } : cursor;
}
