import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { z } from "zod";
import type { Hello, Joined } from "../../core/link/index.ts";
import { ROLES } from "../../core/log/index.ts";
import { formatInstant } from "../../core/units/index.ts";
import { message } from "../../words/index.ts";
import { deviceSchema, keySchema, nameSchema, walkSchema } from "../admission/index.ts";
import { AnswerError } from "../answer/index.ts";
import { asksFromElsewhere } from "./foreign-page.ts";
import type { HubParts } from "./hub-parts.ts";
import { asksFromShell } from "./native-shells.ts";
import { bodyOf } from "./request-body.ts";
import { isThisHub } from "./served-names.ts";
import type { Tries } from "./tries.ts";
import { isSecure, knownCaller, memberFor, tokenCookie } from "./who-asks.ts";

const openingSchema = z.object({
  code: z.string().min(1).max(100),
  device: deviceSchema,
  walk: walkSchema.optional(),
});
const proofSchema = z.object({
  key: keySchema,
  challenge: z.string().max(200),
  host: z.string().min(1).max(300),
  signature: z.string().max(100),
});
const joinSchema = openingSchema.extend({
  name: nameSchema.optional(),
  proof: proofSchema.optional(),
  role: z.enum(ROLES).default("lead"),
  use: z.enum(["bearer", "cookie"]).default("bearer"),
});

const PROBLEMS = {
  "bad-code": [403, message("answer/bad-code")],
  "walk-needed": [400, message("answer/walk-needed")],
  "code-used": [403, message("answer/code-used")],
  "bad-proof": [403, message("answer/bad-proof")],
  "other-key": [403, message("answer/other-key")],
  "key-needed": [403, message("answer/key-needed")],
  "device-taken": [403, message("answer/device-taken")],
  "device-left": [403, message("answer/device-left")],
  "device-elsewhere": [403, message("answer/device-elsewhere")],
} as const;

/** The rate of requests goes by the code in the body, which is read first and so has to be short. */
const WITH_CODE = { bodyLimit: 16 * 1024, config: { rateLimit: { hook: "preHandler" } } } as const;

/** Where a cookie goes along: to what is asked of one walk. */
const cookiePath = (walk: string) => `/api/walks/${encodeURIComponent(walk)}`;

/** Coming into a walk, being in it, and leaving it. */
export function joinRoutes(
  app: FastifyInstance,
  parts: HubParts,
  { tries, names }: { readonly tries: Tries; readonly names: ReadonlySet<string> | null },
): void {
  const { admission, surroundings } = parts;

  const refuse = (kind: keyof typeof PROBLEMS): never => {
    const [status, said] = PROBLEMS[kind];
    throw new AnswerError(status, kind, said);
  };
  const insistOnOwnPage = (request: FastifyRequest, use: "bearer" | "cookie"): void => {
    if (asksFromElsewhere(request) && !(use === "bearer" && asksFromShell(request))) {
      throw new AnswerError(403, "cross-site", message("answer/cross-site"));
    }
  };
  const isWrong = ({ kind }: { readonly kind: string }) => kind === "bad-code";

  app.post("/api/join/challenge", WITH_CODE, async (request) => {
    insistOnOwnPage(request, "bearer");
    const { walk = null, ...asked } = bodyOf(request.body, openingSchema);
    const judge = () => admission.challenge({ ...asked, walk });
    const outcome = await tries.judged({ request, code: asked.code, judge, isWrong });
    if (outcome.kind !== "challenge") return refuse(outcome.kind);
    return { challenge: outcome.challenge, walk: outcome.walk };
  });

  app.post("/api/join", WITH_CODE, async (request, reply) => {
    insistOnOwnPage(request, "bearer");
    const { use, name = null, walk = null, proof = null, ...asked } = bodyOf(request.body, joinSchema);
    insistOnOwnPage(request, use);
    const caller = knownCaller(request);
    if (proof && !isThisHub(proof.host, request.headers.host, names)) return refuse("bad-proof");
    const judge = () => admission.join({ ...asked, name, walk, proof, caller });
    const outcome = await tries.judged({ request, code: asked.code, judge, isWrong });
    if (outcome.kind !== "joined") {
      if ("walk" in outcome) {
        const refused = { walk: outcome.walk, device: asked.device, why: outcome.kind, address: request.ip };
        parts.journal.note({ event: "name-refused", ...refused });
      }
      return refuse(outcome.kind);
    }
    const { member, token, key } = outcome;
    const { walk: joinedWalk, device, role } = member;
    parts.journal.note({ event: "joined", walk: joinedWalk, device, role, address: request.ip });
    parts.witness?.joined(joinedWalk);
    if (use === "cookie") setCookie(request, reply, member, token);
    const joined: Joined = {
      walk: member.walk,
      role: member.role,
      device: member.device,
      hub: parts.id,
      hubName: parts.name,
      key,
      ...(use === "bearer" ? { token } : {}),
    };
    return reply.code(201).send(joined);
  });

  app.get("/api/walks/:walk/session", (request) => {
    const { member } = memberFor(request);
    const key = admission.keyOf(member.walk, member.device);
    return { ...helloTo(request, parts), user: member.name, key };
  });

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
  { id, name, key, surroundings }: HubParts,
): Omit<Hello, "now" | "toCome"> & { now: string } {
  const { member } = memberFor(request);
  return {
    hub: id,
    hubKey: key.publicKey,
    name,
    role: member.role,
    device: member.device,
    now: formatInstant(surroundings.now()),
  };
}
