/** What a hub answers when it does not do what was asked: a status, a code for programs and a sentence for people. */
export class AnswerError extends Error {
  override readonly name = "AnswerError";
  readonly statusCode: number;
  readonly error: string;
  /** Seconds after which trying again makes sense; `null` where it does not depend on time. */
  readonly retryAfter: number | null;

  constructor(statusCode: number, error: string, words: string, retryAfter: number | null = null) {
    super(words);
    this.statusCode = statusCode;
    this.error = error;
    this.retryAfter = retryAfter;
  }
}
