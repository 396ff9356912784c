import type { FastifyInstance } from "fastify";
import { formatInstant } from "../../core/units/index.ts";
import { inWords, message } from "../../words/index.ts";
import { AnswerError } from "../answer/index.ts";
import { EngineTroubleError } from "../engine/index.ts";
import type { HubParts } from "./hub-parts.ts";
import { knownCaller } from "./who-asks.ts";

/** Whether the store can be written is tried at most so often, in ms. */
const TRIED_EVERY = 1000;

/** How the hub is, what time it is, and its figures: for anyone. */
export function healthRoutes(
  app: FastifyInstance,
  { engine, surroundings, metrics, key, tell }: HubParts,
): void {
  const now = () => formatInstant(surroundings.now());
  let told = "";
  let tried: { readonly at: number; readonly outcome: Promise<void> } | null = null;

  app.get("/api/health", async () => {
    if (!tried || Math.abs(surroundings.now() - tried.at) > TRIED_EVERY) {
      tried = { at: surroundings.now(), outcome: engine.keep.put("health", now()) };
    }
    try {
      await tried.outcome;
      told = "";
    } catch (cause) {
      // The console says more; a stranger is told no paths.
      if (cause instanceof EngineTroubleError && cause.message !== told) tell(cause.message);
      told = cause instanceof EngineTroubleError ? cause.message : "";
      throw new AnswerError(503, "store", message("answer/store"), 5);
    }
    const caution = engine.caution ? { caution: inWords(engine.caution) } : {};
    const { publicKey } = key;
    return { status: "ok", engine: engine.kind, epoch: engine.epoch, key: publicKey, now: now(), ...caution };
  });

  app.get("/api/clock", () => ({ now: now() }));

  app.get("/metrics", async (request, reply) => {
    const isOwner = knownCaller(request)?.kind === "owner";
    return reply.type(metrics.contentType).send(await metrics.text({ isOwner }));
  });
}
