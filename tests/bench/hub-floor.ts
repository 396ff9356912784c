import type { ServerResponse } from "node:http";
import Fastify from "fastify";
import type { WireEntry } from "../../src/core/log/index.ts";

/**
 * The floor that hubs are measured against, a process of its own: entries posted go to whoever follows. Nothing is kept,
 * nobody is asked who he is. Prints its port.
 */
const app = Fastify({ bodyLimit: 4 * 1024 * 1024, forceCloseConnections: true });
const followers = new Set<ServerResponse>();
let offset = 0;

app.removeAllContentTypeParsers();
app.addContentTypeParser(
  "application/cloudevents-batch+json",
  { parseAs: "string" },
  app.getDefaultJsonParser("error", "error"),
);
app.post<{ Body: WireEntry[] }>("/entries", async ({ body }) => {
  let text = "";
  for (const entry of body) {
    offset += 1;
    text += `id: floor:${offset}\ndata: ${JSON.stringify(entry)}\n\n`;
  }
  const shared = Buffer.from(text);
  for (const follower of followers) follower.write(shared);
  const results = body.map(({ source, id }) => ({ source, id, outcome: "accepted" }));
  return { results, gaps: [], now: new Date().toISOString() };
});
app.get("/entries", (_request, reply) => {
  reply.hijack();
  const { raw } = reply;
  raw.writeHead(200, { "content-type": "text/event-stream; charset=utf-8", "cache-control": "no-store" });
  raw.write(`event: cursor\nid: floor:${offset}\ndata: {}\n\n`);
  followers.add(raw);
  raw.once("close", () => followers.delete(raw));
});
app.get("/metrics", () => `tetherline_memory_bytes ${process.memoryUsage.rss()}\n`);

await app.listen({ host: "127.0.0.1", port: 0 });
const address = app.server.address();
if (address === null || typeof address === "string") throw new Error("no port");
console.log(`http://127.0.0.1:${address.port}`);
