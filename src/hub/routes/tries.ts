import type { FastifyRequest } from "fastify";
import { message } from "../../words/index.ts";
import type { Admission } from "../admission/index.ts";
import { AnswerError } from "../answer/index.ts";
import type { Journal } from "../journal/index.ts";
import { addressPrefix } from "./address-prefix.ts";
import type { GuessBook } from "./guess-book.ts";

/** A code that somebody sent, and what is made of it. */
export interface Tried<T> {
  readonly request: FastifyRequest;
  readonly code: string;
  readonly judge: () => Promise<T>;
  readonly isWrong: (value: T) => boolean;
}

/** Judges codes: the owner's at once, whatever others guessed from its address, and all others in their turn. */
export class Tries {
  readonly #book: GuessBook;
  readonly #admission: Admission;
  readonly #journal: Journal;

  constructor(book: GuessBook, admission: Admission, journal: Journal) {
    this.#book = book;
    this.#admission = admission;
    this.#journal = journal;
  }

  /** What came of a code; throws the answer when its address has to wait. */
  async judged<T>({ request, code, judge, isWrong }: Tried<T>): Promise<T> {
    if (this.#admission.isOwners(code)) return judge();
    const { ip } = request;
    const guessed = await this.#book.judged(addressPrefix(ip), code, judge, (value) => {
      const isGuess = isWrong(value);
      if (isGuess) this.#journal.note({ event: "wrong-code", address: ip });
      return isGuess;
    });
    if (guessed.kind === "judged") return guessed.value;
    const { seconds } = guessed;
    throw new AnswerError(429, "too-many-tries", message("answer/too-many-tries", { seconds }), seconds);
  }
}
