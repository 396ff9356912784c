import { setTimeout as wait } from "node:timers/promises";
import type { JsMsg } from "@nats-io/jetstream";
import { message } from "../../words/index.ts";
import { EngineTroubleError } from "./engine.ts";
import { pushFrom, type Streams } from "./stream-push.ts";

/** What is to be read of a stream. */
export interface ReadWish {
  readonly stream: string;
  readonly subject: string;
  /** The first sequence that may be read. */
  readonly from: number;
  /** A sequence that is there under this subject: reading ends with it. `null` reads what is there now. */
  readonly upTo: number | null;
  /** The most messages that are read. */
  readonly limit: number;
  /** Reading also ends once there are at least `least` messages with at least `length` bytes in total; `null` sets no such end. */
  readonly enough: { readonly least: number; readonly length: number } | null;
}

/** How long reading may take, in ms. */
const PATIENCE = 10_000;
const PAUSE = 200;

/** The messages under a subject, in order; goes on from where it broke off. Rejects when that takes too long. */
export async function readStream(streams: Streams, wish: ReadWish): Promise<readonly JsMsg[]> {
  const messages: JsMsg[] = [];
  const end = performance.now() + PATIENCE;
  for (;;) {
    try {
      if (await readOn(streams, wish, messages)) return messages;
    } catch {
      // No server answers now; it is tried again.
    }
    if (performance.now() > end) throw new EngineTroubleError(message("engine/slow-to-read"));
    await wait(PAUSE);
  }
}

/** Reads on until all is there (true) or the server breaks off (false). */
async function readOn(streams: Streams, wish: ReadWish, messages: JsMsg[]): Promise<boolean> {
  const { stream, subject, from, upTo, limit, enough } = wish;
  let length = messages.reduce((sum, { data }) => sum + data.length, 0);
  let finish = (): void => {};
  const finished = new Promise<void>((resolve) => {
    finish = resolve;
  });
  let isDone = false;
  const push = await pushFrom(streams, {
    stream,
    subject,
    from: (messages.at(-1)?.seq ?? from - 1) + 1,
    onBroken: finish,
    onMessage: (message) => {
      if (isDone) return;
      messages.push(message);
      length += message.data.length;
      const isEnough = enough !== null && messages.length >= enough.least && length >= enough.length;
      isDone =
        isEnough ||
        messages.length >= limit ||
        (upTo === null ? message.info.pending === 0 : message.seq >= upTo);
      if (isDone) finish();
    },
  });
  if (upTo === null && push.pending === 0) isDone = true;
  if (!isDone) await finished;
  push.stop();
  return isDone;
}
