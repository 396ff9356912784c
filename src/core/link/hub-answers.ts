import type { z } from "zod";
import type { Said } from "../../words/index.ts";
import { SaidError } from "../../words/index.ts";
import { jsonOf } from "../log/index.ts";
import { hubErrorSchema } from "./exchange.ts";
import type { AskHub, HubAnswer, HubRequest } from "./hub-request.ts";
import { TurnedAwayError, UnreachableError } from "./link-sides.ts";
import { retryAfterOf } from "./retry-after.ts";

/** The hub understood what was asked and would not do it; the message is what it said. */
export class HubRefusedError extends SaidError {
  override readonly name = "HubRefusedError";
  /** The hub's own word for it, such as `walk-needed`. */
  readonly reason: string;

  constructor(reason: string, said: Said) {
    super(said);
    this.reason = reason;
  }
}

/** How a client of hubs speaks of them to its reader, and which answers it takes for a refusal. */
export interface HubManner {
  /** What to say of an answer of this status (300 or above) that brought no sentence of its own. */
  readonly failed: (status: number) => Said;
  /** What to say when the connection broke off in the middle of an answer. */
  readonly brokenOff: Said;
  /** What to say of an answer that is not JSON. */
  readonly notJson: Said;
  /** What to say of an answer that is JSON, but not what a hub answers. */
  readonly unknown: Said;
  /** What to say when a stream of events was asked for and something else came. */
  readonly noStream: Said;
  /** What to say when the connection broke off in the middle of a stream. */
  readonly streamLost: Said;
  /**
   * Whether an answer of this status, which is not 401 or 403, says that the request is wrong and will be wrong again.
   * `isSaid` tells whether the hub gave a reason. Everything else is taken for a failure that may pass.
   */
  readonly isRefusal: (status: number, isSaid: boolean) => boolean;
}

/** Characters of one event or answer, at most; no hub takes an entry nearly so long. */
export const LONGEST_TEXT = 16_000_000;

/** Characters of a hub's own sentence about a failure, at most. */
const LONGEST_SENTENCE = 300;

/**
 * The answer to a request when its status is 200 to 299. Rejects with a {@link TurnedAwayError} for 401 and 403, with a
 * {@link HubRefusedError} for a refusal, and with an {@link UnreachableError} for everything else.
 */
export async function goodAnswer(ask: AskHub, request: HubRequest, manner: HubManner): Promise<HubAnswer> {
  const answer = await ask(request);
  const { status } = answer;
  if (status >= 200 && status < 300) return answer;
  const said = hubErrorSchema().safeParse(jsonOf(await textOf(answer, manner))).data ?? null;
  const words = said ? oneLine(said.words) : manner.failed(status);
  if (status === 401 || status === 403) throw new TurnedAwayError(words, { reason: said?.error ?? null });
  if (manner.isRefusal(status, said !== null))
    throw new HubRefusedError(said?.error ?? String(status), words);
  throw new UnreachableError(words, { retryAfter: retryAfterOf(answer.header("retry-after")) });
}

/** The body of an answer, read by its schema; rejects with an {@link UnreachableError} when it is something else. */
export async function readAs<Schema extends z.ZodType>(
  answer: HubAnswer,
  schema: Schema,
  manner: HubManner,
): Promise<z.output<Schema>> {
  const value = jsonOf(await textOf(answer, manner));
  if (value === undefined) throw new UnreachableError(manner.notJson);
  const parsed = schema.safeParse(value);
  if (!parsed.success) throw new UnreachableError(manner.unknown);
  return parsed.data;
}

/** The whole body of an answer; rejects with an {@link UnreachableError} when it breaks off or has no end. */
export async function textOf(answer: HubAnswer, { brokenOff }: HubManner): Promise<string> {
  let text = "";
  try {
    for await (const piece of answer.text) {
      text += piece;
      if (text.length > LONGEST_TEXT) throw new RangeError("The answer is too long.");
    }
  } catch (cause) {
    throw new UnreachableError(brokenOff, { cause });
  }
  return text;
}

/** A hub's sentence as one short line: it may go to a console, and whatever answers may be no hub at all. */
function oneLine(words: string): string {
  return words
    .replaceAll(/[\p{Cc}\p{Cf}\s]+/gu, " ")
    .trim()
    .slice(0, LONGEST_SENTENCE);
}
