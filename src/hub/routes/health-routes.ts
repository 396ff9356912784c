import type { FastifyInstance } from "fastify";
import { formatInstant } from "../../core/units/index.ts";
import { message } from "../../words/index.ts";
import { AnswerError } from "../answer/index.ts";
import { EngineTroubleError } from "../engine/index.ts";
import type { HubParts } from "./hub-parts.ts";

/** Whether the store can be written is tried at most so often, in ms. */
const TRIED_EVERY = 1000;

/** How the hub is, what time it is, and its figures: for anyone. */
export function healthRoutes(app: FastifyInstance, { engine, surroundings, metrics }: HubParts): void {
  const now = () => formatInstant(surroundings.now());
  let tried: { readonly at: number; readonly outcome: Promise<void> } | null = null;

  app.get("/api/health", async () => {
    if (!tried || Math.abs(surroundings.now() - tried.at) > TRIED_EVERY) {
      tried = { at: surroundings.now(), outcome: engine.keep.put("health", now()) };
    }
    try {
      await tried.outcome;
    } catch (cause) {
      if (cause instanceof EngineTroubleError) throw cause;
      throw new AnswerError(503, "store", message("answer/store"), 5);
    }
    return { status: "ok", engine: engine.kind, epoch: engine.epoch, now: now() };
  });

  app.get("/api/clock", () => ({ now: now() }));

  app.get("/metrics", async (_request, reply) => reply.type(metrics.contentType).send(await metrics.text()));
}
