import type { z } from "zod";
import { hubErrorSchema, retryAfterOf, TurnedAwayError, UnreachableError } from "../../core/link/index.ts";

/** The hub understood and would not: what it said is for the reader. */
export class HubRefusedError extends Error {
  override readonly name = "HubRefusedError";
  /** In a word, as the hub put it. */
  readonly reason: string;

  constructor(reason: string, words: string) {
    super(words);
    this.reason = reason;
  }
}

/** As much of the platform's `fetch` as is used. */
export type Fetch = (address: string, init: RequestInit) => Promise<Response>;

const NOT_REACHED = "The hub cannot be reached.";

/** The answer to a request, of status 200 to 299; rejects with what its status means otherwise. */
export async function answerTo(fetch: Fetch, address: string, init: RequestInit): Promise<Response> {
  let response: Response;
  try {
    response = await fetch(address, { credentials: "same-origin", cache: "no-store", ...init });
  } catch (cause) {
    throw new UnreachableError(NOT_REACHED, { cause });
  }
  if (response.ok) return response;
  const said = await refusalOf(response);
  const { status } = response;
  if (status === 401 || status === 403)
    throw new TurnedAwayError(said?.words ?? "The hub refused this device.");
  if (said !== null && status < 500 && status !== 413 && status !== 429)
    throw new HubRefusedError(said.error, said.words);
  throw new UnreachableError(said?.words ?? (status === 404 ? "There is no hub here." : NOT_REACHED), {
    retryAfter: retryAfterOf(response.headers.get("retry-after")),
  });
}

/** The body of an answer by its schema; rejects as unreachable when it is something else, such as a page. */
export async function readAs<Schema extends z.ZodType>(
  response: Response,
  schema: Schema,
): Promise<z.output<Schema>> {
  let body: unknown;
  try {
    body = await response.json();
  } catch (cause) {
    throw new UnreachableError(NOT_REACHED, { cause });
  }
  const parsed = schema.safeParse(body);
  if (!parsed.success) throw new UnreachableError("What answers here is no hub that this app knows.");
  return parsed.data;
}

async function refusalOf(response: Response): Promise<z.output<typeof hubErrorSchema> | null> {
  try {
    const parsed = hubErrorSchema.safeParse(await response.json());
    return parsed.success ? parsed.data : null;
  } catch {
    return null;
  }
}
