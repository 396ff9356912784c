import type { FastifyInstance } from "fastify";
import type { z } from "zod";
import { message } from "../../words/index.ts";
import { AnswerError } from "../answer/index.ts";

/** A batch of entries as CloudEvents has it, and one event alone. */
export const BATCH_TYPE = "application/cloudevents-batch+json";
export const SINGLE_TYPE = "application/cloudevents+json";

declare module "fastify" {
  interface FastifyRequest {
    /** Bytes of the body. */
    bodyLength: number;
  }
}

const NOT_JSON = new AnswerError(400, "bad-body", message("answer/not-json"));

/** Reads bodies of the three types, and only what is JSON in faultless UTF-8 without keys that could change objects. */
export function readJsonBodies(app: FastifyInstance): void {
  const parse = app.getDefaultJsonParser("error", "error");
  app.decorateRequest("bodyLength", 0);
  app.removeAllContentTypeParsers();
  app.addContentTypeParser(
    ["application/json", BATCH_TYPE, SINGLE_TYPE],
    { parseAs: "buffer" },
    (request, body, done) => {
      request.bodyLength = body.length;
      if (body.length === 0) return done(null, undefined);
      let text: string;
      try {
        text = new TextDecoder("utf-8", { fatal: true }).decode(body as Buffer);
      } catch {
        return done(NOT_JSON, undefined);
      }
      // Returns nothing: it calls back.
      void parse(request, text, (error, value) => done(error && NOT_JSON, value));
    },
  );
}

/** A body, when it is what a schema says; throws the answer otherwise. */
export function bodyOf<Schema extends z.ZodType>(body: unknown, schema: Schema): z.output<Schema> {
  const read = schema.safeParse(body);
  if (read.success) return read.data;
  const where = read.error.issues[0]?.path.map(String).join(".");
  throw new AnswerError(
    400,
    "bad-body",
    where ? message("answer/bad-part", { where }) : message("answer/bad-body"),
  );
}
