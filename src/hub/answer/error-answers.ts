import type { Socket } from "node:net";
import type { FastifyError, FastifyInstance, FastifyReply } from "fastify";
import type { Message } from "../../words/index.ts";
import { inWords, message, words } from "../../words/index.ts";
import { EngineTroubleError } from "../engine/index.ts";
import { AnswerError } from "./answer-error.ts";

const NOT_UNDERSTOOD = message("answer/not-understood");

/** What Fastify itself refuses, in our words. */
const FASTIFY_WORDS: Readonly<Record<string, readonly [error: string, said: Message]>> = {
  FST_ERR_CTP_BODY_TOO_LARGE: ["too-large", message("answer/body-too-large")],
  FST_ERR_CTP_INVALID_MEDIA_TYPE: ["media-type", message("answer/media-type")],
  FST_ERR_CTP_INVALID_CONTENT_LENGTH: ["bad-request", message("answer/content-length")],
  FST_ERR_BAD_URL: ["bad-address", message("answer/bad-address")],
};

/** An error as the answer to a request; `tell` hears of those that are a mistake of ours. */
export function answerOf(cause: unknown, tell: (words: string) => void): AnswerError {
  if (cause instanceof AnswerError) return cause;
  if (cause instanceof EngineTroubleError) return new AnswerError(503, "store", cause.said, 5);
  const { statusCode, code } = cause as Partial<FastifyError>;
  const [error, said] = FASTIFY_WORDS[code ?? ""] ?? [];
  if (error !== undefined && said !== undefined) return new AnswerError(statusCode ?? 400, error, said);
  if (statusCode !== undefined && statusCode >= 400 && statusCode < 500) {
    return new AnswerError(statusCode, "bad-request", NOT_UNDERSTOOD);
  }
  const what = cause instanceof Error ? `${cause.name}: ${cause.message}` : String(cause);
  tell(words("hub/own-mistake", { what: what.replaceAll(/\s+/g, " ") }));
  return new AnswerError(500, "mistake", message("answer/own-mistake"));
}

/** Sends an error as `{error, words}`. */
export function sendAnswer(reply: FastifyReply, { statusCode, error, said, retryAfter }: AnswerError) {
  if (statusCode === 401) reply.header("www-authenticate", "Bearer");
  if (retryAfter !== null) reply.header("retry-after", retryAfter);
  return reply
    .code(statusCode)
    .type("application/json; charset=utf-8")
    .send(JSON.stringify({ error, words: inWords(said) }));
}

/** Makes every error of a server an answer in our form. */
export function answerErrors(app: FastifyInstance, tell: (words: string) => void): void {
  app.setErrorHandler((cause, _request, reply) => sendAnswer(reply, answerOf(cause, tell)));
}

const RAW: Readonly<Record<string, readonly [status: string, error: string, said: Message]>> = {
  HPE_HEADER_OVERFLOW: [
    "431 Request Header Fields Too Large",
    "too-large",
    message("answer/headers-too-large"),
  ],
  ERR_HTTP_REQUEST_TIMEOUT: ["408 Request Timeout", "too-slow", message("answer/too-slow")],
};

/** Answers what is no HTTP at all, and ends the connection. */
export function answerUnreadable(cause: Error & { readonly code?: string }, socket: Socket): void {
  if (cause.code === "ECONNRESET" || socket.destroyed || !socket.writable) {
    socket.destroy();
    return;
  }
  const [status, error, said] = RAW[cause.code ?? ""] ?? ["400 Bad Request", "bad-request", NOT_UNDERSTOOD];
  answerRaw(socket, status, error, said);
}

/** How long a client may take to read a raw answer, in ms. */
const READ_WITHIN = 5_000;

/** Answers where there is no request to answer, and closes the connection, also when the other side does not. */
export function answerRaw(socket: Socket, status: string, error: string, said: Message): void {
  socket.on("error", () => socket.destroy());
  setTimeout(() => socket.destroy(), READ_WITHIN).unref();
  const body = JSON.stringify({ error, words: inWords(said) });
  socket.end(
    `HTTP/1.1 ${status}\r\nContent-Type: application/json; charset=utf-8\r\nContent-Length: ${Buffer.byteLength(body)}\r\nConnection: close\r\n\r\n${body}`,
    () => socket.destroySoon(),
  );
}
