import { setTimeout as wait } from "node:timers/promises";
import { createParser } from "eventsource-parser";
import { WALK } from "../engine/written-notes.ts";

/** A device that follows the stream, and comes back to where it was whenever it broke off. */
export interface FollowingDevice {
  /** Keys of the entries, in the order in which they came. */
  readonly heard: readonly string[];
  stop(): Promise<void>;
}

/** Begins to follow whichever address is said then. */
export function startFollowing(address: () => string, token: string): FollowingDevice {
  const heard: string[] = [];
  const over = new AbortController();
  let lastId = "";
  const follow = async (): Promise<void> => {
    const answer = await fetch(`${address()}/api/walks/${WALK}/entries`, {
      headers: {
        authorization: `Bearer ${token}`,
        accept: "text/event-stream",
        ...(lastId === "" ? {} : { "last-event-id": lastId }),
      },
      signal: over.signal,
    });
    const parser = createParser({
      onEvent: ({ event, id, data }) => {
        if (event === undefined) {
          const { source, id: entryId } = JSON.parse(data) as { source: string; id: string };
          heard.push(`${source} ${entryId}`);
        }
        if (id) lastId = id;
      },
    });
    const decoder = new TextDecoder();
    for await (const chunk of answer.body ?? []) parser.feed(decoder.decode(chunk, { stream: true }));
  };
  const following = (async () => {
    while (!over.signal.aborted) {
      await follow().catch(() => {});
      await wait(20);
    }
  })();
  return {
    heard,
    stop: async () => {
      over.abort();
      await following;
    },
  };
}
