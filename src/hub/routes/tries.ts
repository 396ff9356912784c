import type { FastifyRequest } from "fastify";
import type { AnswerError } from "../answer/index.ts";

/** What counts wrong codes. */
export interface Tries {
  /** Whether an address had all its tries. */
  areOver(request: FastifyRequest): Promise<boolean>;
  /** Counts a wrong code. */
  failed(request: FastifyRequest): Promise<void>;
  tooMany(): AnswerError;
}
