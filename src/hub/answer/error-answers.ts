import type { Socket } from "node:net";
import type { FastifyError, FastifyInstance, FastifyReply } from "fastify";
import { EngineTroubleError } from "../engine/index.ts";
import { AnswerError } from "./answer-error.ts";

/** What Fastify itself refuses, in our words. */
const FASTIFY_WORDS: Readonly<Record<string, readonly [error: string, words: string]>> = {
  FST_ERR_CTP_BODY_TOO_LARGE: ["too-large", "The body is over 4 MB: send it in smaller parts."],
  FST_ERR_CTP_INVALID_MEDIA_TYPE: [
    "media-type",
    "Send application/json, application/cloudevents-batch+json or application/cloudevents+json.",
  ],
  FST_ERR_CTP_INVALID_CONTENT_LENGTH: ["bad-request", "The body is not as long as its Content-Length says."],
  FST_ERR_BAD_URL: ["bad-address", "The address is not written as an address is."],
};

/** An error as the answer to a request; `tell` hears of those that are a mistake of ours. */
export function answerOf(cause: unknown, tell: (words: string) => void): AnswerError {
  if (cause instanceof AnswerError) return cause;
  if (cause instanceof EngineTroubleError) return new AnswerError(503, "store", cause.message, 5);
  const { statusCode, code } = cause as Partial<FastifyError>;
  const [error, words] = FASTIFY_WORDS[code ?? ""] ?? [];
  if (error !== undefined && words !== undefined) return new AnswerError(statusCode ?? 400, error, words);
  if (statusCode !== undefined && statusCode >= 400 && statusCode < 500) {
    return new AnswerError(statusCode, "bad-request", "The request cannot be understood.");
  }
  const what = cause instanceof Error ? `${cause.name}: ${cause.message}` : String(cause);
  tell(`The hub met a mistake of its own: ${what.replaceAll(/\s+/g, " ")}`);
  return new AnswerError(500, "mistake", "The hub met a mistake of its own; its console says more.");
}

/** Sends an error as `{error, words}`. */
export function sendAnswer(reply: FastifyReply, { statusCode, error, message, retryAfter }: AnswerError) {
  if (statusCode === 401) reply.header("www-authenticate", "Bearer");
  if (retryAfter !== null) reply.header("retry-after", retryAfter);
  return reply
    .code(statusCode)
    .type("application/json; charset=utf-8")
    .send(JSON.stringify({ error, words: message }));
}

/** Makes every error of a server an answer in our form. */
export function answerErrors(app: FastifyInstance, tell: (words: string) => void): void {
  app.setErrorHandler((cause, _request, reply) => sendAnswer(reply, answerOf(cause, tell)));
}

const RAW: Readonly<Record<string, readonly [status: string, error: string, words: string]>> = {
  HPE_HEADER_OVERFLOW: ["431 Request Header Fields Too Large", "too-large", "The headers are over 16 kB."],
  ERR_HTTP_REQUEST_TIMEOUT: ["408 Request Timeout", "too-slow", "The request took too long to come in."],
};

/** Answers what is no HTTP at all, and ends the connection. */
export function answerUnreadable(cause: Error & { readonly code?: string }, socket: Socket): void {
  if (cause.code === "ECONNRESET" || socket.destroyed || !socket.writable) {
    socket.destroy();
    return;
  }
  const [status, error, words] = RAW[cause.code ?? ""] ?? [
    "400 Bad Request",
    "bad-request",
    "The request cannot be understood.",
  ];
  const body = JSON.stringify({ error, words });
  socket.end(
    `HTTP/1.1 ${status}\r\nContent-Type: application/json; charset=utf-8\r\nContent-Length: ${Buffer.byteLength(body)}\r\nConnection: close\r\n\r\n${body}`,
  );
}
