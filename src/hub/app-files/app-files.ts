import { existsSync } from "node:fs";
import { basename, join, sep } from "node:path";
import fastifyStatic from "@fastify/static";
import type { FastifyInstance, FastifyRequest } from "fastify";

/** Whether a folder holds a built app. */
export function hasApp(folder: string): boolean {
  return existsSync(join(folder, "index.html"));
}

/** Whether a request is for a page of the app, whose address only the app itself understands. */
export function asksForPage({ method, url, headers }: FastifyRequest): boolean {
  const path = url.split("?", 1)[0] ?? "";
  return (
    (method === "GET" || method === "HEAD") &&
    !/^\/(api|metrics)(\/|$)/.test(path) &&
    !/\/\.|\.[^/]*$/.test(path) &&
    /text\/html|\*\/\*/.test(headers.accept ?? "*/*")
  );
}

/** How the file of the worker begins that proves a best split. */
const PROVES = "proof-worker-";

/** Serves the files of a built app, and nothing beside its folder. */
export async function serveApp(app: FastifyInstance, folder: string): Promise<void> {
  app.addHook("onSend", async ({ url }, reply) => {
    // What keeps answers for others must not hand a packed one to somebody who cannot unpack it.
    if (url.startsWith("/assets/"))
      reply.header("vary", [reply.getHeader("vary") ?? [], "accept-encoding"].flat().join(", "));
  });
  await app.register(fastifyStatic, {
    root: folder,
    dotfiles: "ignore",
    // The build lays what packs well beside itself in Gzip (RFC 1952).
    preCompressed: true,
    cacheControl: false,
    setHeaders: (reply, path) => {
      // Names under assets change with their content; everything else is asked for anew.
      const lasts = path.startsWith(join(folder, "assets") + sep);
      reply.setHeader("cache-control", lasts ? "public, max-age=31536000, immutable" : "no-cache");
      // The one worker that compiles the solver may do so; pages and all other workers may compile nothing.
      const policy = reply.getHeader("content-security-policy");
      if (lasts && basename(path).startsWith(PROVES) && typeof policy === "string")
        reply.setHeader(
          "content-security-policy",
          policy.replace("script-src 'self'", "script-src 'self' 'wasm-unsafe-eval'"),
        );
    },
  });
}
