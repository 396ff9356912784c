import type { Message } from "../../words/index.ts";
import type { Custody } from "../custody/index.ts";
import type { Network } from "../order/index.ts";
import type { Whereabouts } from "../place/index.ts";
import type { RecordedLight } from "../plan/index.ts";
import type { Location, Outcomes, Outline, ProcedureFile } from "../procedure/index.ts";
import type {
  CrewId,
  DecisionId,
  Instant,
  ItemId,
  RecordId,
  StepId,
  SupplyId,
  WalkId,
  WatchId,
} from "../units/index.ts";
import type { WindowSpans } from "../window/index.ts";
import type { GrowingList } from "./growing-list.ts";
import type { LaneStatus } from "./lane-machine.ts";
import type { StepTable } from "./step-table.ts";
import type { WalkPhase } from "./walk-machine.ts";

/** A value taken for a record. */
export interface TakenRecord {
  readonly record: RecordId;
  readonly value: number;
  readonly at: Instant;
  readonly actor: string | null;
  /** True when it lies outside min..max ([WLK7]). */
  readonly outOfRange: boolean;
}

/** How far a step has come. */
export interface StepProgress {
  readonly status: "open" | "done" | "skipped";
  /** When it was said to have started; `null` when nobody said. */
  readonly saidStart: Instant | null;
  /** When it started, as far as known: set once it is done or skipped. */
  readonly start: Instant | null;
  /** When it was done or skipped; `null` while open. */
  readonly finish: Instant | null;
  readonly outOfOrder: boolean;
  /** Why it was skipped; empty when it was not, or nobody said. */
  readonly skipReason: string;
  /** That a played crew left it out for want of time, by what was needed and what margin there was, in seconds; else `null`. */
  readonly leftOut: { readonly needed: number; readonly margin: number } | null;
  /** Each time it was opened again after it was complete, in the order of the log. */
  readonly reopened: readonly { readonly at: Instant; readonly reason: string }[];
  readonly records: readonly TakenRecord[];
  readonly confirmed: { readonly at: Instant; readonly actor: string | null } | null;
  /** Key (`source` and `id`) of the entry that completed it, for undoing; `null` while open. */
  readonly completedBy: {
    readonly source: string;
    readonly id: string;
    readonly actor: string | null;
  } | null;
  /** Who else marked it done, from other devices, in the order of the log: they confirm the mark that counts. */
  readonly alsoDone: readonly {
    readonly at: Instant;
    readonly actor: string | null;
    readonly source: string;
  }[];
}

/** How far a crew member's lane has come. */
export interface LaneProgress {
  /** Its first step that is not complete; `null` when there is none. */
  readonly next: StepId | null;
  /** When the last of the steps before that was complete; `null` when there was none. */
  readonly free: Instant | null;
  /** As the entries have it: time alone makes a waiting lane work on its next step, which is only known at an instant. */
  readonly status: LaneStatus;
}

/** A hold; `until` is `null` while it lasts. */
export interface Hold {
  readonly from: Instant;
  readonly until: Instant | null;
  readonly reason: string;
}

/** A note, of a step or of the walk. */
export interface Note {
  readonly at: Instant;
  readonly actor: string | null;
  readonly text: string;
  readonly step: StepId | null;
}

/** A watch that was kept. */
export interface KeptWatch {
  readonly at: Instant;
  readonly watch: WatchId;
}

/** A reading of a supply. */
export interface SupplyReading {
  readonly at: Instant;
  readonly crew: CrewId;
  readonly supply: SupplyId;
  readonly value: number;
}

/** An item moved by an entry of its own. */
export interface ItemMove {
  readonly at: Instant;
  readonly item: ItemId;
  readonly to: Location;
  /** The step whose completion moved it; `null` when it was entered by itself. */
  readonly step: StepId | null;
}

/** Something that was done otherwise than planned. */
export interface Deviation {
  readonly kind: "skipped" | "out-of-order" | "record-out-of-range" | "amended" | "struck";
  readonly step: StepId | null;
  readonly text: Message;
  readonly at: Instant;
}

/** An entry without effect, and why ([LOG4]). */
export interface IgnoredEntry {
  readonly source: string;
  readonly id: string;
  readonly reason: Message;
}

/** A procedure as written, and laid out. */
export interface LaidOutProcedure {
  readonly file: ProcedureFile;
  readonly outline: Outline;
}

/** How a walk was opened. */
export interface OpenedWalk {
  readonly walk: WalkId;
  readonly at: Instant;
  /** The procedure of record, with which the walk is compared. What is followed is the one in force. */
  readonly procedure: LaidOutProcedure;
  readonly mode: "live" | "rehearsal";
  readonly plannedStart: Instant | null;
  /** Where day and night come from; `null` when nothing was said. */
  readonly light: RecordedLight | null;
  /** Names of the people, by crew id, where given. */
  readonly names: ReadonlyMap<string, string>;
}

/**
 * What the entries so far amount to. Never changed in place: each entry gives a new one, so that keeping an old one costs
 * nothing and folding again from it is safe.
 */
export interface Ledger {
  readonly opened: OpenedWalk;
  /** The procedure that is followed: as opened, until the plan is amended. Everything below is of its steps. */
  readonly inForce: LaidOutProcedure;
  readonly phase: WalkPhase;
  /** The instant of PET 0; `null` before the clock was started. */
  readonly petZero: Instant | null;
  readonly closed: {
    readonly at: Instant;
    readonly end: "complete" | "terminated" | "aborted";
    /** As somebody wrote it; empty when nobody did. */
    readonly reason: string;
    /** That a played walk was closed since no lane could go on. */
    readonly stuck: boolean;
  } | null;
  readonly outcomes: Outcomes;
  /** When each decision came out as it stands: the steps of its branches are not performed before ([WLK5]). */
  readonly decidedAt: ReadonlyMap<DecisionId, Instant>;
  /** The steps as decisions stand, get-aheads included, undecided ones as expected. */
  readonly network: Network;
  /** Where the crew is along that network, and how long its steps take. */
  readonly whereabouts: Whereabouts;
  /** The windows in PET, as far as known before the clock was started or by its start. */
  readonly windows: WindowSpans;
  readonly steps: StepTable<StepProgress>;
  /** By index in `crew`. */
  readonly lanes: readonly LaneProgress[];
  readonly custody: Custody;
  readonly moves: GrowingList<ItemMove>;
  readonly holds: readonly Hold[];
  readonly notes: GrowingList<Note>;
  readonly keptWatches: GrowingList<KeptWatch>;
  readonly readings: GrowingList<SupplyReading>;
  readonly deviations: readonly Deviation[];
}

/** A step nobody has touched. */
export const UNTOUCHED: StepProgress = {
  status: "open",
  saidStart: null,
  start: null,
  finish: null,
  outOfOrder: false,
  skipReason: "",
  leftOut: null,
  reopened: [],
  records: [],
  confirmed: null,
  completedBy: null,
  alsoDone: [],
};

/** How far a step has come; one that is not in the ledger has not been touched. */
export function progressOf({ steps }: Pick<Ledger, "steps">, step: StepId): StepProgress {
  return steps.get(step) ?? UNTOUCHED;
}

/** True when a step is done or skipped. */
export function isComplete(ledger: Pick<Ledger, "steps">, step: StepId): boolean {
  return progressOf(ledger, step).status !== "open";
}
