import { setTimeout as wait } from "node:timers/promises";
import type { StreamConfig, StreamInfo } from "@nats-io/jetstream";
import { JetStreamApiCodes, JetStreamApiError, jetstream, jetstreamManager } from "@nats-io/jetstream";
import { connect, errors, type NatsConnection } from "@nats-io/transport-node";
import { message, saidBy } from "../../words/index.ts";
import { EngineTroubleError } from "./engine.ts";
import type { NatsAddress } from "./nats-address.ts";
import type { Streams } from "./stream-push.ts";

/** How long one answer of the server may take, in ms. A longer limit would make recovery from a lost server slow. */
export const ANSWER_TIME = 2_000;
/** How long servers started together with the hub may take to become reachable, in ms. */
const PATIENCE = 4_000;
/** How long the servers may take to elect a leader, in ms. */
const ELECTION_PATIENCE = 15_000;
const PAUSE = 250;

/** A stream as a hub needs it. */
export type WantedStream = Pick<StreamConfig, "name" | "subjects"> & Partial<StreamConfig>;

/** Connects, and waits for a while for a JetStream that answers. Rejects with {@link EngineTroubleError}. */
export async function connectStreams(address: NatsAddress): Promise<Streams> {
  const connection = await within(address, PATIENCE, () => connected(address));
  try {
    const manager = await within(address, ELECTION_PATIENCE, () =>
      jetstreamManager(connection, { timeout: ANSWER_TIME, checkAPI: true }),
    );
    return { connection, manager, client: jetstream(connection, { timeout: ANSWER_TIME }) };
  } catch (cause) {
    await connection.close();
    throw cause;
  }
}

function connected({ connection }: NatsAddress): Promise<NatsConnection> {
  return connect({
    ...connection,
    name: "tetherline hub",
    timeout: ANSWER_TIME,
    maxReconnectAttempts: -1,
    reconnectTimeWait: PAUSE,
    ignoreAuthErrorAbort: true,
    pingInterval: 5_000,
    maxPingOut: 2,
  });
}

/** Makes a stream, or takes the one that is there when it is what is wanted; the copies asked for are seen to. */
export async function haveStream(
  streams: Streams,
  address: NatsAddress,
  wanted: WantedStream,
): Promise<StreamInfo> {
  return within(address, ELECTION_PATIENCE, async () => {
    const { manager } = streams;
    const info = await existing(streams, wanted.name);
    if (!info) return manager.streams.add({ ...wanted, num_replicas: address.replicas ?? 1 });
    const { config } = info;
    for (const [key, value] of Object.entries(wanted)) {
      if (JSON.stringify(config[key as keyof StreamConfig]) !== JSON.stringify(value)) {
        throw new EngineTroubleError(
          message("engine/foreign-stream", { stream: wanted.name, place: address.shown, key }),
        );
      }
    }
    if (address.replicas === null || config.num_replicas === address.replicas) return info;
    return manager.streams.update(wanted.name, { ...config, num_replicas: address.replicas });
  });
}

async function existing({ manager }: Streams, name: string): Promise<StreamInfo | null> {
  try {
    return await manager.streams.info(name);
  } catch (cause) {
    if (cause instanceof JetStreamApiError && cause.code === JetStreamApiCodes.StreamNotFound) return null;
    throw cause;
  }
}

/** Tries again for a while what may come right by itself. */
async function within<T>(address: NatsAddress, patience: number, work: () => Promise<T>): Promise<T> {
  const end = performance.now() + patience;
  for (;;) {
    try {
      return await work();
    } catch (cause) {
      if (isForGood(cause) || performance.now() > end) throw natsTrouble(address, cause);
    }
    await wait(PAUSE);
  }
}

function isForGood(cause: unknown): boolean {
  return cause instanceof EngineTroubleError || cause instanceof errors.AuthorizationError;
}

/** A failure of the server, as a sentence for the owner of the hub. */
export function natsTrouble({ shown }: NatsAddress, cause: unknown): EngineTroubleError {
  if (cause instanceof EngineTroubleError) return cause;
  if (cause instanceof errors.AuthorizationError) {
    return new EngineTroubleError(message("engine/not-let-in", { place: shown }), {
      cause,
    });
  }
  const why = saidBy(cause);
  if (cause instanceof JetStreamApiError) {
    return new EngineTroubleError(
      message("engine/not-kept", { place: shown, why, code: String(cause.code) }),
      {
        cause,
      },
    );
  }
  return new EngineTroubleError(message("engine/no-answer", { place: shown, why }), {
    cause,
  });
}
