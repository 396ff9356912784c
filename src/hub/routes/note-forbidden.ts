import type { FastifyInstance } from "fastify";
import type { Instant } from "../../core/units/index.ts";
import { AnswerError } from "../answer/index.ts";
import type { Journal } from "../journal/index.ts";
import { knownCaller } from "./who-asks.ts";

/** For how long the same is not written down again, in ms, and how much is remembered for that. */
const ONCE_IN = 60_000;
const MOST_REMEMBERED = 1_000;

/**
 * Writes down what was answered 403, but for codes and names that were refused on joining, of which more is written down there. The same
 * of the same asker is written down once a minute, so that nobody fills the journal.
 */
export function noteForbidden(app: FastifyInstance, journal: Journal, now: () => Instant): void {
  const noted = new Map<string, Instant>();
  app.addHook("onError", async (request, _reply, cause) => {
    if (!(cause instanceof AnswerError) || cause.statusCode !== 403) return;
    const why = cause.error;
    if (request.url.startsWith("/api/join") && why !== "cross-site") return;
    const caller = knownCaller(request);
    const member = caller?.kind === "member" ? caller.member : null;
    const [walk, device, address] = [member?.walk ?? null, member?.device ?? null, request.ip];
    const key = JSON.stringify([walk, device, why, address]);
    const since = noted.get(key);
    if (since !== undefined && Math.abs(now() - since) < ONCE_IN) return;
    if (noted.size >= MOST_REMEMBERED) noted.clear();
    noted.set(key, now());
    journal.note({ event: "forbidden", walk, device, why, address });
  });
}
