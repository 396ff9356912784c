import { z } from "zod";
import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import { locationSchema } from "../procedure/index.ts";
import type {
  CrewId,
  DecisionId,
  ItemId,
  RecordId,
  StateId,
  StepId,
  SupplyId,
  WatchId,
} from "../units/index.ts";
import { once, parseInstant } from "../units/index.ts";

const idOf = <Id extends string>() =>
  z
    .string()
    .min(1)
    .transform((text) => text as Id);
const reason = once(() => z.string().max(4000));

/** A surprise that its trainer wrote, obscured, so that nobody reads it by accident ([TRN2]). */
const obscured = once(() => z.string().min(1).max(40_000));
/** A procedure's file has at most 10 MiB. */
const LONGEST_FILE = 10 * 1024 * 1024;

/** No amendment changes nearly so much; one that does would keep every device busy that folds the log. */
const MOST_CHANGES = 10_000;

/**
 * The version of the log that this program folds. An entry whose data say that it `needs` a newer one is kept and not
 * understood, even when its type is known ([AMD4]).
 */
const LOG_VERSION = 2;

const light = once(() =>
  z.union([
    z.object({
      orbit: z.string().max(100_000),
      /** The ground sites for contact. */
      sites: z
        .array(
          z.object({
            latitude: z.number().min(-90).max(90),
            longitude: z.number().min(-360).max(360),
            height: z.number().min(-500).max(10_000),
            mask: z.number().min(-10).lt(90),
          }),
        )
        .max(100)
        .readonly()
        .optional(),
    }),
    z.object({
      site: z.object({
        latitude: z.number().min(-90).max(90),
        longitude: z.number().min(-360).max(360),
        height: z.number().min(-500).max(10_000),
      }),
    }),
  ]),
);

const facts = {
  "walk.opened": once(() =>
    z.object({
      procedure: z.unknown().refine((value) => value !== undefined, "a procedure"),
      mode: z.enum(["live", "rehearsal"]),
      plannedStart: z
        .string()
        .optional()
        .transform((text) => (text === undefined ? null : parseInstant(text))),
      names: z.record(z.string(), z.string()).optional(),
      /** Where day and night come from: an orbit file as it was, or a site on the surface. */
      light: light().optional(),
    }),
  ),
  "clock.started": once(() => z.object({})),
  "step.started": once(() => z.object({ step: idOf<StepId>() })),
  "step.done": once(() =>
    z.object({
      step: idOf<StepId>(),
      outOfOrder: z.boolean().default(false),
      /** Why it was done out of order. */
      reason: reason().optional(),
    }),
  ),
  "step.skipped": once(() =>
    z.object({
      step: idOf<StepId>(),
      reason: reason().default(""),
      /** Skipped by a played crew for want of time: what the task would have taken, and the margin there was, in seconds. */
      leftOut: z.object({ needed: z.number(), margin: z.number() }).optional(),
    }),
  ),
  "step.reopened": once(() => z.object({ step: idOf<StepId>(), reason: reason().default("") })),
  "record.taken": once(() => z.object({ step: idOf<StepId>(), record: idOf<RecordId>(), value: z.number() })),
  "confirm.given": once(() => z.object({ step: idOf<StepId>() })),
  /** Something of the list that a step counts off was counted; `check` is its place in the list, from 0. */
  "check.counted": once(() => z.object({ step: idOf<StepId>(), check: z.number().int().min(0) })),
  /** `settles`: the lead says that this outcome holds, whatever other devices decide ([WLK5]). */
  "decision.taken": once(() =>
    z.object({
      decision: idOf<DecisionId>(),
      outcome: z.string(),
      settles: z.literal(true).optional(),
    }),
  ),
  "item.moved": once(() =>
    z.object({ item: idOf<ItemId>(), to: locationSchema(), reason: reason().default("") }),
  ),
  /** A state was found to have another value than the steps imply. */
  "state.set": once(() =>
    z.object({
      state: idOf<StateId>(),
      value: z.string().min(1).max(200),
      reason: reason().default(""),
    }),
  ),
  "supply.read": once(() => z.object({ crew: idOf<CrewId>(), supply: idOf<SupplyId>(), value: z.number() })),
  "note.made": once(() => z.object({ text: z.string().max(20_000), step: idOf<StepId>().optional() })),
  "hold.called": once(() => z.object({ reason: reason().optional() })),
  "hold.lifted": once(() => z.object({ reason: reason().optional() })),
  /** The hub's clock minus the source's, accurate to ±`error`, both in seconds. */
  "clock.compared": once(() =>
    z.object({
      hub: z.string().max(400),
      offset: z.number().min(-1e10).max(1e10),
      error: z.number().min(0).max(1e10),
    }),
  ),
  /** The source's clock jumped ahead by so many seconds against a clock that is never set; below zero, it was set back. */
  "clock.jumped": once(() => z.object({ by: z.number().min(-1e10).max(1e10) })),
  "entry.struck": once(() =>
    z.object({
      source: z.string(),
      id: z.string(),
      reason: reason().optional(),
      /** True when whoever made the entry took it back right away. */
      undone: z.boolean().optional(),
    }),
  ),
  /** The watch was kept that fell due at `due`, in seconds of PET. */
  "watch.kept": once(() => z.object({ watch: idOf<WatchId>(), due: z.number() })),
  /** An alert that a device saw. `alert` names it, `about` is the id of what it is about. */
  "alert.raised": once(() =>
    z.object({
      alert: z.string().min(1).max(400),
      level: z.enum(["act-now", "look-soon", "know"]),
      about: z.string().max(400).optional(),
    }),
  ),
  /** Somebody has seen an alert, at the given level. */
  "alert.seen": once(() =>
    z.object({
      alert: z.string().min(1).max(400),
      level: z.enum(["act-now", "look-soon", "know"]).optional(),
    }),
  ),
  "walk.closed": once(() =>
    z.object({
      end: z.enum(["complete", "terminated", "aborted"]),
      reason: reason().optional(),
      /** True when a played walk was closed since no lane could go on. */
      stuck: z.boolean().optional(),
    }),
  ),
  /** The closed walk goes on. */
  "walk.reopened": once(() => z.object({ reason: reason().default("") })),
  /** From here on day and night come from elsewhere than the walk was opened with. */
  "light.chosen": once(() => z.object({ light: light() })),
  /** From here on the procedure in force has these changes ([CHG1], [AMD1]), which are read as the procedure is: by the fold. */
  "plan.amended": once(() =>
    z.object({
      changes: z.array(z.unknown()).max(MOST_CHANGES).readonly(),
      reason: reason(),
      /** The version of the log that a program must understand to fold it; the entry is of version 2. */
      needs: z.number().int().min(1).optional(),
    }),
  ),
  /** A rehearsal carries a surprise that comes when it says itself. */
  "surprise.laid": once(() => z.object({ surprise: obscured() })),
  /** A trainer lets a surprise come now. */
  "surprise.fired": once(() => z.object({ surprise: obscured() })),
  /** A revision of a procedure was put into a library: its file as it is, and the hashes of those it was made from. */
  "revision.kept": once(() =>
    z.object({
      text: z.string().min(1).max(LONGEST_FILE),
      bases: z
        .array(z.string().regex(/^[\w-]{43}$/))
        .max(20)
        .readonly()
        .default([]),
      why: reason().default(""),
    }),
  ),
  /** Whoever follows on this device has seen an amendment. */
  "amendment.seen": once(() => z.object({ amendment: z.object({ source: z.string(), id: z.string() }) })),
  /** What people call the hub. */
  "hub.named": once(() => z.object({ name: z.string().max(200) })),
  /** A hub let a device into the walk that proved this key, or with `null` none. */
  "device.admitted": once(() =>
    z.object({
      source: z.string().max(400),
      key: z.string().max(100).nullable(),
      role: z.string().max(40),
      name: z.string().max(200),
    }),
  ),
  /** Another hub has this key, as far as a hub was shown. */
  "hub.vouched": once(() => z.object({ source: z.string().max(400), key: z.string().max(100) })),
  /** What a hub held before this entry ([SEL5]). */
  "checkpoint.made": once(() =>
    z.object({
      entries: z.number().int().min(0),
      held: z.record(z.string(), z.string()),
      root: z.string().max(100),
      order: z.string().max(100),
    }),
  ),
} as const;

type FactSchemas = typeof facts;

/** The kinds of fact that are understood, without the prefix `tetherline.` ([LOG2]). */
export type FactName = keyof FactSchemas;

/** What an entry says happened, as read: its name and its data. */
export type Fact = {
  [Name in FactName]: { readonly name: Name } & Readonly<z.output<ReturnType<FactSchemas[Name]>>>;
}[FactName];

/** The data of a fact as written in an entry. */
export type FactData<Name extends FactName> = z.input<ReturnType<FactSchemas[Name]>>;

const PREFIX = "tetherline.";

/** What hubs alone write, of themselves: nothing of it happened in the walk. */
const OF_HUBS: ReadonlySet<string> = new Set<FactName>([
  "hub.named",
  "device.admitted",
  "hub.vouched",
  "checkpoint.made",
]);

/** Whether entries of a CloudEvents type are what hubs write of themselves, and no part of what happens in a walk. */
export function isOfHubs(type: string): boolean {
  return type.startsWith(PREFIX) && OF_HUBS.has(type.slice(PREFIX.length));
}

/** The CloudEvents type of a fact. */
export function typeOf(name: FactName): string {
  return PREFIX + name;
}

/** The facts that are not for those who follow a walk until it is closed ([TRN2]). */
const SURPRISES: ReadonlySet<string> = new Set<FactName>(["surprise.laid", "surprise.fired"]);

/** Whether an entry of this type tells of a surprise ([TRN2]). */
export function tellsOfSurprise(type: string): boolean {
  return type.startsWith(PREFIX) && SURPRISES.has(type.slice(PREFIX.length));
}

/** Whether a CloudEvents type is understood here; others come from newer versions. */
function isKnownType(type: string): boolean {
  return type.startsWith(PREFIX) && isFactName(type.slice(PREFIX.length));
}

const needsOf = (data: unknown): unknown =>
  typeof data === "object" && data !== null ? (data as { needs?: unknown }).needs : undefined;

/**
 * Whether an entry can only be understood by a newer version of the program: its type is not known here, or its data say
 * that they need a newer version of the log. It is kept, and what is shown may differ from other devices ([AMD4]).
 */
export function isFromNewerVersion({
  type,
  data,
}: {
  readonly type: string;
  readonly data?: unknown;
}): boolean {
  const needs = needsOf(data);
  return !isKnownType(type) || (typeof needs === "number" && needs > LOG_VERSION);
}

/** A fact, or the reason why an entry's type and data are not one. Unknown types come from newer versions and are kept ([LOG4]). */
export type ReadFact =
  | { readonly fact: Fact; readonly problem: null }
  | { readonly fact: null; readonly problem: Message };

const isFactName = (name: string): name is FactName => Object.hasOwn(facts, name);

/** Reads the type and data of an entry. */
export function readFact(type: string, data: unknown): ReadFact {
  const name = type.startsWith(PREFIX) ? type.slice(PREFIX.length) : "";
  if (!isFactName(name)) return { fact: null, problem: message("log/unknown-type", { type }) };
  if (isFromNewerVersion({ type, data }))
    return { fact: null, problem: message("log/needs-newer", { type }) };
  const parsed = facts[name]().safeParse(data ?? {});
  // The parsed object is not shared with anyone, so the name is added without making a copy.
  if (parsed.success) return { fact: Object.assign(parsed.data, { name }) as Fact, problem: null };
  const [issue] = parsed.error.issues;
  const where = issue?.path.map(String).join(".");
  const problem = where ? message("log/bad-data-at", { type, where }) : message("log/bad-data", { type });
  return { fact: null, problem };
}
