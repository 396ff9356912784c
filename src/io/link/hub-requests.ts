import { hubErrorSchema, TurnedAwayError, UnreachableError } from "../../core/log/index.ts";

/** A hub that is asked over HTTP. */
export interface HubRequests {
  /** Where it is: scheme, host and port. */
  readonly origin: string;
  readonly fetch: typeof globalThis.fetch;
}

/** A hub would not do what it was asked, for a reason that asking again does not change. */
export class HubRefusalError extends Error {
  override readonly name = "HubRefusalError";
}

/** How long an answer may take that somebody is waiting for, in ms. */
const PATIENCE = 15_000;

/** Asks a hub with the cookie of this device; rejects with {@link UnreachableError} or what `refusal` makes of a refusal. */
export async function ask(
  { origin, fetch }: HubRequests,
  path: string,
  init: RequestInit = {},
  refusal: (words: string, status: number) => Error = (words) => new HubRefusalError(words),
): Promise<Response> {
  let response: Response;
  try {
    response = await fetch(`${origin}${path}`, {
      credentials: "same-origin",
      cache: "no-store",
      signal: AbortSignal.timeout(PATIENCE),
      ...init,
    });
  } catch (error) {
    throw new UnreachableError("the hub cannot be reached", { cause: error });
  }
  if (response.ok) return response;
  const words = await wordsOf(response);
  const { status } = response;
  if (status === 413 || status === 429 || status >= 500) {
    const seconds = Number(response.headers.get("retry-after") ?? Number.NaN);
    throw new UnreachableError(words, { retryAfter: Number.isFinite(seconds) ? seconds * 1000 : null });
  }
  throw refusal(words, status);
}

/** A JSON body, posted. */
export function posted(body: unknown, type = "application/json"): RequestInit {
  return { method: "POST", headers: { "content-type": type }, body: JSON.stringify(body) };
}

/** What a refusal does to a link: the hub will not have this device any more. */
export function turnedAway(words: string, status: number): Error {
  return status === 401 || status === 403 || status === 404
    ? new TurnedAwayError(words)
    : new UnreachableError(words);
}

async function wordsOf(response: Response): Promise<string> {
  try {
    const parsed = hubErrorSchema.safeParse(await response.json());
    if (parsed.success) return parsed.data.words;
  } catch {
    // Something in between answered, not a hub.
  }
  return `the hub answered ${response.status}`;
}
