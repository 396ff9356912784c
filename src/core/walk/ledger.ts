import type { Message } from "../../words/index.ts";
import type { Custody } from "../custody/index.ts";
import type { Network } from "../order/index.ts";
import type { Whereabouts } from "../place/index.ts";
import type { RecordedLight } from "../plan/index.ts";
import type { Location, Outcomes } from "../procedure/index.ts";
import type {
  CrewId,
  DecisionId,
  Duration,
  Instant,
  ItemId,
  RecordId,
  StateId,
  StepId,
  SupplyId,
  WalkId,
  WatchId,
} from "../units/index.ts";
import type { WindowSpans } from "../window/index.ts";
import type { AlertLog } from "./alert.ts";
import type { Amendment, AmendmentSeen } from "./amendment.ts";
import type { Deviation, EarlyMark } from "./deviation.ts";
import type { GrowingList } from "./growing-list.ts";
import type { LaidOutProcedure } from "./laid-out-procedure.ts";
import type { LaneStatus } from "./lane-machine.ts";
import type { StepTable } from "./step-table.ts";
import type { WalkPhase } from "./walk-machine.ts";

/** A value that was entered for a record. */
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
  /**
   * When somebody entered that it started, or when it had started by then if an amendment of the plan would have it
   * otherwise; `null` when there is neither.
   */
  readonly saidStart: Instant | null;
  /** When it started, entered or inferred; `null` until it is done or skipped. */
  readonly start: Instant | null;
  /** When it was done or skipped; `null` while open. */
  readonly finish: Instant | null;
  readonly outOfOrder: boolean;
  /** Why it was done out of order; empty when it was not or nobody gave a reason. */
  readonly orderReason: string;
  /** What was not over when it was marked done; empty when everything was, and for a step that is out of order. */
  readonly early: readonly EarlyMark[];
  /** Why it was skipped; empty when it was not skipped or nobody gave a reason. */
  readonly skipReason: string;
  /**
   * Set when a played crew skipped it for lack of time: the time it needed and the margin there was, in seconds.
   * `null` otherwise.
   */
  readonly leftOut: { readonly needed: number; readonly margin: number } | null;
  /** Each time it was reopened after it was complete, in the order of the log. */
  readonly reopened: readonly { readonly at: Instant; readonly reason: string }[];
  readonly records: readonly TakenRecord[];
  readonly confirmed: { readonly at: Instant; readonly actor: string | null } | null;
  /** What was counted off of its list: places in `check`, from 0, each once, in the order of the log. */
  readonly counted: readonly number[];
  /** Key (`source` and `id`) of the entry that completed it, for undoing; `null` while open. */
  readonly completedBy: {
    readonly source: string;
    readonly id: string;
    readonly actor: string | null;
  } | null;
  /**
   * The marks by which other devices also marked it done, in the order of the log. They confirm the mark that counts.
   */
  readonly alsoDone: readonly {
    readonly at: Instant;
    readonly actor: string | null;
    readonly source: string;
  }[];
}

/** The progress of the lane of one crew member. */
export interface LaneProgress {
  /** Its first step that is not complete; `null` when there is none. */
  readonly next: StepId | null;
  /** The latest completion of the steps before `next`; `null` when there is none. */
  readonly free: Instant | null;
  /**
   * The status according to the entries alone. A waiting lane starts work simply because time passes, so whether it
   * works can only be told for a given instant.
   */
  readonly status: LaneStatus;
}

/** A hold; `until` is `null` while it is in force. */
export interface Hold {
  readonly from: Instant;
  readonly until: Instant | null;
  readonly reason: string;
  /** Who called it; `null` when the entry names nobody. */
  readonly actor: string | null;
}

/** A note on a step, or on the walk when `step` is `null`. */
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
  /** The PET at which the round that was kept fell due, as entered. */
  readonly due: Duration;
}

/** A reading of a supply. */
export interface SupplyReading {
  readonly at: Instant;
  readonly crew: CrewId;
  readonly supply: SupplyId;
  readonly value: number;
}

/** A move of an item, by a step or by an entry of its own. */
export interface ItemMove {
  readonly at: Instant;
  readonly item: ItemId;
  readonly to: Location;
  /** The step whose completion moved it; `null` when the move was entered directly. */
  readonly step: StepId | null;
  /** Who entered it; `null` for a move by a step, or when the entry names nobody. */
  readonly actor: string | null;
  /** Why it was entered; empty for a move by a step, or when nobody said why. */
  readonly reason: string;
}

/** An outcome that a decision got. */
export interface TakenDecision {
  readonly at: Instant;
  readonly actor: string | null;
  /** The device on which it was entered. */
  readonly device: string;
  readonly decision: DecisionId;
  readonly outcome: string;
  /** The outcome that was in force before it; `null` when there was none. */
  readonly was: string | null;
}

/** An outcome of which the lead said that it holds ([WLK5]). */
export interface SettledDecision {
  readonly at: Instant;
  readonly actor: string | null;
  readonly outcome: string;
  /** How often the decision had been taken by then, with another outcome each time. */
  readonly takings: number;
  /** How often the step that decides had been reopened by then; it holds until the next time. */
  readonly reopenings: number;
}

/** A surprise of a rehearsal, as it was entered ([TRN2]). */
export interface EnteredSurprise {
  readonly at: Instant;
  readonly actor: string | null;
  /** True when a trainer fired it by hand; false when it comes when it says itself. */
  readonly isFired: boolean;
  /** What it is, obscured; `core/training` reads it. */
  readonly obscured: string;
}

/** An entry that had no effect, with the reason ([LOG4]). */
export interface IgnoredEntry {
  readonly source: string;
  readonly id: string;
  readonly reason: Message;
}

/** How a walk was opened. */
export interface OpenedWalk {
  readonly walk: WalkId;
  readonly at: Instant;
  /** The procedure of record, against which the walk is compared. The crew follows the procedure in force. */
  readonly procedure: LaidOutProcedure;
  readonly mode: "live" | "rehearsal";
  readonly plannedStart: Instant | null;
  /** The source of day and night; `null` when none was given. */
  readonly light: RecordedLight | null;
  /** Names of the people, by crew id, where given. */
  readonly names: ReadonlyMap<string, string>;
}

/**
 * The state that results from the entries so far. A ledger is never changed in place: each entry gives another
 * ledger, so old ones can be kept cheaply and folding can safely resume from any of them.
 */
export interface Ledger {
  readonly opened: OpenedWalk;
  /**
   * The procedure that is followed: the one the walk was opened with, until the plan is amended. Everything below
   * refers to its steps.
   */
  readonly inForce: LaidOutProcedure;
  /** The source of day and night that is followed: the one the walk was opened with, until another is chosen. */
  readonly light: RecordedLight | null;
  /** The amendments that made it what it is, in the order of the log ([AMD1]). */
  readonly amendments: readonly Amendment[];
  /** Who has seen which of them, in the order of the log ([AMD4]). */
  readonly amendmentsSeen: readonly AmendmentSeen[];
  /**
   * For steps that an amendment added, or of which it changed when they can start: the time of the amendment, before
   * which they cannot have begun.
   */
  readonly notBegunBefore: ReadonlyMap<StepId, Instant>;
  readonly phase: WalkPhase;
  /** The instant of PET 0; `null` before the clock was started. */
  readonly petZero: Instant | null;
  readonly closed: {
    readonly at: Instant;
    readonly end: "complete" | "terminated" | "aborted";
    /** The reason as somebody wrote it; empty when nobody did. */
    readonly reason: string;
    /** True when a played walk was closed because no lane could go on. */
    readonly stuck: boolean;
    /** The phase in which it was closed, to which a reopening leads back. */
    readonly before: Exclude<WalkPhase, "closed">;
  } | null;
  /** Each time the walk was reopened, in the order of the log, with the closing that was undone. */
  readonly reopenings: readonly {
    readonly at: Instant;
    readonly actor: string | null;
    readonly reason: string;
    readonly closed: NonNullable<Ledger["closed"]>;
  }[];
  readonly outcomes: Outcomes;
  /** When each decision got its current outcome. The steps of its branches are not performed before that ([WLK5]). */
  readonly decidedAt: ReadonlyMap<DecisionId, Instant>;
  /** Every outcome that a decision got, those that were replaced later included, in the order of the log. */
  readonly decisions: readonly TakenDecision[];
  /** What the lead said last of each decision, whether it still holds or not. */
  readonly settled: ReadonlyMap<DecisionId, SettledDecision>;
  /**
   * The network of active steps with the decisions taken so far, and open decisions as expected. Get-aheads are
   * included.
   */
  readonly network: Network;
  /** The places of the crew along that network, and the durations of its steps. */
  readonly whereabouts: Whereabouts;
  /** The windows in PET: from the planned start before the clock is started, from PET 0 after that. */
  readonly windows: WindowSpans;
  readonly steps: StepTable<StepProgress>;
  /** The lanes, by index in `crew`. */
  readonly lanes: readonly LaneProgress[];
  readonly custody: Custody;
  readonly moves: GrowingList<ItemMove>;
  readonly holds: readonly Hold[];
  readonly notes: GrowingList<Note>;
  readonly keptWatches: GrowingList<KeptWatch>;
  readonly readings: GrowingList<SupplyReading>;
  /** Values of states that were entered by themselves, in the order of the log. */
  readonly stateSettings: readonly {
    readonly at: Instant;
    readonly actor: string | null;
    readonly state: StateId;
    readonly value: string;
    readonly reason: string;
  }[];
  readonly alerts: AlertLog;
  /** The surprises of a rehearsal, in the order of the log; nothing else in the ledger follows from them. */
  readonly surprises: GrowingList<EnteredSurprise>;
  readonly deviations: readonly Deviation[];
}

/** The progress of a step that no entry refers to. */
export const UNTOUCHED: StepProgress = {
  status: "open",
  saidStart: null,
  start: null,
  finish: null,
  outOfOrder: false,
  orderReason: "",
  early: [],
  skipReason: "",
  leftOut: null,
  reopened: [],
  records: [],
  confirmed: null,
  counted: [],
  completedBy: null,
  alsoDone: [],
};

/** Returns the progress of a step. A step that is missing from the ledger counts as untouched. */
export function progressOf({ steps }: Pick<Ledger, "steps">, step: StepId): StepProgress {
  return steps.get(step) ?? UNTOUCHED;
}

/** True when a step is done or skipped. */
export function isComplete(ledger: Pick<Ledger, "steps">, step: StepId): boolean {
  return progressOf(ledger, step).status !== "open";
}
