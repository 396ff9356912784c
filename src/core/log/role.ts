import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import { deviceOf } from "./device-of.ts";
import type { Entry } from "./entry.ts";
import { isOfHubs } from "./fact.ts";

/**
 * What a device may do in one walk. A `trainer` sees all and fires surprises, a `relay` is another hub: it passes on what devices
 * of its own side entered.
 */
export const ROLES = ["lead", "marker", "watcher", "trainer", "relay"] as const;

/** One of {@link ROLES}. */
export type Role = (typeof ROLES)[number];

/** What only a lead may write: it opens, amends, closes and reopens the walk, chooses where day and night come from, and keeps revisions in a library. */
const LEAD_ONLY: ReadonlySet<string> = new Set([
  "tetherline.walk.opened",
  "tetherline.plan.amended",
  "tetherline.light.chosen",
  "tetherline.revision.kept",
  "tetherline.walk.closed",
  "tetherline.walk.reopened",
  "tetherline.surprise.laid",
]);

/** What a trainer writes, and a lead, whose own tablet may be the trainer's; nothing else is a trainer's. */
const FIRED = "tetherline.surprise.fired";

/** Why a role may not write an entry: as a code, and as what there is to say. */
export interface RoleRefusal {
  readonly reason: "other-source" | "role";
  readonly words: Message;
}

/**
 * Why a device in this role may not write this entry; `null` when it may. A device writes under its own source or one
 * below it (`/devices/x`, `/devices/x/memory-…`). A marker takes back what it wrote itself, a lead anything. Types from
 * newer versions are a lead's: nobody here can tell what they do. What hubs write of themselves no device writes. A
 * trainer fires surprises, and takes none back; a lead may fire them too.
 */
export function roleRefusal(entry: Entry, role: Role, device: string): RoleRefusal | null {
  if (role === "watcher") return { reason: "role", words: message("role/watcher") };
  if (role === "relay") return null;
  if (deviceOf(entry.wire.source) !== device) {
    return { reason: "other-source", words: message("role/other-source") };
  }
  const { type } = entry.wire;
  if (isOfHubs(type)) return { reason: "role", words: message("role/hubs-only") };
  if (role === "trainer") {
    return type === FIRED ? null : { reason: "role", words: message("role/trainer-may-not", { type }) };
  }
  if (role === "lead") return null;
  if (type === FIRED) return { reason: "role", words: message("role/trainer-fires") };
  const { fact } = entry.read;
  if (fact === null || LEAD_ONLY.has(type)) {
    return { reason: "role", words: message("role/marker-may-not", { type }) };
  }
  if (fact.name === "decision.taken" && fact.settles) {
    return { reason: "role", words: message("role/marker-settles-nothing") };
  }
  if (fact.name === "entry.struck" && deviceOf(fact.source) !== device) {
    return { reason: "role", words: message("role/marker-strikes-own") };
  }
  return null;
}

/** Whether a role may mark steps and enter what else happens. */
export function mayMark(role: Role): boolean {
  return role === "lead" || role === "marker";
}

/** Whether a role may open, amend and close the walk, and let others in. */
export function mayLead(role: Role): boolean {
  return role === "lead";
}

/** Whether a role is that of a trainer, who sees all surprises before the walk is closed ([TRN2]). */
export function maySurprise(role: Role): boolean {
  return role === "trainer";
}
