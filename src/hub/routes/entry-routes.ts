import { Readable } from "node:stream";
import type { FastifyInstance, FastifyRequest } from "fastify";
import type { Cursor, PushResult } from "../../core/link/index.ts";
import { readCursor, writeCursor } from "../../core/link/index.ts";
import { mayLead } from "../../core/log/index.ts";
import { formatInstant, type WalkId } from "../../core/units/index.ts";
import { message, words } from "../../words/index.ts";
import type { Member } from "../admission/index.ts";
import { AnswerError } from "../answer/index.ts";
import type { Sight } from "../curtain/index.ts";
import type { Engine } from "../engine/index.ts";
import { openStream } from "./entry-stream.ts";
import type { HubParts } from "./hub-parts.ts";
import type { LengthRate } from "./length-rate.ts";
import { SINGLE_TYPE } from "./request-body.ts";
import { walkFor } from "./who-asks.ts";

const MOST_IN_BATCH = 1000;
/** Bytes of a body of somebody who may not bring procedures. */
const LARGEST_OF_MARKERS = 4 * 1024 * 1024;
const PAGE = 500;

/** Taking entries in and giving them out, at once or as a stream. */
export function entryRoutes(app: FastifyInstance, parts: HubParts, lengths: LengthRate): void {
  const { engine, intake, cursors, curtain, surroundings, tell } = parts;

  // Before the body is read: strangers send none, and only who may bring procedures sends a large one.
  const preParsing = async (request: FastifyRequest) => {
    const { member } = walkFor(request);
    const isLarge = Number(request.headers["content-length"] ?? 0) > LARGEST_OF_MARKERS;
    if (isLarge && member && !mayLead(member.role) && member.role !== "relay") {
      throw new AnswerError(413, "too-large", message("answer/body-too-large"));
    }
  };

  app.post("/api/walks/:walk/entries", { preParsing }, async (request) => {
    const { walk, member } = walkFor(request);
    const wait = member ? lengths.waitAfter(member.token, request.bodyLength, surroundings.now()) : null;
    if (wait !== null) {
      parts.journal.note({ event: "too-many", address: request.ip });
      throw new AnswerError(429, "too-many", message("answer/too-much-a-minute"), wait);
    }
    const offered = batchOf(request);
    const relay = member?.role === "relay" ? { via: member.device } : {};
    // Before the entries are kept: from then on no other hub brings any of this device.
    if (member && member.role !== "watcher") await parts.admission.heard(member);
    const { results, gaps } = await intake.take(walk, offered, member, relay);
    const reasons: Record<string, number> = {};
    for (const one of results) {
      if (one.outcome === "refused") reasons[one.reason] = (reasons[one.reason] ?? 0) + 1;
    }
    if (Object.keys(reasons).length > 0) {
      parts.journal.note({ event: "refused", walk, device: member?.device ?? null, reasons });
    }
    if (member) noteUnsealed(parts, member, unsealedIn(offered, results));
    return { results, gaps, now: formatInstant(surroundings.now()) };
  });

  app.get("/api/walks/:walk/entries", { exposeHeadRoute: false }, async (request, reply) => {
    const { walk, member } = walkFor(request);
    const isStream = /\btext\/event-stream\b/i.test(request.headers.accept ?? "");
    const asked = cursorAsked(request, isStream);
    if (asked && (await cursors.tellsOfAnotherPast(walk, asked))) {
      tell(words("hub/another-past"));
      await engine.beginEpoch();
    }
    const head = await engine.head(walk);
    // Another store, or one that was brought back from a copy and has less: everything is read again.
    const after = asked && asked.epoch === engine.epoch && asked.offset <= head ? asked.offset : 0;
    if (isStream) {
      return openStream(request, reply, parts, { after, toCome: await engine.behind(walk, after) });
    }
    return reply
      .header("tetherline-cursor", writeCursor(await cursors.at(walk, head)))
      .type("application/jsonl")
      .send(Readable.from(linesOf(engine, walk, { after, head }, curtain.sightOf(walk, member))));
  });
}

/** How many entries that were accepted have no seal, by source. */
function unsealedIn(
  offered: readonly unknown[],
  results: readonly PushResult[],
): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const [index, { outcome, source }] of results.entries()) {
    if (outcome !== "accepted" || Object.hasOwn(Object(offered[index]), "seal")) continue;
    counts.set(source, (counts.get(source) ?? 0) + 1);
  }
  return counts;
}

/** Says in the journal that entries without seals were taken of a device, and in the log where it could have sealed them: they were not taken off later. */
function noteUnsealed(
  { admission, journal, witness }: HubParts,
  { walk, device, role, name }: Member,
  unsealed: ReadonlyMap<string, number>,
): void {
  const entries = [...unsealed.values()].reduce((sum, count) => sum + count, 0);
  if (entries === 0 || role === "relay") return;
  journal.note({ event: "unsealed", walk, device, entries });
  if (admission.keyOf(walk, device) === null) return;
  for (const source of unsealed.keys())
    witness?.say(walk, { name: "device.admitted", data: { source, key: null, role, name } });
}

function batchOf({ body, headers }: FastifyRequest): readonly unknown[] {
  const isSingle = headers["content-type"]?.split(";")[0]?.trim().toLowerCase() === SINGLE_TYPE;
  if (isSingle && typeof body === "object" && body !== null && !Array.isArray(body)) return [body];
  if (isSingle || !Array.isArray(body)) {
    throw new AnswerError(400, "bad-body", message(isSingle ? "answer/send-one" : "answer/send-array"));
  }
  if (body.length > MOST_IN_BATCH) {
    throw new AnswerError(413, "too-large", message("answer/too-many-entries", { most: MOST_IN_BATCH }));
  }
  return body;
}

/** The reader's cursor, behind which it asks to read; `null` for everything. */
function cursorAsked({ headers, query }: FastifyRequest, isStream: boolean): Cursor | null {
  const lastEventId = isStream ? headers["last-event-id"] : undefined;
  const { after } = query as { after?: unknown };
  const said = lastEventId || after;
  if (said === undefined || said === "") return null;
  const cursor = typeof said === "string" ? readCursor(said) : null;
  if (!cursor) throw new AnswerError(400, "bad-cursor", message("answer/bad-cursor"));
  return cursor;
}

async function* linesOf(
  engine: Engine,
  walk: WalkId,
  { after, head }: { readonly after: number; readonly head: number },
  sight: Sight | null,
): AsyncGenerator<string> {
  for (let read = after; ; ) {
    const page = await engine.read(walk, read, PAGE);
    const last = page.at(-1);
    const asked = page.filter(({ offset }) => offset <= head);
    const lines = ((await sight?.of(asked)) ?? asked).map(({ text }) => `${text}\n`);
    if (lines.length > 0) yield lines.join("");
    if (!last || last.offset >= head) return;
    read = last.offset;
  }
}
