import type { FastifyInstance, FastifyRequest } from "fastify";
import { z } from "zod";
import { readCursor, writeCursor } from "../../core/link/index.ts";
import { ROLES } from "../../core/log/index.ts";
import { formatInstant } from "../../core/units/index.ts";
import { message } from "../../words/index.ts";
import { invitationName } from "../admission/index.ts";
import { AnswerError } from "../answer/index.ts";
import { WalkTitles } from "../entries/index.ts";
import type { HubParts } from "./hub-parts.ts";
import { bodyOf } from "./request-body.ts";
import { callerOf, memberFor, walkFor, walkToLead } from "./who-asks.ts";

const MOST_REFUSED = 1000;
const MOST_MINUTES = 24 * 60;
const MOST_DEVICES = 500;

const inviteSchema = z.object({
  role: z.enum(ROLES),
  minutes: z.number().min(0.01).max(MOST_MINUTES).default(15),
  devices: z.number().int().min(1).max(MOST_DEVICES).default(1),
});
const cursorSchema = z.object({
  cursor: z
    .string()
    .transform(readCursor)
    .refine((cursor) => cursor !== null),
});

/** Which walks there are, who is in one, and letting others in. `address` is where this hub is reached from elsewhere. */
export function walkRoutes(
  app: FastifyInstance,
  { engine, admission, cursors, journal, presence, surroundings }: HubParts,
  address: () => string | null,
): void {
  const titles = new WalkTitles(engine);

  app.get("/api/walks", async (request) => {
    const caller = callerOf(request);
    const kept = await engine.walks();
    const own = caller.kind === "member" ? caller.member.walk : null;
    const walks =
      own === null ? kept : [kept.find(({ walk }) => walk === own) ?? { walk: own, entries: 0, head: 0 }];
    return {
      walks: await Promise.all(
        walks.map(async ({ walk, entries, head }) => ({
          walk,
          title: await titles.of(walk),
          entries,
          cursor: writeCursor(await cursors.at(walk, head)),
        })),
      ),
    };
  });

  app.post("/api/walks/:walk/presence", (request) => {
    const { member } = memberFor(request);
    const { cursor } = bodyOf(request.body, cursorSchema);
    if (cursor) presence.reported(member, cursor);
    return { now: formatInstant(surroundings.now()) };
  });

  app.post("/api/walks/:walk/invitations", async (request, reply) => {
    const { walk } = walkToLead(request);
    const { role, minutes, devices } = bodyOf(request.body, inviteSchema);
    if (role === "relay" && callerOf(request).kind !== "owner") {
      throw new AnswerError(403, "role", message("answer/relay-by-owner"));
    }
    const made = await admission.invite(walk, role, minutes, devices);
    const code = made.code.toUpperCase();
    journal.note({ event: "invited", walk, role, devices, by: whoAsks(request), address: request.ip });
    return reply.code(201).send({
      code,
      role,
      devices,
      expires: formatInstant(made.expires),
      url: `${originFor(request, address())}/join/${code}`,
    });
  });

  app.get("/api/walks/:walk/invitations", async (request) => {
    const invitations = await admission.invitations(walkToLead(request).walk);
    return {
      invitations: await Promise.all(
        invitations.map(async (one) => ({
          name: invitationName(one.key),
          role: one.role,
          expires: formatInstant(one.expires),
          left: await admission.seatsLeft(one),
        })),
      ),
    };
  });

  app.delete("/api/walks/:walk/invitations/:name", async (request, reply) => {
    const { walk } = walkToLead(request);
    const { name } = request.params as { name: string };
    if (!(await admission.endInvitation(walk, name))) {
      throw new AnswerError(404, "no-invitation", message("answer/no-invitation"));
    }
    journal.note({ event: "invitation-ended", walk, by: whoAsks(request), address: request.ip });
    return reply.code(204).send();
  });

  app.delete("/api/walks/:walk/followers", async (request) => {
    const { walk } = walkToLead(request);
    const { member } = walkFor(request);
    journal.note({ event: "withdrawn", walk, device: null, by: whoAsks(request), address: request.ip });
    return { withdrawn: await admission.withdrawAll(walk, member?.device ?? null) };
  });

  app.get("/api/walks/:walk/followers", (request) => presence.of(walkToLead(request).walk));

  app.delete("/api/walks/:walk/followers/:device", async (request, reply) => {
    const { walk } = walkToLead(request);
    const { device } = request.params as { device: string };
    if (!(await admission.withdraw(walk, device))) {
      throw new AnswerError(404, "no-follower", message("answer/no-follower"));
    }
    journal.note({ event: "withdrawn", walk, device, by: whoAsks(request), address: request.ip });
    return reply.code(204).send();
  });

  app.get("/api/walks/:walk/refused", async (request) => {
    const { walk } = walkToLead(request);
    const refused = await engine.refused(walk, MOST_REFUSED);
    return {
      refused: refused.map(({ text, reason, received }) => ({
        text,
        reason,
        received: formatInstant(received),
      })),
    };
  });
}

/** The device that asks; `null` for the hub's owner. */
function whoAsks(request: FastifyRequest): string | null {
  const caller = callerOf(request);
  return caller.kind === "member" ? caller.member.device : null;
}

const OF_THE_MACHINE_ITSELF = /^(localhost|127\.\d+\.\d+\.\d+|\[::1\])(:\d+)?$/i;
const HOST = /^[A-Za-z0-9.[\]:_-]{1,255}$/;

/**
 * Where the device that asks reaches this hub, as others may too; when it is this very machine, where the hub is reached
 * from elsewhere. Only the one who invites is shown it, so that a forged header deceives but its sender.
 */
function originFor({ headers, protocol }: FastifyRequest, address: string | null): string {
  const host = headers.host ?? "";
  if (address !== null && (!HOST.test(host) || OF_THE_MACHINE_ITSELF.test(host))) return address;
  return `${protocol}://${HOST.test(host) ? host : "localhost"}`;
}
