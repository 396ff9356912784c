import type { IncomingMessage } from "node:http";
import { createParser } from "eventsource-parser";
import type { z } from "zod";
import type { Cursor, FarSide, Joined, PushAnswer } from "../../core/link/index.ts";
import {
  hubErrorSchema,
  hubWalksSchema,
  joinedSchema,
  messageOf,
  pushAnswerSchema,
  retryAfterOf,
  TurnedAwayError,
  UnreachableError,
  writeCursor,
} from "../../core/link/index.ts";
import type { Entry } from "../../core/log/index.ts";
import { jsonOf } from "../../core/log/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import type { AskFar, FarRequest } from "./far-request.ts";

/** The interface of another hub, as far as a link needs it. Every promise rejects as a {@link FarSide}'s. */
export interface FarClient {
  /** All walks that there are, for its owner's code. */
  walks(code: string, signal: AbortSignal): Promise<readonly WalkId[]>;
  /** Asks to be let into a walk, or with `null` into the one of the invitation. */
  join(code: string, walk: WalkId | null, who: RelayName, signal: AbortSignal): Promise<Joined>;
  /** A walk, for a token of it. */
  side(walk: WalkId, token: string): FarSide;
  /** Says how far this hub has read. */
  seen(walk: WalkId, token: string, cursor: Cursor, signal: AbortSignal): Promise<void>;
}

/** How this hub is called over there. */
export interface RelayName {
  readonly device: string;
  readonly name: string;
}

/** Characters of one event or answer, at most. */
const LONGEST = 16_000_000;
/** Characters of what another hub says of a failure, at most. */
const LONGEST_WORDS = 300;
const BATCH = "application/cloudevents-batch+json";
/** Statuses that say that what was sent is wrong, and will be wrong again. */
const UNACCEPTABLE: ReadonlySet<number> = new Set([400, 413, 415, 422]);

/** What was sent is not to the other hub's liking. */
class UnacceptableError extends Error {
  override readonly name = "UnacceptableError";
}

/** Another hub, asked over the network. */
export function farClient(ask: AskFar): FarClient {
  /** The answer, when it is a good one. */
  const good = async (request: FarRequest): Promise<IncomingMessage> => {
    const answer = await ask(request);
    const { statusCode = 0, headers } = answer;
    if (statusCode >= 200 && statusCode < 300) return answer;
    const words = wordsOf(await textOf(answer)) ?? `The other hub answered ${statusCode}.`;
    if (statusCode === 401 || statusCode === 403) throw new TurnedAwayError(words);
    if (UNACCEPTABLE.has(statusCode)) throw new UnacceptableError(words);
    throw new UnreachableError(words, { retryAfter: retryAfterOf(headers["retry-after"]) });
  };
  const askFor = async <Schema extends z.ZodType>(
    schema: Schema,
    request: FarRequest,
  ): Promise<z.output<Schema>> => {
    const parsed = schema.safeParse(jsonOf(await textOf(await good(request))));
    if (!parsed.success) throw new UnreachableError("What answers there is no hub that this one knows.");
    return parsed.data;
  };
  const entriesPath = (walk: WalkId) => `/api/walks/${encodeURIComponent(walk)}/entries`;

  /** Offers a batch; one that the other hub will not look at is cut in two, until the entry it will not have is alone. */
  const push = async (
    walk: WalkId,
    token: string,
    entries: readonly Entry[],
    signal: AbortSignal,
  ): Promise<PushAnswer> => {
    const body = JSON.stringify(entries.map(({ wire }) => wire));
    const headers = { authorization: `Bearer ${token}`, "content-type": BATCH };
    try {
      return await askFor(pushAnswerSchema, {
        method: "POST",
        path: entriesPath(walk),
        headers,
        body,
        signal,
      });
    } catch (cause) {
      if (!(cause instanceof UnacceptableError)) throw cause;
      const [first] = entries;
      if (entries.length > 1) {
        const half = Math.ceil(entries.length / 2);
        const one = await push(walk, token, entries.slice(0, half), signal);
        const two = await push(walk, token, entries.slice(half), signal);
        return { ...two, results: [...one.results, ...two.results] };
      }
      if (!first) throw cause;
      const { source, id } = first.wire;
      const result = {
        source,
        id,
        outcome: "refused",
        reason: "not-an-entry",
        words: cause.message,
      } as const;
      return { results: [result], gaps: [], now: first.at };
    }
  };

  return {
    walks: async (code, signal) => {
      const headers = { authorization: `Bearer ${code}` };
      const { walks } = await askFor(hubWalksSchema, { method: "GET", path: "/api/walks", headers, signal });
      return walks.map(({ walk }) => walk);
    },
    join: (code, walk, { device, name }, signal) =>
      askFor(joinedSchema, {
        method: "POST",
        path: "/api/join",
        headers: { "content-type": "application/json" },
        body: JSON.stringify({
          code,
          device,
          name,
          role: "relay",
          use: "bearer",
          ...(walk === null ? {} : { walk }),
        }),
        signal,
      }),
    side: (walk, token) => ({
      push: (entries, signal) => push(walk, token, entries, signal),
      follow: async (after, hear, signal) => {
        const headers = {
          authorization: `Bearer ${token}`,
          accept: "text/event-stream",
          ...(after === null ? {} : { "last-event-id": writeCursor(after) }),
        };
        const answer = await good({ method: "GET", path: entriesPath(walk), headers, signal });
        if (!answer.headers["content-type"]?.startsWith("text/event-stream")) {
          answer.destroy();
          throw new UnreachableError("What answers there is no hub that this one knows.");
        }
        const parser = createParser({
          maxBufferSize: LONGEST,
          onEvent: (event) => {
            const message = messageOf(event, walk);
            if (message) hear(message);
          },
        });
        answer.setEncoding("utf8");
        try {
          for await (const text of answer) {
            hear({ kind: "alive" });
            parser.feed(String(text));
          }
        } catch (cause) {
          throw new UnreachableError("The connection to the other hub was lost.", { cause });
        }
      },
    }),
    seen: async (walk, token, cursor, signal) => {
      const answer = await good({
        method: "POST",
        path: `/api/walks/${encodeURIComponent(walk)}/presence`,
        headers: { authorization: `Bearer ${token}`, "content-type": "application/json" },
        body: JSON.stringify({ cursor: writeCursor(cursor) }),
        signal,
      });
      await textOf(answer);
    },
  };
}

async function textOf(answer: IncomingMessage): Promise<string> {
  answer.setEncoding("utf8");
  let text = "";
  try {
    for await (const part of answer) {
      text += String(part);
      if (text.length > LONGEST) throw new Error("too long");
    }
  } catch (cause) {
    throw new UnreachableError("The connection to the other hub was lost.", { cause });
  }
  return text;
}

/** What another hub says of a failure, as one short line: it goes to the console. */
function wordsOf(text: string): string | null {
  const parsed = hubErrorSchema.safeParse(jsonOf(text));
  if (!parsed.success) return null;
  return parsed.data.words
    .replaceAll(/[\p{Cc}\p{Cf}\s]+/gu, " ")
    .trim()
    .slice(0, LONGEST_WORDS);
}
