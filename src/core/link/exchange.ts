import { z } from "zod";
import type { HybridTime } from "../log/index.ts";
import { HYBRID_TIME_PATTERN, ROLES } from "../log/index.ts";
import type { Instant, WalkId } from "../units/index.ts";
import { INSTANT_PATTERN, once, parseInstant } from "../units/index.ts";

const instant = once(() =>
  z
    .string()
    .regex(INSTANT_PATTERN)
    .transform(parseInstant)
    .pipe(z.custom<Instant>((value) => value !== null)),
);

/** Why a hub refused an entry. `limit`: it is too long, or the walk or the device's share of it is full. `ahead`: its hybrid time is more than a minute (`FARTHEST_AHEAD`) ahead of the hub's clock. */
export const REFUSAL_REASONS = [
  "not-an-entry",
  "other-walk",
  "other-source",
  "role",
  "ahead",
  "conflict",
  "limit",
] as const;

/** One of {@link REFUSAL_REASONS}. */
export type RefusalReason = (typeof REFUSAL_REASONS)[number];

/** What became of one entry of a batch. */
export const pushResultSchema = once(() =>
  z.union([
    z.object({
      source: z.string(),
      id: z.string(),
      outcome: z.enum(["accepted", "known"]),
      /** The hybrid time that the hub holds for an entry it already knew; given only when it differs from the one offered. */
      hlc: z
        .string()
        .regex(HYBRID_TIME_PATTERN)
        .transform((text) => text as HybridTime)
        .optional(),
    }),
    z.object({
      /** `null` when the offered value has no source. */
      source: z.string().nullable(),
      id: z.string().nullable(),
      outcome: z.literal("refused"),
      reason: z.enum(REFUSAL_REASONS),
      words: z.string(),
    }),
  ]),
);

/** One of {@link pushAnswerSchema}'s results. */
export type PushResult = z.output<ReturnType<typeof pushResultSchema>>;

/** The numbers of a source's sequence that a hub has not got, though it has later ones. */
export const sequenceGapSchema = once(() =>
  z.object({
    source: z.string(),
    /** First missing number of the gap. */
    from: z.string(),
    /** Last missing number of the gap. */
    to: z.string(),
  }),
);

/** A gap in a source's sequence. */
export type SequenceGap = z.output<ReturnType<typeof sequenceGapSchema>>;

/** A hub's answer to a batch: one result for each entry offered, in the same order; sent only once all are durable. */
export const pushAnswerSchema = once(() =>
  z.object({
    results: z.array(pushResultSchema()),
    /** All gaps that the walk has now, of the sources in the batch. */
    gaps: z.array(sequenceGapSchema()),
    now: instant(),
  }),
);

/** A hub's answer to a batch, as read. */
export type PushAnswer = z.output<ReturnType<typeof pushAnswerSchema>>;

/** Somebody who follows the walk through the same hub. */
export const followerSchema = once(() =>
  z.object({
    device: z.string(),
    name: z.string(),
    role: z.enum(ROLES),
    /** True while its stream is open. */
    present: z.boolean(),
    /** The follower has read everything the hub had received by this time; `null` when it never reported. */
    seenUpTo: instant().nullable(),
    /** When the hub last heard from it. */
    heardAt: instant().nullable(),
  }),
);

/** A follower, as read. */
export type Follower = z.output<ReturnType<typeof followerSchema>>;

/** Answer to taking everybody off a walk: how many devices were taken off. */
export const withdrawnSchema = once(() => z.object({ withdrawn: z.number().int().nonnegative() }));

/** Event `presence`: everybody who joined the walk and was not withdrawn. */
export const presenceSchema = once(() => z.object({ followers: z.array(followerSchema()) }));

/** How a hub is linked with another one. */
export const farHubSchema = once(() =>
  z.object({
    name: z.string(),
    state: z.enum(["linking", "linked", "refused"]),
    /** The other hub holds everything this hub had received by this time; `null` when it holds nothing. */
    sentUpTo: instant().nullable(),
    unsent: z.number().int(),
    heardAt: instant().nullable(),
    /** What is wrong, when it was refused. */
    words: z.string().nullable(),
  }),
);

/** A hub beyond this one, as read. */
export type FarHub = z.output<ReturnType<typeof farHubSchema>>;

/** Event `beyond`: the hubs that this one is linked with. */
export const beyondSchema = once(() => z.object({ hubs: z.array(farHubSchema()) }));

/** Event `hello`, the first of a stream. */
export const helloSchema = once(() =>
  z.object({
    hub: z.string(),
    /** The key of the hub, by which its own entries are sealed; `null` from a hub of an earlier version. */
    hubKey: z.string().max(100).nullable().default(null),
    name: z.string(),
    role: z.enum(ROLES),
    device: z.string(),
    now: instant(),
    /** How many entries are stored behind the reader's cursor, at most; `null` from a hub that does not say. The first `presence` comes behind them. */
    toCome: z.number().int().nonnegative().nullable().default(null),
  }),
);

/** Event `hello`, as read. */
export type Hello = z.output<ReturnType<typeof helloSchema>>;

/** What a device is told of its membership of a walk: what `hello` says, and how it joined. */
export const sessionSchema = once(() =>
  helloSchema().extend({
    /** Who uses the device, as told on joining; `""` from a hub of an earlier version. */
    user: z.string().default(""),
    /** The key that the device is tied to; `null` for none. */
    key: z.string().nullable().default(null),
  }),
);

/** A membership, as read. */
export type HubSession = z.output<ReturnType<typeof sessionSchema>>;

/** Answer of `/api/clock`. */
export const hubClockSchema = once(() => z.object({ now: instant() }));

/** The walks of a hub, for its owner. `title` is that of the procedure, `null` when not known. */
export const hubWalksSchema = once(() =>
  z.object({
    walks: z.array(
      z.object({
        walk: z
          .string()
          .min(1)
          .max(200)
          .transform((text) => text as WalkId),
        title: z.string().nullable().default(null),
        entries: z.number().int().nonnegative().default(0),
      }),
    ),
  }),
);

/** A walk that a hub keeps, as read. */
export type HubWalk = z.output<ReturnType<typeof hubWalksSchema>>["walks"][number];

/** Answer to joining: what was given, to whom. `token` only when it was asked for as a bearer token. */
export const joinedSchema = once(() =>
  z.object({
    walk: z.string(),
    role: z.enum(ROLES),
    device: z.string(),
    hub: z.string(),
    hubName: z.string(),
    /** The key that this source is tied to in the walk; `null` when it joined without one. */
    key: z.string().nullable().default(null),
    token: z.string().optional(),
  }),
);

/** Answer to joining, as read. */
export type Joined = z.output<ReturnType<typeof joinedSchema>>;

/** What a device signs to prove its key before it joins, and the walk that its code opens. */
export const challengeSchema = once(() => z.object({ challenge: z.string(), walk: z.string() }));

/** An invitation that a lead or the hub's owner made. */
export const invitationSchema = once(() =>
  z.object({
    /** Nine letters and digits. */
    code: z.string(),
    role: z.enum(ROLES),
    /** How many devices may join by it. */
    devices: z.number().int().min(1).default(1),
    expires: instant(),
    /** Where a device opens it. */
    url: z.string(),
  }),
);

/** An invitation, as read. */
export type Invitation = z.output<ReturnType<typeof invitationSchema>>;

/** The invitations of a walk that are still good, without their codes. */
export const openInvitationsSchema = once(() =>
  z.object({
    invitations: z.array(
      z.object({
        name: z.string(),
        role: z.enum(ROLES),
        expires: instant(),
        /** How many devices may still join by it. */
        left: z.number().int().nonnegative(),
      }),
    ),
  }),
);

/** An invitation that is still good, as read. */
export type OpenInvitation = z.output<ReturnType<typeof openInvitationsSchema>>["invitations"][number];

/** Any answer of status 400 or above: what went wrong, as a code and in a sentence. */
export const hubErrorSchema = once(() => z.object({ error: z.string(), words: z.string() }));
