import { setTimeout as wait } from "node:timers/promises";
import { JetStreamApiError, type StoredMsg } from "@nats-io/jetstream";
import { headers } from "@nats-io/transport-node";
import type { Entry } from "../../core/log/index.ts";
import type { Instant } from "../../core/units/index.ts";
import { compareEntry } from "./compare-entry.ts";
import type { AppendOutcome, EngineTroubleError } from "./engine.ts";
import { ANSWER_TIME } from "./jetstream-connection.ts";
import type { Streams } from "./stream-push.ts";
import { toToken } from "./subject-token.ts";

/** What offering entries takes. */
export interface OffersParts {
  readonly streams: Streams;
  /** The name of the stream of entries. */
  readonly stream: string;
  readonly now: () => Instant;
  /** A failure of a server in words. */
  readonly trouble: (cause: unknown) => EngineTroubleError;
}

/** An entry that is to be put into the stream. */
export interface OfferedEntry {
  /** Its own subject, on which there may be one message. */
  readonly subject: string;
  readonly entry: Entry;
  readonly via: string | null;
  /** Identifies this attempt, so that a message it stored can be recognised later. */
  readonly attempt: string;
}

/** Puts entries into the stream, and finds what is there in their place. */
export interface EntryOffers {
  /** Offers an entry until a server has said what became of it. */
  offer(offered: OfferedEntry): Promise<AppendOutcome>;
  /** The message on a subject; `null` where there is none. */
  find(subject: string): Promise<StoredMsg | null>;
  /** The message at a sequence; `null` where there is none. */
  at(sequence: number): Promise<StoredMsg | null>;
}

/** Headers of a message: when its entry came, through which hub, and by which attempt. */
export const RECEIVED = "Tetherline-Received";
export const VIA = "Tetherline-Via";
export const ATTEMPT = "Tetherline-Attempt";

/** The server's answer to a second message on a subject that may have one. */
const SUBJECT_IS_TAKEN = 10_077;
/** The server's answers that are final: the message is too large, or there is no room. */
const FINAL: ReadonlySet<number> = new Set([10_047, 10_054, 10_023]);
/** How long an entry is offered again while no server answers, in ms. */
const PATIENCE = 10_000;
const PAUSE = 200;

/** The offers of a stream. */
export function entryOffers({ streams, stream, now, trouble }: OffersParts): EntryOffers {
  const findUntil = async (
    query: { readonly last_by_subj: string } | { readonly seq: number },
    end: number,
  ): Promise<StoredMsg | null> => {
    for (;;) {
      try {
        return await streams.manager.streams.getMessage(stream, query);
      } catch (cause) {
        if (performance.now() > end) throw trouble(cause);
      }
      await wait(PAUSE);
    }
  };

  return {
    find: (subject) => findUntil({ last_by_subj: subject }, performance.now() + PATIENCE),
    at: (seq) => findUntil({ seq }, performance.now() + PATIENCE),
    offer: async (offered) => {
      const { subject, entry, via, attempt } = offered;
      const text = JSON.stringify(entry.wire);
      const about = headers();
      about.set(RECEIVED, String(now()));
      about.set(ATTEMPT, attempt);
      if (via !== null) about.set(VIA, toToken(via));
      const end = performance.now() + PATIENCE;
      for (;;) {
        try {
          const { seq } = await streams.client.publish(subject, text, {
            headers: about,
            timeout: ANSWER_TIME,
          });
          return { kind: "accepted", offset: seq };
        } catch (cause) {
          const code = cause instanceof JetStreamApiError ? cause.code : null;
          if (code === SUBJECT_IS_TAKEN) {
            const other = await findUntil({ last_by_subj: subject }, end);
            if (other) return outcomeBeside(other, offered);
          } else if ((code !== null && FINAL.has(code)) || isTooLarge(cause) || performance.now() > end)
            throw trouble(cause);
        }
        await wait(PAUSE);
      }
    },
  };
}

/** Whether what is there is this very entry (kept by an attempt whose answer was lost), the same one, or another. */
function outcomeBeside(other: StoredMsg, { entry, attempt }: OfferedEntry): AppendOutcome {
  if (other.header.get(ATTEMPT) === attempt) return { kind: "accepted", offset: other.seq };
  return compareEntry(other.string(), entry);
}

function isTooLarge(cause: unknown): boolean {
  return cause instanceof Error && /max_payload|maximum payload/i.test(cause.message);
}
