import type { FastifyInstance, FastifyRequest } from "fastify";
import type { WalkId } from "../../core/units/index.ts";
import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import { type Caller, type Member, readCode, walkSchema } from "../admission/index.ts";
import { AnswerError } from "../answer/index.ts";
import { asksFromElsewhere } from "./foreign-page.ts";
import type { HubParts } from "./hub-parts.ts";
import type { Tries } from "./tries.ts";

/** Whether a request came over TLS, here or at a proxy in front that the owner named. */
export function isSecure({ protocol }: FastifyRequest): boolean {
  return protocol === "https";
}

/** The cookie that a browser keeps a token in. Over TLS its prefix lets no page without TLS set it. */
export function tokenCookie(request: FastifyRequest): string {
  return isSecure(request) ? "__Secure-tetherline" : "tetherline";
}

/** Who sent a request, or why nobody is known. */
type Asking =
  | { readonly caller: Caller; readonly trouble: null }
  | { readonly caller: null; readonly trouble: AnswerError };

declare module "fastify" {
  interface FastifyRequest {
    /** `null` until it was found out, before any route. */
    asking: Asking | null;
  }
}

const nobody = (error: string, said: Message, status = 401): Asking => ({
  caller: null,
  trouble: new AnswerError(status, error, said),
});
const NO_TOKEN = nobody("no-token", message("answer/no-token"));
const BAD_TOKEN = nobody("bad-token", message("answer/bad-token"));
const ELSEWHERE = nobody("cross-site", message("answer/cross-site"), 403);

/** Finds out for every request who sent it; refuses nobody yet, since much needs no token. */
export function identifyCallers(app: FastifyInstance, parts: HubParts, tries: Tries): void {
  app.decorateRequest("asking", null);
  app.addHook("onRequest", async (request) => {
    const asking = await askingOf(request, parts, tries);
    request.asking = asking;
    const { caller } = asking;
    if (caller?.kind === "member") parts.presence.heard(caller.member);
  });
}

async function askingOf(request: FastifyRequest, { admission }: HubParts, tries: Tries): Promise<Asking> {
  const { authorization } = request.headers;
  if (authorization !== undefined) {
    const [, bearer] = /^Bearer +(\S+)$/i.exec(authorization) ?? [];
    if (bearer === undefined) return BAD_TOKEN;
    const judge = () => admission.identify(bearer, "bearer");
    try {
      const caller =
        readCode(bearer) === null
          ? await judge()
          : await tries.judged({ request, code: bearer, judge, isWrong: (found) => found === null });
      return caller ? { caller, trouble: null } : BAD_TOKEN;
    } catch (cause) {
      if (cause instanceof AnswerError) return { caller: null, trouble: cause };
      throw cause;
    }
  }
  const cookie = request.cookies[tokenCookie(request)];
  if (cookie === undefined) return NO_TOKEN;
  if (asksFromElsewhere(request)) return ELSEWHERE;
  const caller = await admission.identify(cookie, "cookie");
  return caller ? { caller, trouble: null } : BAD_TOKEN;
}

/** Who sent a request; `null` when nobody is known. */
export function knownCaller({ asking }: FastifyRequest): Caller | null {
  return asking?.caller ?? null;
}

/** Who sent a request; throws the answer when nobody is known. */
export function callerOf({ asking }: FastifyRequest): Caller {
  if (!asking?.caller) throw (asking ?? NO_TOKEN).trouble;
  return asking.caller;
}

/** The walk in the address, for somebody who may read it: its members and the owner. Throws the answer for all others. */
export function walkFor(request: FastifyRequest): { readonly walk: WalkId; readonly member: Member | null } {
  const caller = callerOf(request);
  const { walk } = request.params as { walk: string };
  // The same words whether or not there is such a walk.
  if (caller.kind === "member") {
    if (caller.member.walk === walk) return { walk: caller.member.walk, member: caller.member };
    throw new AnswerError(403, "other-walk", message("answer/other-walk"));
  }
  const read = walkSchema.safeParse(walk);
  if (!read.success) throw new AnswerError(400, "bad-walk", message("answer/bad-walk"));
  return { walk: read.data, member: null };
}

/** The walk in the address, for a device that joined it; the owner has no device. */
export function memberFor(request: FastifyRequest): { readonly walk: WalkId; readonly member: Member } {
  const { walk, member } = walkFor(request);
  if (!member) throw new AnswerError(403, "no-device", message("answer/no-device"));
  return { walk, member };
}

/** The walk in the address, for whoever leads it: its leads and the owner. */
export function walkToLead(request: FastifyRequest): { readonly walk: WalkId } {
  const { walk, member } = walkFor(request);
  if (member && member.role !== "lead") {
    throw new AnswerError(403, "role", message("answer/lead-only"));
  }
  return { walk };
}
