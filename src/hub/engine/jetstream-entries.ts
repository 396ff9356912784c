import { createHash, randomBytes } from "node:crypto";
import { DiscardPolicy } from "@nats-io/jetstream";
import type { MsgHdrs } from "@nats-io/transport-node";
import type { Entry } from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import { compareEntry } from "./compare-entry.ts";
import type { AppendOutcome, Comparison, StoredEntry, StoredWalk } from "./engine.ts";
import type { OffersParts } from "./entry-offers.ts";
import { ATTEMPT, entryOffers, RECEIVED, VIA } from "./entry-offers.ts";
import type { WantedStream } from "./jetstream-connection.ts";
import { readAhead } from "./read-ahead.ts";
import { readStream } from "./read-stream.ts";

import { SourceBook } from "./source-book.ts";
import { followStream } from "./stream-tail.ts";
import { keyToken, ofToken, toToken } from "./subject-token.ts";

/** The stream of entries. */
export interface JetstreamEntries {
  append(walk: WalkId, entries: readonly Entry[], via: string | null): Promise<readonly AppendOutcome[]>;
  compare(walk: WalkId, entries: readonly Entry[]): Promise<readonly (Comparison | null)[]>;
  read(walk: WalkId, after: number, limit: number): Promise<readonly StoredEntry[]>;
  head(walk: WalkId): Promise<number>;
  behind(walk: WalkId, after: number): Promise<number>;
  lengthOf(walk: WalkId, device: string | null): Promise<number>;
  cameThrough(walk: WalkId, device: string): Promise<string | null>;
  sequencesOf(walk: WalkId, source: string): Promise<readonly string[]>;
  checkAt(walk: WalkId, offset: number): Promise<string | null>;
  walks(): Promise<readonly StoredWalk[]>;
  caughtUp(): Promise<void>;
  close(): void;
}

/** What the stream of entries is made of. */
export interface EntriesWish extends OffersParts {
  readonly tell: (walk: WalkId, kept: readonly StoredEntry[]) => void;
}

/** Whoever asks for this many entries will ask for the next ones too, so that those are read along with them. */
const SMALLEST_PAGE = 100;
/** How many entries are read at once then, and after how many bytes of them that is enough, however many there are. */
const MOST_AHEAD = 5_000;
const ENOUGH = 1_000_000;

/** A subject for each entry, so that no entry can be there twice however long ago it came. */
export function entriesStream(name: string): WantedStream {
  return {
    name: `${name}-entries`,
    subjects: [`${name}.entries.*.*`],
    max_msgs_per_subject: 1,
    discard: DiscardPolicy.New,
    discard_new_per_subject: true,
    deny_delete: true,
    deny_purge: true,
  };
}

/** Keeps and reads entries; the heads of walks are learnt from the stream, which is followed from its beginning. */
export function jetstreamEntries({ streams, stream, now, tell, trouble }: EntriesWish): JetstreamEntries {
  const prefix = stream.replace(/-entries$/, ".entries");
  const walks = new Map<WalkId, { entries: number; head: number }>();
  const sources = new SourceBook();
  const decoder = new TextDecoder();

  const tail = followStream(streams, stream, (messages) => {
    const told = new Map<WalkId, StoredEntry[]>();
    for (const message of messages) {
      const walk = walkOf(message.subject);
      const { entries } = walks.get(walk) ?? { entries: 0 };
      walks.set(walk, { entries: entries + 1, head: message.seq });
      const kept = keptOf(message, decoder);
      sources.add(walk, kept);
      const ofWalk = told.get(walk);
      if (ofWalk) ofWalk.push(kept);
      else told.set(walk, [kept]);
    }
    for (const [walk, kept] of told) tell(walk, kept);
  });

  const offers = entryOffers({ streams, stream, now, trouble });
  const subjectOf = (walk: WalkId, entry: Entry) => `${prefix}.${toToken(walk)}.${keyToken(entry)}`;

  // The server takes as long to look for the first entry as to send hundreds.
  const read = readAhead(async (walk, after, least) => {
    await tail.caughtUp();
    const head = walks.get(walk)?.head ?? 0;
    if (after >= head || least < 1) return [];
    const isPage = least >= SMALLEST_PAGE;
    const messages = await readStream(streams, {
      stream,
      subject: `${prefix}.${toToken(walk)}.*`,
      from: after + 1,
      upTo: head,
      limit: isPage ? Math.max(least, MOST_AHEAD) : least,
      enough: { least: 1, length: ENOUGH },
    });
    return messages.map((message) => keptOf(message, decoder));
  });

  return {
    append: async (walk, entries, via) => {
      const attempt = randomBytes(9).toString("base64url");
      return Promise.all(
        entries.map((entry, index) =>
          offers.offer({ subject: subjectOf(walk, entry), entry, via, attempt: `${attempt}.${index}` }),
        ),
      );
    },
    compare: (walk, entries) =>
      Promise.all(
        entries.map(async (entry) => {
          const other = await offers.find(subjectOf(walk, entry));
          return other && compareEntry(other.string(), entry);
        }),
      ),
    read,
    lengthOf: async (walk, device) => {
      await tail.caughtUp();
      return sources.lengthOf(walk, device);
    },
    cameThrough: async (walk, device) => {
      await tail.caughtUp();
      return sources.cameThrough(walk, device);
    },
    sequencesOf: async (walk, source) => {
      await tail.caughtUp();
      return sources.sequencesOf(walk, source);
    },
    head: async (walk) => {
      await tail.caughtUp();
      return walks.get(walk)?.head ?? 0;
    },
    behind: async (walk, after) => {
      await tail.caughtUp();
      const { entries, head } = walks.get(walk) ?? { entries: 0, head: 0 };
      // The entries of all walks are numbered together.
      return Math.max(0, Math.min(entries, head - after));
    },
    checkAt: async (walk, offset) => {
      const found = await offers.at(offset);
      return found && walkOf(found.subject) === walk ? checkOf(found.header, found.data) : null;
    },
    walks: async () => {
      await tail.caughtUp();
      return [...walks]
        .map(([walk, { entries, head }]) => ({ walk, entries, head }))
        .sort((a, b) => (a.walk < b.walk ? -1 : 1));
    },
    caughtUp: () => tail.caughtUp(),
    close: () => tail.close(),
  };
}

function walkOf(subject: string): WalkId {
  return ofToken(subject.split(".").at(-2) ?? "") as WalkId;
}

function keptOf(
  { seq, data, headers: about }: { seq: number; data: Uint8Array; headers?: MsgHdrs | undefined },
  decoder: TextDecoder,
): StoredEntry {
  const text = decoder.decode(data);
  const { source, id, sequence } = JSON.parse(text) as Entry["wire"];
  const via = about?.get(VIA) ?? "";
  return {
    offset: seq,
    text,
    source,
    id,
    sequence,
    received: Number(about?.get(RECEIVED)) as Instant,
    via: via === "" ? null : ofToken(via),
    check: checkOf(about, data),
  };
}

/** Every message names the attempt that put it there, so that no two are alike. */
function checkOf(about: MsgHdrs | undefined, data: Uint8Array): string {
  return createHash("sha256")
    .update(`${about?.get(RECEIVED) ?? ""}\n${about?.get(ATTEMPT) ?? ""}\n`)
    .update(data)
    .digest("base64url")
    .slice(0, 16);
}
