import { createHash } from "node:crypto";
import type { WalkId } from "../../core/units/index.ts";
import { message } from "../../words/index.ts";
import type { Keep } from "../engine/index.ts";
import { EngineTroubleError } from "../engine/index.ts";

/** Names are hashed into keys, so that a key has one length and no character that an engine cannot take. */
const hashed = (text: string) => createHash("sha256").update(text).digest("base64url");

/** Where the hub's owner's code is kept: as it is, since it is printed again at every start. */
export const OWNER_KEY = "admission.owner";
/** Where the key is kept that tokens are signed with. */
export const SIGNING_KEY = "admission.signing";
/** Where members are kept. */
export const MEMBERS = "member.";
/** Where invitations are kept. */
export const INVITATIONS = "invitation.";

/** Where it is kept which source belongs to which key. */
export const DEVICE_NAMES = "device.";
/** Where it is kept that a challenge was used. */
export const CHALLENGES = "challenge.";

/** Where the name of a device is kept. */
export function deviceNameKey(walk: WalkId, device: string): string {
  return `${DEVICE_NAMES}${hashed(walk)}.${hashed(device)}`;
}

/** Where it is kept that the challenge with this nonce was used. */
export function challengeKey(nonce: string): string {
  return CHALLENGES + hashed(nonce);
}

/** Where a member is kept. */
export function memberKey(walk: WalkId, device: string): string {
  return `${MEMBERS}${hashed(walk)}.${hashed(device)}`;
}

/**
 * Where an invitation is kept: under the hash of its code. Nobody who may list keys or sees one in a trace can join by
 * it, and finding it takes no comparison whose time says how much of a guess is right.
 */
export function invitationKey(code: string): string {
  return INVITATIONS + hashed(code);
}

/** Where the seats of an invitation are kept, each with the device that has it. */
export function seatsOf(invitation: string): string {
  return `seat.${invitation.slice(INVITATIONS.length)}.`;
}

/** Where a seat of an invitation is kept, counted from 1. */
export function seatKey(invitation: string, seat: number): string {
  return seatsOf(invitation) + String(seat);
}

/** What an invitation is called to those who lead its walk; its code cannot be told from it. */
export function invitationName(key: string): string {
  return key.slice(INVITATIONS.length, INVITATIONS.length + 12);
}

/** What is kept under a key, after putting `value` there if nothing was: the same for all hubs that start at once. */
export async function keptOnce(keep: Keep, key: string, value: string): Promise<string> {
  await keep.create(key, value);
  const kept = await keep.get(key);
  if (kept === null) throw new EngineTroubleError(message("engine/gives-nothing-back"));
  return kept;
}
