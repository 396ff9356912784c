import cors from "@fastify/cors";
import type { FastifyInstance, FastifyRequest } from "fastify";

/**
 * The origins of the app's native shells, as `capacitor.config.ts` has them: no page of elsewhere has one of these, since a
 * site would have to be served by the very device that asks.
 */
export const SHELL_ORIGINS: readonly string[] = ["https://localhost", "capacitor://localhost"];

/** How long a browser may remember that it may ask, in s. */
const REMEMBERED = 600;

/** Lets the native shells ask and read the answers. They bring a token along, and never a cookie. */
export async function letShellsAsk(app: FastifyInstance): Promise<void> {
  await app.register(cors, {
    origin: [...SHELL_ORIGINS],
    credentials: false,
    methods: ["GET", "POST", "DELETE"],
    allowedHeaders: ["authorization", "content-type", "last-event-id"],
    exposedHeaders: ["retry-after"],
    maxAge: REMEMBERED,
  });
}

/** Whether a request comes from a native shell of the app. */
export function asksFromShell({ headers }: FastifyRequest): boolean {
  return headers.origin !== undefined && SHELL_ORIGINS.includes(headers.origin);
}
