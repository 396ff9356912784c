import type { Cursor, Entry, Invitation, Joined, PushAnswer, Role } from "../../core/log/index.ts";
import {
  hubClockSchema,
  invitationSchema,
  joinedSchema,
  pushAnswerSchema,
  writeCursor,
} from "../../core/log/index.ts";
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
    return (await readAs(await this.#ask("GET", "/api/clock", undefined, signal), hubClockSchema)).now;
  }

  async join(request: JoinRequest): Promise<Joined> {
    return readAs(await this.#ask("POST", "/api/join", { ...request, use: "cookie" }), joinedSchema);
  }

  async leave(walk: WalkId): Promise<void> {
    await this.#ask("POST", `${pathOf(walk)}/leave`, {});
  }

  async invite(walk: WalkId, role: Role, minutes: number): Promise<Invitation> {
    return readAs(
      await this.#ask("POST", `${pathOf(walk)}/invitations`, { role, minutes }),
      invitationSchema,
    );
  }

  async withdraw(walk: WalkId, device: string): Promise<void> {
    await this.#ask("DELETE", `${pathOf(walk)}/followers/${encodeURIComponent(device)}`);
  }

  /** Tells how far this device has read. */
  async present(walk: WalkId, cursor: Cursor, signal: AbortSignal): Promise<void> {
    await this.#ask("POST", `${pathOf(walk)}/presence`, { cursor: writeCursor(cursor) }, signal);
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
        ...(ownerCode === undefined ? {} : { authorization: `Bearer ${ownerCode}` }),
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

  async #ask(method: string, path: string, body?: unknown, signal?: AbortSignal): Promise<Response> {
    const over = new AbortController();
    const abort = () => over.abort();
    const timer = setTimeout(abort, PATIENCE);
    signal?.addEventListener("abort", abort, { once: true });
    if (signal?.aborted) abort();
    try {
      return await answerTo(this.#fetch, `${this.#origin}${path}`, {
        method,
        signal: over.signal,
        ...(body === undefined
          ? {}
          : { headers: { "content-type": "application/json" }, body: JSON.stringify(body) }),
      });
    } finally {
      clearTimeout(timer);
      signal?.removeEventListener("abort", abort);
    }
  }
}

function pathOf(walk: WalkId): string {
  return `/api/walks/${encodeURIComponent(walk)}`;
}
