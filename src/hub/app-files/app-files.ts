import { existsSync } from "node:fs";
import { join, sep } from "node:path";
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

/** Serves the files of a built app, and nothing beside its folder. */
export async function serveApp(app: FastifyInstance, folder: string): Promise<void> {
  await app.register(fastifyStatic, {
    root: folder,
    dotfiles: "ignore",
    cacheControl: false,
    setHeaders: (reply, path) => {
      // Names under assets change with their content; everything else is asked for anew.
      const lasts = path.startsWith(join(folder, "assets") + sep);
      reply.setHeader("cache-control", lasts ? "public, max-age=31536000, immutable" : "no-cache");
    },
  });
}
