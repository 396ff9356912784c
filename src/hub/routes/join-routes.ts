import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { z } from "zod";
import type { Hello, Joined } from "../../core/link/index.ts";
import { ROLES } from "../../core/log/index.ts";
import { formatInstant } from "../../core/units/index.ts";
import { message } from "../../words/index.ts";
import { deviceSchema, nameSchema, walkSchema } from "../admission/index.ts";
import { AnswerError } from "../answer/index.ts";
import { asksFromElsewhere } from "./foreign-page.ts";
import type { HubParts } from "./hub-parts.ts";
import { bodyOf } from "./request-body.ts";
import type { Tries } from "./tries.ts";
import { isSecure, knownCaller, memberFor, tokenCookie } from "./who-asks.ts";

const joinSchema = z.object({
  code: z.string().min(1).max(100),
  device: deviceSchema,
  name: nameSchema.optional(),
  walk: walkSchema.optional(),
  role: z.enum(ROLES).default("lead"),
  use: z.enum(["bearer", "cookie"]).default("bearer"),
});

const PROBLEMS = {
  "bad-code": [403, message("answer/bad-code")],
  "walk-needed": [400, message("answer/walk-needed")],
  "device-taken": [403, message("answer/device-taken")],
} as const;

/** Where a cookie goes along: to what is asked of one walk. */
const cookiePath = (walk: string) => `/api/walks/${encodeURIComponent(walk)}`;

/** Coming into a walk, being in it, and leaving it. */
export function joinRoutes(app: FastifyInstance, parts: HubParts, tries: Tries): void {
  const { admission, surroundings } = parts;

  app.post("/api/join", async (request, reply) => {
    if (await tries.areOver(request)) throw tries.tooMany();
    if (asksFromElsewhere(request)) {
      throw new AnswerError(403, "cross-site", message("answer/cross-site"));
    }
    const { use, name = null, walk = null, ...asked } = bodyOf(request.body, joinSchema);
    const caller = knownCaller(request);
    const outcome = await admission.join({ ...asked, name, walk, caller });
    if (outcome.kind !== "joined") {
      if (outcome.kind === "bad-code") await tries.failed(request);
      const [status, said] = PROBLEMS[outcome.kind];
      throw new AnswerError(status, outcome.kind, said);
    }
    const { member, token } = outcome;
    const { walk: joinedWalk, device, role } = member;
    parts.journal.note({ event: "joined", walk: joinedWalk, device, role, address: request.ip });
    if (use === "cookie") setCookie(request, reply, member, token);
    const joined: Joined = {
      walk: member.walk,
      role: member.role,
      device: member.device,
      hub: parts.id,
      hubName: parts.name,
      ...(use === "bearer" ? { token } : {}),
    };
    return reply.code(201).send(joined);
  });

  app.get("/api/walks/:walk/session", (request) => helloTo(request, parts));

  app.post("/api/walks/:walk/leave", async (request, reply) => {
    const { walk, member } = memberFor(request);
    await admission.leave(member);
    return reply
      .clearCookie(tokenCookie(request), { path: cookiePath(walk), secure: isSecure(request) })
      .code(204)
      .send();
  });

  function setCookie(
    request: FastifyRequest,
    reply: FastifyReply,
    { walk, expires }: { walk: string; expires: number },
    token: string,
  ): void {
    reply.setCookie(tokenCookie(request), token, {
      path: cookiePath(walk),
      httpOnly: true,
      sameSite: "strict",
      secure: isSecure(request),
      maxAge: Math.floor((expires - surroundings.now()) / 1000),
    });
  }
}

/** What a device is told of itself and the hub. */
export function helloTo(
  request: FastifyRequest,
  { id, name, surroundings }: HubParts,
): Omit<Hello, "now"> & { now: string } {
  const { member } = memberFor(request);
  return {
    hub: id,
    name,
    role: member.role,
    device: member.device,
    now: formatInstant(surroundings.now()),
  };
}
