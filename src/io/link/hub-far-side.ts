import { createParser } from "eventsource-parser";
import type { FarMessage, FarSide } from "../../core/link/index.ts";
import { messageOf, UnreachableError } from "../../core/link/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import type { HubClient } from "./hub-client.ts";

/** Characters of one event, at most; no hub takes an entry nearly so long. */
const LONGEST_EVENT = 16_000_000;

/** A walk on a hub, as the other side of a link. Every piece of the stream that arrives is a sign of life. */
export function hubFarSide(hub: HubClient, walk: WalkId): FarSide {
  return {
    push: (entries, signal) => hub.push(walk, entries, signal),
    follow: async (after, hear, signal) => {
      const response = await hub.stream(walk, after, signal);
      const isStream = response.headers.get("content-type")?.startsWith("text/event-stream");
      if (!isStream || !response.body) throw new UnreachableError("What answers here is no hub.");
      await readStream(response.body, walk, hear);
    },
  };
}

async function readStream(
  body: ReadableStream<Uint8Array>,
  walk: WalkId,
  hear: (message: FarMessage) => void,
): Promise<void> {
  const parser = createParser({
    maxBufferSize: LONGEST_EVENT,
    onEvent: (event) => {
      const message = messageOf(event, walk);
      if (message) hear(message);
    },
  });
  const decoder = new TextDecoder();
  const reader = body.getReader();
  try {
    for (;;) {
      const { done, value } = await reader.read();
      if (done) return;
      hear({ kind: "alive" });
      parser.feed(decoder.decode(value, { stream: true }));
    }
  } catch (cause) {
    throw new UnreachableError("The connection to the hub was lost.", { cause });
  } finally {
    // A reader that is let go of leaves the connection open.
    reader.cancel().catch(() => {});
  }
}
