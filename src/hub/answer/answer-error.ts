import type { Said } from "../../words/index.ts";
import { SaidError } from "../../words/index.ts";
/** What a hub answers when it does not do what was asked: a status, a code for programs and a sentence for people. */
export class AnswerError extends SaidError {
  override readonly name = "AnswerError";
  readonly statusCode: number;
  readonly error: string;
  /** Seconds after which trying again makes sense; `null` where it does not depend on time. */
  readonly retryAfter: number | null;

  constructor(statusCode: number, error: string, said: Said, retryAfter: number | null = null) {
    super(said);
    this.statusCode = statusCode;
    this.error = error;
    this.retryAfter = retryAfter;
  }
}
