import { setTimeout as wait } from "node:timers/promises";
import { JetStreamApiCodes, JetStreamApiError, type JsMsg } from "@nats-io/jetstream";
import { type KV, Kvm } from "@nats-io/kv";
import { Listeners } from "../../core/units/index.ts";
import type { EngineTroubleError, Keep } from "./engine.ts";
import type { Streams } from "./stream-push.ts";
import { followStream } from "./stream-tail.ts";
import { ofToken, toToken } from "./subject-token.ts";

/** The bucket of small things. */
export interface JetstreamKeep {
  readonly keep: Keep;
  close(): void;
}

/** How long an operation is retried while no server answers, in ms. */
const PATIENCE = 10_000;
const PAUSE = 200;

const isTaken = (cause: unknown): boolean =>
  cause instanceof JetStreamApiError &&
  (cause.code === JetStreamApiCodes.StreamWrongLastSequence ||
    cause.code === JetStreamApiCodes.StreamWrongLastSequenceUnknown);

/** Opens the bucket, or makes it. What it holds is also followed here, for lists and whoever watches. */
export async function openJetstreamKeep(
  streams: Streams,
  name: string,
  replicas: number,
  trouble: (cause: unknown) => EngineTroubleError,
): Promise<JetstreamKeep> {
  const bucket = `${name}-keep`;
  // Answers come from the leader alone, so that what was put is found.
  const store = await new Kvm(streams.client).create(bucket, { history: 1, replicas, allow_direct: false });
  const values = new Map<string, string>();
  const changes = new Listeners<[key: string, value: string | null]>();
  const decoder = new TextDecoder();

  const tail = followStream(streams, `KV_${bucket}`, (messages) => {
    for (const message of messages) {
      const key = keyOf(message);
      const value = message.headers?.has("KV-Operation") ? null : decoder.decode(message.data);
      if (value !== null) values.set(key, value);
      else if (!values.delete(key)) continue;
      changes.tell(key, value);
    }
  });

  const ask = async <T>(work: (attempt: number) => Promise<T>): Promise<T> => {
    const end = performance.now() + PATIENCE;
    for (let attempt = 1; ; attempt += 1) {
      try {
        return await work(attempt);
      } catch (cause) {
        if (performance.now() > end) throw trouble(cause);
      }
      await wait(PAUSE);
    }
  };

  return {
    keep: {
      get: (key) => ask(() => keptValue(store, key)),
      put: (key, value) => ask(async () => void (await store.put(toToken(key), value))),
      create: (key, value) =>
        ask(async (attempt) => {
          try {
            await store.create(toToken(key), value);
            return true;
          } catch (cause) {
            if (!isTaken(cause)) throw cause;
            // The answer to an earlier attempt may have been lost.
            return attempt > 1 && (await keptValue(store, key)) === value;
          }
        }),
      remove: (key) => ask(() => store.purge(toToken(key))),
      list: async (prefix) => {
        await ask(() => tail.caughtUp());
        return new Map([...values].filter(([key]) => key.startsWith(prefix)));
      },
      watch: (prefix, onChange) =>
        changes.add((key, value) => {
          if (key.startsWith(prefix)) onChange(key, value);
        }),
    },
    close: () => tail.close(),
  };
}

async function keptValue(store: KV, key: string): Promise<string | null> {
  const entry = await store.get(toToken(key));
  return entry?.operation === "PUT" ? entry.string() : null;
}

function keyOf({ subject }: JsMsg): string {
  return ofToken(subject.split(".").at(-1) ?? "");
}
