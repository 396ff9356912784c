import type { FastifyRequest } from "fastify";

const SAFE: ReadonlySet<string> = new Set(["GET", "HEAD", "OPTIONS"]);

/**
 * Whether a browser says that a request which changes something comes from a page of another origin. A cookie goes along
 * with requests from other ports of the same machine too, whatever SameSite says; programs that are no browser say nothing.
 */
export function asksFromElsewhere({ method, headers }: FastifyRequest): boolean {
  if (SAFE.has(method)) return false;
  const site = headers["sec-fetch-site"];
  if (site !== undefined) return site !== "same-origin" && site !== "none";
  const { origin, host } = headers;
  if (origin === undefined) return false;
  try {
    return new URL(origin).host !== host;
  } catch {
    return true;
  }
}
