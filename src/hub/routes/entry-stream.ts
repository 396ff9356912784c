import type { FastifyReply, FastifyRequest } from "fastify";
import { formatInstant } from "../../core/units/index.ts";
import { beyondDocument } from "../beyond/index.ts";
import type { StoredEntry } from "../engine/index.ts";
import { eventText, Subscriber } from "../stream/index.ts";
import type { HubParts } from "./hub-parts.ts";
import { walkFor } from "./who-asks.ts";

/** Answers with server-sent events: everything behind an offset, at most so many entries, then whatever comes. */
export function openStream(
  request: FastifyRequest,
  reply: FastifyReply,
  parts: HubParts,
  { after, toCome }: { readonly after: number; readonly toCome: number },
): FastifyReply {
  const { engine, curtain, fanOut, cursors, presence, beyond, surroundings, id, key, name } = parts;
  const { walk, member } = walkFor(request);
  const response = reply.raw;
  // A reply that is taken over loses what plug-ins put into its headers, unless it is carried over.
  reply.hijack();
  for (const [header, value] of Object.entries(reply.getHeaders())) {
    if (value !== undefined) response.setHeader(header, value);
  }
  response.writeHead(200, {
    "content-type": "text/event-stream; charset=utf-8",
    "cache-control": "no-store",
    "x-accel-buffering": "no",
  });
  response.flushHeaders();

  const teller = {
    behind: (last: StoredEntry) => cursors.behind(walk, last),
    at: (offset: number) => cursors.at(walk, offset),
  };
  const relay = member?.role === "relay" ? member.device : null;
  const subscriber = new Subscriber(response, teller, relay, curtain.sightOf(walk, member));
  const leave = fanOut.add(walk, subscriber, member);
  const gone = member ? presence.opened(member) : () => {};
  response.once("close", () => {
    leave();
    gone();
  });
  subscriber.write(
    eventText("hello", {
      hub: id,
      hubKey: key.publicKey,
      name,
      role: member?.role ?? "lead",
      device: member?.device ?? id,
      now: formatInstant(surroundings.now()),
      toCome,
    }),
  );
  const tell = async () => {
    await subscriber.catchUp((read, limit) => engine.read(walk, read, limit), after);
    subscriber.write(eventText("presence", await presence.of(walk)));
    subscriber.write(eventText("beyond", beyondDocument(beyond.of(walk))));
  };
  // The store fails: the subscriber comes back when it can, and is told why then.
  tell().catch(() => response.destroy());
  return reply;
}
