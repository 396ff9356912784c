import { createHash, randomBytes } from "node:crypto";
import { DiscardPolicy } from "@nats-io/jetstream";
import { headers } from "@nats-io/transport-node";
import type { Instant, WalkId } from "../../core/units/index.ts";
import { Listeners } from "../../core/units/index.ts";
import { message } from "../../words/index.ts";
import type { Engine, RefusedEntry, StoredEntry } from "./engine.ts";
import { EngineTroubleError } from "./engine.ts";
import { connectStreams, haveStream, natsTrouble, type WantedStream } from "./jetstream-connection.ts";
import { entriesStream, jetstreamEntries } from "./jetstream-entries.ts";
import { openJetstreamKeep } from "./jetstream-keep.ts";
import { readNatsAddress } from "./nats-address.ts";
import { readStream } from "./read-stream.ts";
import { toToken } from "./subject-token.ts";

/** The most refused entries that are kept for each walk. */
const MOST_REFUSED = 1_000;
/** What a server takes that says nothing of it, in bytes; what the headers need of it; and bytes of a character, at most. */
const SMALLEST_PAYLOAD = 1024 * 1024;
const HEADERS = 2048;
const BYTES_A_LETTER = 3;
const SENDER = "Tetherline-Sender";
/** Where it is kept how often, so to speak, the epoch of a stream was changed. */
const GENERATION = "engine.generation";

function refusedStream(name: string): WantedStream {
  return {
    name: `${name}-refused`,
    subjects: [`${name}.refused.*`],
    max_msgs_per_subject: MOST_REFUSED,
    discard: DiscardPolicy.Old,
  };
}

/**
 * The log of a site in NATS JetStream, for any number of hub processes. Offsets are sequences of the stream of all walks,
 * the same for every hub, so that a follower may go from one to another.
 *
 * What is confirmed is held by the majority of the copies asked for (`?replicas=3`), in their memory or on their disks: a
 * server writes a message to its file at once and has it brought to the disk every two minutes. A process or a machine that
 * ends loses nothing as long as a majority lives. With one server only, a power cut may lose the last two minutes unless its
 * configuration says `jetstream { sync_interval: always }` (nats-server 2.10 or later), which costs about half the speed.
 *
 * An entry whose confirmation was lost on the way may be kept and told all the same; offered again, it is known. A stream
 * that was brought back from a backup keeps its epoch until a follower comes with a cursor that it cannot have given.
 *
 * Rejects with {@link EngineTroubleError} when no JetStream answers.
 */
export async function openJetstreamEngine(text: string, now: () => Instant): Promise<Engine> {
  const address = readNatsAddress(text);
  const { name } = address;
  const streams = await connectStreams(address);
  const { connection, client } = streams;
  const trouble = (cause: unknown) => natsTrouble(address, cause);
  try {
    const wanted = entriesStream(name);
    const { created, config } = await haveStream(streams, address, wanted);
    const refused = refusedStream(name);
    await haveStream(streams, address, refused);
    const small = await openJetstreamKeep(streams, name, config.num_replicas, trouble);
    const appended = new Listeners<[walk: WalkId, kept: readonly StoredEntry[]]>();
    const entries = jetstreamEntries({ streams, stream: wanted.name, now, tell: appended.tell, trouble });
    const epochs = new Listeners();
    const epochOf = (generation: string) =>
      createHash("sha256").update(`${name} ${created}${generation}`).digest("base64url").slice(0, 16);
    let epoch = epochOf((await small.keep.get(GENERATION)) ?? "");
    small.keep.watch(GENERATION, (_key, generation) => {
      const next = epochOf(generation ?? "");
      if (next === epoch) return;
      epoch = next;
      epochs.tell();
    });
    const sender = randomBytes(9).toString("base64url");
    let isClosed = false;

    /** Asks the server; a failure in words. */
    const ask = async <T>(work: () => Promise<T>): Promise<T> => {
      if (isClosed) throw new EngineTroubleError(message("engine/closed"));
      try {
        return await work();
      } catch (cause) {
        throw trouble(cause);
      }
    };
    const refusedSubject = (walk: WalkId) => `${name}.refused.${toToken(walk)}`;
    const whisperSubject = (topic: string) => `${name}.whisper.${toToken(topic)}`;
    await entries.caughtUp();

    return {
      kind: "jetstream",
      get epoch() {
        return epoch;
      },
      findings: [],
      caution: config.num_replicas > 1 ? null : message("engine/single-server"),
      checkAt: (walk, offset) => ask(() => entries.checkAt(walk, offset)),
      beginEpoch: () =>
        ask(async () => {
          const generation = ` ${randomBytes(9).toString("base64url")}`;
          await small.keep.put(GENERATION, generation);
          epoch = epochOf(generation);
          epochs.tell();
        }),
      onEpoch: epochs.add,
      backup: async () => {
        throw new EngineTroubleError(message("engine/no-backup-here", { place: address.shown }));
      },
      append: (walk, offered, { via = null, alsoKeep } = {}) =>
        ask(async () => {
          const outcomes = await entries.append(walk, offered, via);
          for (const [key, value] of alsoKeep ?? []) await small.keep.put(key, value);
          return outcomes;
        }),
      compare: (walk, offered) => ask(() => entries.compare(walk, offered)),
      longestText: Math.floor((connection.info?.max_payload ?? SMALLEST_PAYLOAD) / BYTES_A_LETTER) - HEADERS,
      lengthOf: (walk, device) => ask(() => entries.lengthOf(walk, device)),
      cameThrough: (walk, device) => ask(() => entries.cameThrough(walk, device)),
      sequencesOf: (walk, source) => ask(() => entries.sequencesOf(walk, source)),
      read: (walk, after, limit) => ask(() => entries.read(walk, after, limit)),
      head: (walk) => ask(() => entries.head(walk)),
      behind: (walk, after) => ask(() => entries.behind(walk, after)),
      walks: () => ask(() => entries.walks()),
      follow: (onAppended) => appended.add(onAppended),
      keepRefused: (walk, one) =>
        ask(async () => void (await client.publish(refusedSubject(walk), JSON.stringify(one)))),
      refused: (walk, limit) =>
        ask(async () => {
          const wish = {
            stream: refused.name,
            subject: refusedSubject(walk),
            from: 1,
            upTo: null,
            limit: MOST_REFUSED,
            enough: null,
          };
          const messages = await readStream(streams, wish);
          return messages.slice(-limit).map((message) => message.json<RefusedEntry>());
        }),
      keep: small.keep,
      whisper: (topic, said) => {
        if (isClosed) return;
        const about = headers();
        about.set(SENDER, sender);
        connection.publish(whisperSubject(topic), said, { headers: about });
      },
      onWhisper: (topic, hear) => {
        const subscription = connection.subscribe(whisperSubject(topic), {
          callback: (failure, message) => {
            if (failure === null && message.headers?.get(SENDER) !== sender) hear(message.string());
          },
        });
        return () => subscription.unsubscribe();
      },
      close: async () => {
        if (isClosed) return;
        isClosed = true;
        entries.close();
        small.close();
        await connection.close();
      },
    };
  } catch (cause) {
    await connection.close();
    throw trouble(cause);
  }
}
