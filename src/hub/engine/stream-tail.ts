import { setTimeout as wait } from "node:timers/promises";
import type { JsMsg } from "@nats-io/jetstream";
import { message } from "../../words/index.ts";
import { EngineTroubleError } from "./engine.ts";
import { type Push, pushFrom, type Streams } from "./stream-push.ts";

/** All messages of a stream, from its first on, whatever becomes of the servers in between. */
export interface StreamTail {
  /** Resolves when all that was in the stream at the call has been told; rejects when that takes too long. */
  caughtUp(): Promise<void>;
  close(): void;
}

/** Between attempts to go on, in ms. */
const PAUSE = 250;
/** How long a reader waits for what is in the stream, in ms. */
const PATIENCE = 10_000;

/** Tells messages in order, each once, several at a time when many come. */
export function followStream(
  streams: Streams,
  stream: string,
  tell: (messages: readonly JsMsg[]) => void,
): StreamTail {
  let isClosed = false;
  let push: Push | null = null;
  let isBeginning = false;
  /** The last that came, and the last that was told. */
  let [come, told] = [0, 0];
  let queue: JsMsg[] = [];
  let waiting: { readonly sequence: number; readonly resolve: () => void }[] = [];

  const flush = (): void => {
    const messages = queue;
    queue = [];
    if (isClosed) return;
    told = come;
    tell(messages);
    const ready = waiting.filter(({ sequence }) => sequence <= told);
    waiting = waiting.filter(({ sequence }) => sequence > told);
    for (const { resolve } of ready) resolve();
  };

  const onMessage = (message: JsMsg): void => {
    if (isClosed || message.seq <= come) return;
    come = message.seq;
    if (queue.length === 0) setImmediate(flush);
    queue.push(message);
  };

  const begin = async (): Promise<void> => {
    if (isBeginning) return;
    isBeginning = true;
    while (!isClosed) {
      try {
        push?.stop();
        let isBroken = false;
        const onBroken = () => {
          isBroken = true;
          void begin();
        };
        push = await pushFrom(streams, { stream, subject: ">", from: come + 1, onMessage, onBroken });
        if (isClosed) push.stop();
        if (!isBroken) break;
      } catch {
        // No server answers now: that is what it is tried again for.
      }
      await wait(PAUSE);
    }
    isBeginning = false;
  };

  void begin();
  void (async () => {
    for await (const { type } of streams.connection.status()) if (type === "reconnect") void begin();
  })();

  return {
    caughtUp: async () => {
      const { state } = await streams.manager.streams.info(stream);
      if (told >= state.last_seq) return;
      let timer: NodeJS.Timeout | undefined;
      await new Promise<void>((resolve, reject) => {
        waiting.push({ sequence: state.last_seq, resolve });
        timer = setTimeout(() => {
          void begin();
          reject(new EngineTroubleError(message("engine/slow-to-tell")));
        }, PATIENCE);
      }).finally(() => clearTimeout(timer));
    },
    close: () => {
      isClosed = true;
      push?.stop();
    },
  };
}
