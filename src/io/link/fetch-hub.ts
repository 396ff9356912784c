import type { AskHub, HubAnswer, HubManner, LinkTime } from "../../core/link/index.ts";
import { timeLimit, UnreachableError } from "../../core/link/index.ts";
import { message } from "../../words/index.ts";

/** The part of the platform's `fetch` that is used. */
export type Fetch = (address: string, init: RequestInit) => Promise<Response>;

/** What asking a hub from a page takes. */
export interface FetchHubParts {
  readonly fetch: Fetch;
  /** Where the hub is: scheme, host and port. */
  readonly origin: string;
  /** Goes along with what has no other credential; `null` where the browser has a cookie, which no script sees. */
  readonly token: string | null;
  readonly wait: LinkTime["wait"];
}

/** How long a small answer may take, all of it read, in ms: over a slow link it takes 40 s. */
const PATIENCE = 60_000;

const NOT_REACHED = message("link/not-reached");

/** Asks a hub by `fetch`. */
export function fetchHub({ fetch, origin, token, wait }: FetchHubParts): AskHub {
  const ours = token === null ? {} : { authorization: `Bearer ${token}` };
  return async ({ method, path, headers, body, signal, isLong }) => {
    const patience = isLong ? null : timeLimit(PATIENCE, { wait }, signal ?? null);
    const over = patience?.signal ?? signal;
    try {
      const response = await fetch(`${origin}${path}`, {
        method,
        headers: { ...ours, ...headers },
        credentials: "same-origin",
        cache: "no-store",
        ...(body === undefined ? {} : { body }),
        ...(over === undefined ? {} : { signal: over }),
      });
      return answerOf(response, () => patience?.end());
    } catch (cause) {
      patience?.end();
      throw new UnreachableError(NOT_REACHED, { cause });
    }
  };
}

function answerOf(response: Response, onEnd: () => void): HubAnswer {
  return {
    status: response.status,
    header: (name) => response.headers.get(name),
    text: piecesOf(response.body, onEnd),
    drop: () => {
      onEnd();
      response.body?.cancel().catch(() => {});
    },
  };
}

async function* piecesOf(
  body: ReadableStream<Uint8Array> | null,
  onEnd: () => void,
): AsyncGenerator<string, void, void> {
  const decoder = new TextDecoder();
  const reader = body?.getReader();
  try {
    while (reader) {
      const { done, value } = await reader.read();
      if (done) return;
      yield decoder.decode(value, { stream: true });
    }
  } finally {
    onEnd();
    // Cancel the reader, because releasing it alone would leave the connection open.
    reader?.cancel().catch(() => {});
  }
}

/** How a tablet speaks of the hub to whoever reads its screen. */
export const TABLET_MANNER: HubManner = {
  failed: (status) => {
    if (status === 401 || status === 403) return message("link/device-refused");
    return status === 404 ? message("link/no-hub-here") : NOT_REACHED;
  },
  brokenOff: NOT_REACHED,
  notJson: NOT_REACHED,
  unknown: message("link/unknown-hub"),
  noStream: message("link/no-hub"),
  streamLost: message("link/connection-lost"),
  isRefusal: (status, isSaid) => isSaid && status < 500 && status !== 413 && status !== 429,
};
