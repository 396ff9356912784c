import { createParser } from "eventsource-parser";
import type { WalkId } from "../units/index.ts";
import { LONGEST_TEXT } from "./hub-answers.ts";
import type { HubClient, RequestOptions } from "./hub-client.ts";
import type { FarSide } from "./link-sides.ts";
import { UnreachableError } from "./link-sides.ts";
import { messageOf } from "./stream-message.ts";

/**
 * A walk on a hub, as the other side of a link, asked with a token where the asker has no credentials of its own. Every
 * piece of the stream that arrives is a sign of life.
 */
export function hubFarSide(
  hub: HubClient,
  walk: WalkId,
  options: Pick<RequestOptions, "credential"> = {},
): FarSide {
  const { noStream, streamLost } = hub.manner;
  return {
    push: (entries, signal) => hub.push(walk, entries, { ...options, signal }),
    follow: async (after, hear, signal) => {
      const answer = await hub.stream(walk, after, { ...options, signal });
      if (!answer.header("content-type")?.startsWith("text/event-stream")) {
        answer.drop();
        throw new UnreachableError(noStream);
      }
      const parser = createParser({
        maxBufferSize: LONGEST_TEXT,
        onEvent: (event) => {
          const message = messageOf(event, walk);
          if (message) hear(message);
        },
      });
      try {
        for await (const piece of answer.text) {
          hear({ kind: "alive" });
          parser.feed(piece);
        }
      } catch (cause) {
        throw new UnreachableError(streamLost, { cause });
      }
    },
  };
}
