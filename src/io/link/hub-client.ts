import type { z } from "zod";
import type { Cursor, HubWalk, Invitation, Joined, PushAnswer } from "../../core/link/index.ts";
import {
  hubClockSchema,
  hubWalksSchema,
  invitationSchema,
  joinedSchema,
  pushAnswerSchema,
  writeCursor,
} from "../../core/link/index.ts";
import type { Entry, Role } from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import type { Fetch } from "./hub-answers.ts";
import { answerTo, readAs } from "./hub-answers.ts";

/** What a device says on joining. */
export interface JoinRequest {
  /** Of an invitation, or the owner's. */
  readonly code: string;
  readonly device: string;
  readonly name: string;
  /** With the owner's code: which walk. */
  readonly walk?: WalkId;
}

/** What goes along with a small request. */
interface SmallRequest {
  readonly body?: unknown;
  readonly ownerCode?: string;
  readonly signal?: AbortSignal | undefined;
}

/** How long the answer to something small may take, in ms. */
const PATIENCE = 30_000;

/**
 * What a hub is asked, over HTTP. The app's token is in a cookie that no script sees. Everything rejects with
 * `UnreachableError`, `TurnedAwayError` or `HubRefusedError`, whose message is a sentence for the reader.
 */
export class HubClient {
  readonly #fetch: Fetch;
  readonly #origin: string;

  constructor(fetch: Fetch, origin: string) {
    this.#fetch = fetch;
    this.#origin = origin;
  }

  /** What the hub's clock shows. */
  async clock(signal?: AbortSignal): Promise<Instant> {
    return (await this.#ask("GET", "/api/clock", as(hubClockSchema), { signal })).now;
  }

  join(request: JoinRequest): Promise<Joined> {
    return this.#ask("POST", "/api/join", as(joinedSchema), { body: { ...request, use: "cookie" } });
  }

  /** All walks that the hub keeps, for its owner's code. */
  async walks(ownerCode: string): Promise<readonly HubWalk[]> {
    return (await this.#ask("GET", "/api/walks", as(hubWalksSchema), { ownerCode })).walks;
  }

  async leave(walk: WalkId): Promise<void> {
    await this.#ask("POST", `${pathOf(walk)}/leave`, unread, { body: {} });
  }

  invite(walk: WalkId, role: Role, minutes: number): Promise<Invitation> {
    return this.#ask("POST", `${pathOf(walk)}/invitations`, as(invitationSchema), {
      body: { role, minutes },
    });
  }

  async withdraw(walk: WalkId, device: string): Promise<void> {
    await this.#ask("DELETE", `${pathOf(walk)}/followers/${encodeURIComponent(device)}`, unread);
  }

  /** Tells how far this device has read. */
  async present(walk: WalkId, cursor: Cursor, signal: AbortSignal): Promise<void> {
    const body = { cursor: writeCursor(cursor) };
    await this.#ask("POST", `${pathOf(walk)}/presence`, unread, { body, signal });
  }

  /** Offers entries, with the owner's code when they are not this device's. Its answer may take as long as the signal lets it. */
  async push(
    walk: WalkId,
    entries: readonly Entry[],
    signal: AbortSignal,
    ownerCode?: string,
  ): Promise<PushAnswer> {
    const response = await answerTo(this.#fetch, `${this.#origin}${pathOf(walk)}/entries`, {
      method: "POST",
      headers: {
        "content-type": "application/cloudevents-batch+json",
        ...ownersHead(ownerCode),
      },
      body: JSON.stringify(entries.map(({ wire }) => wire)),
      signal,
    });
    return readAs(response, pushAnswerSchema);
  }

  /** The stream of a walk's log behind a cursor. */
  stream(walk: WalkId, after: Cursor | null, signal: AbortSignal): Promise<Response> {
    return answerTo(this.#fetch, `${this.#origin}${pathOf(walk)}/entries`, {
      headers: {
        accept: "text/event-stream",
        ...(after === null ? {} : { "last-event-id": writeCursor(after) }),
      },
      signal,
    });
  }

  /** Asks and reads the answer, all of it within {@link PATIENCE}. */
  async #ask<Answer>(
    method: string,
    path: string,
    read: (response: Response) => Promise<Answer>,
    { body, ownerCode, signal }: SmallRequest = {},
  ): Promise<Answer> {
    const over = new AbortController();
    const abort = () => over.abort();
    const timer = setTimeout(abort, PATIENCE);
    signal?.addEventListener("abort", abort, { once: true });
    if (signal?.aborted) abort();
    try {
      const response = await answerTo(this.#fetch, `${this.#origin}${path}`, {
        method,
        signal: over.signal,
        headers: {
          ...(body === undefined ? {} : { "content-type": "application/json" }),
          ...ownersHead(ownerCode),
        },
        ...(body === undefined ? {} : { body: JSON.stringify(body) }),
      });
      return await read(response);
    } finally {
      clearTimeout(timer);
      signal?.removeEventListener("abort", abort);
    }
  }
}

function ownersHead(ownerCode: string | undefined): Record<string, string> {
  return ownerCode === undefined ? {} : { authorization: `Bearer ${ownerCode}` };
}

/** Reads an answer by its schema. */
function as<Schema extends z.ZodType>(schema: Schema): (response: Response) => Promise<z.output<Schema>> {
  return (response) => readAs(response, schema);
}

/** For an answer of which only the status counts. */
async function unread(): Promise<void> {}

function pathOf(walk: WalkId): string {
  return `/api/walks/${encodeURIComponent(walk)}`;
}
