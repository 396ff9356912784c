import { createParser, type EventSourceMessage } from "eventsource-parser";
import type { Cursor, FarMessage, FarSide } from "../../core/log/index.ts";
import {
  beyondSchema,
  helloSchema,
  presenceSchema,
  pushAnswerSchema,
  readCursor,
  readEntry,
  UnreachableError,
  writeCursor,
} from "../../core/log/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import type { HubRequests } from "./hub-requests.ts";
import { ask, turnedAway } from "./hub-requests.ts";

/** Where a walk is asked for at a hub. */
export function walkPath(walk: WalkId): string {
  return `/api/walks/${encodeURIComponent(walk)}`;
}

/** The log of a walk at a hub, over HTTP: batches of CloudEvents there, server-sent events back (WHATWG HTML, 9.2). */
export function hubFarSide(hub: HubRequests, walk: WalkId): FarSide {
  const path = `${walkPath(walk)}/entries`;
  return {
    push: async (entries, signal) => {
      const response = await ask(
        hub,
        path,
        {
          method: "POST",
          headers: { "content-type": "application/cloudevents-batch+json" },
          body: JSON.stringify(entries.map(({ wire }) => wire)),
          signal,
        },
        turnedAway,
      );
      const answer = pushAnswerSchema.safeParse(await bodyOf(response));
      if (!answer.success) throw new UnreachableError("the hub's answer could not be read");
      return answer.data;
    },
    follow: async (after, hear, signal) => {
      const response = await ask(
        hub,
        path,
        {
          headers: {
            accept: "text/event-stream",
            ...(after ? { "last-event-id": writeCursor(after) } : {}),
          },
          signal,
        },
        turnedAway,
      );
      await readStream(response, hear, signal);
    },
  };
}

async function bodyOf(response: Response): Promise<unknown> {
  try {
    return await response.json();
  } catch (error) {
    throw new UnreachableError("the hub's answer broke off", { cause: error });
  }
}

async function readStream(
  { body }: Response,
  hear: (message: FarMessage) => void,
  signal: AbortSignal,
): Promise<void> {
  if (!body) throw new UnreachableError("the hub sent no stream");
  const parser = createParser({
    onEvent: (event) => {
      const message = messageOf(event);
      if (message) hear(message);
    },
    onComment: () => hear({ kind: "alive" }),
  });
  const reader = body.pipeThrough(new TextDecoderStream()).getReader();
  try {
    for (;;) {
      const { done, value } = await reader.read();
      if (done) return;
      parser.feed(value);
    }
  } catch (error) {
    if (!signal.aborted) throw new UnreachableError("the connection to the hub broke off", { cause: error });
  }
}

/** What an event says; `null` for one of a newer version. */
function messageOf({ event, id, data }: EventSourceMessage): FarMessage | null {
  const cursor = id === undefined ? null : readCursor(id);
  if (event === undefined || event === "message") return entryMessage(data, cursor);
  if (event === "cursor") return cursor && { kind: "cursor", cursor };
  const value = jsonOf(data);
  if (event === "hello") {
    const { data: hello } = helloSchema.safeParse(value);
    return hello ? { kind: "hello", hello } : null;
  }
  if (event === "presence") {
    const { data: presence } = presenceSchema.safeParse(value);
    return presence ? { kind: "presence", followers: presence.followers } : null;
  }
  if (event === "beyond") {
    const { data: beyond } = beyondSchema.safeParse(value);
    return beyond ? { kind: "beyond", hubs: beyond.hubs } : null;
  }
  return null;
}

function entryMessage(data: string, cursor: Cursor | null): FarMessage {
  const { entry } = readEntry(jsonOf(data));
  return entry && cursor ? { kind: "entry", entry, cursor } : { kind: "unreadable", cursor };
}

function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return null;
  }
}
