import type { Draft, Entry } from "../../core/log/index.ts";
import type { RecordedLight } from "../../core/plan/index.ts";
import type { Change, Location } from "../../core/procedure/index.ts";
import type {
  DecisionId,
  Duration,
  Instant,
  ItemId,
  RecordId,
  StateId,
  StepId,
  WatchId,
} from "../../core/units/index.ts";
import { inSeconds } from "../../core/units/index.ts";
import type { AlertLevel, Ledger, RaisedAlert, TimedMark } from "../../core/walk/index.ts";
import { alertDrafts, paperDrafts } from "../../core/walk/index.ts";
import type { WalkSession } from "../session/index.ts";

type DraftOf<Name extends Draft["name"]> = Omit<Extract<Draft, { name: Name }>, "at" | "actor">;
type Undated = { [Name in Draft["name"]]: DraftOf<Name> }[Draft["name"]];

/** Options for marking a step done. */
export interface DoneOptions {
  readonly outOfOrder?: boolean;
  /** Why it is done out of order. */
  readonly reason?: string;
  readonly decision?: DecisionId;
  readonly outcome?: string;
  /** Called as soon as the entry is kept, before its effects are drawn. */
  readonly onKept?: () => void;
}

/** Everything that a follower can enter. Each promise resolves once the entry is kept. */
export interface FollowActions {
  startClock(): Promise<void>;
  done(step: StepId, options?: DoneOptions): Promise<void>;
  started(step: StepId): Promise<void>;
  skip(step: StepId, reason: string): Promise<void>;
  reopen(step: StepId, reason: string): Promise<void>;
  record(step: StepId, record: RecordId, value: number): Promise<void>;
  confirm(step: StepId): Promise<void>;
  decide(decision: DecisionId, outcome: string): Promise<void>;
  /** As the lead: says which outcome holds, whatever other devices decide. */
  settle(decision: DecisionId, outcome: string): Promise<void>;
  note(text: string, step: StepId | null): Promise<void>;
  keepWatch(watch: WatchId, due: Duration): Promise<void>;
  moveItem(item: ItemId, to: Location, reason: string): Promise<void>;
  readSupply(crew: string, supply: string, value: number): Promise<void>;
  /** Counts off something of a step's list, by its place in it from 0. */
  countOff(step: StepId, check: number): Promise<void>;
  /** Says that a state was found to have another value. */
  setState(state: StateId, value: string, reason: string): Promise<void>;
  /** Logs the alerts that no entry tells yet. */
  raiseAlerts(ledger: Pick<Ledger, "alerts">, alerts: readonly RaisedAlert[]): Promise<void>;
  /** Says that an alert was seen at a level. */
  seeAlert(alert: string, level: AlertLevel): Promise<void>;
  hold(reason: string): Promise<void>;
  lift(): Promise<void>;
  /** Amends the plan of the walk ([AMD1]). */
  amend(changes: readonly Change[], reason: string): Promise<void>;
  /** Says where day and night come from, for every device of the walk. */
  chooseLight(light: RecordedLight): Promise<void>;
  /** Says that an amendment was seen, by the source and id of its entry. */
  seeAmendment(amendment: { readonly source: string; readonly id: string }): Promise<void>;
  close(end: "complete" | "terminated" | "aborted", reason: string): Promise<void>;
  /** Lets a closed walk go on. */
  reopenWalk(reason: string): Promise<void>;
  /**
   * Enters steps that were done while the crew worked from paper, in the given order and with their own times, by the
   * walk's clock. `onKept` is called once all of them are kept.
   */
  fromPaper(marks: readonly TimedMark[], onKept: () => void): Promise<void>;
  /** Takes back entries of this device, without a reason. */
  undo(entries: readonly Entry[]): Promise<void>;
}

/** What {@link followActions} needs. */
export interface FollowActionsParts {
  readonly session: WalkSession;
  /** The clock of this device. Entries carry its times. */
  readonly now: () => Instant;
  /** Converts a time of the walk's clock to that of this device. */
  readonly ownTime: (at: Instant) => Instant;
  /** The name under which entries are made. */
  readonly actor: string;
  /** Called when an entry is kept. */
  readonly entered: () => void;
  /** Called with the error when an entry could not be kept. */
  readonly failed: (error: unknown) => void;
}

/** The actions of a follower on a walk. */
export function followActions({
  session,
  now,
  ownTime,
  actor,
  entered,
  failed,
}: FollowActionsParts): FollowActions {
  const keep = async (draftsAt: (at: Instant) => readonly Draft[], onKept?: () => void): Promise<void> => {
    try {
      const drafts = draftsAt(now());
      if (drafts.length === 0) return;
      await session.enter(drafts, onKept);
      entered();
    } catch (error) {
      failed(error);
    }
  };
  const enter = (drafts: readonly Undated[], onKept?: () => void) =>
    keep((at) => drafts.map((draft) => ({ ...draft, at, actor }) as Draft), onKept);
  return {
    startClock: () => enter([{ name: "clock.started", data: {} }]),
    done: (step, { outOfOrder = false, reason = "", outcome, decision, onKept } = {}) => {
      const data = outOfOrder ? { step, outOfOrder, ...(reason === "" ? {} : { reason }) } : { step };
      const drafts: Undated[] = [{ name: "step.done", data }];
      if (decision !== undefined && outcome !== undefined)
        drafts.unshift({ name: "decision.taken", data: { decision, outcome } });
      return enter(drafts, onKept);
    },
    started: (step) => enter([{ name: "step.started", data: { step } }]),
    skip: (step, reason) => enter([{ name: "step.skipped", data: { step, reason } }]),
    reopen: (step, reason) => enter([{ name: "step.reopened", data: { step, reason } }]),
    record: (step, record, value) => enter([{ name: "record.taken", data: { step, record, value } }]),
    confirm: (step) => enter([{ name: "confirm.given", data: { step } }]),
    decide: (decision, outcome) => enter([{ name: "decision.taken", data: { decision, outcome } }]),
    settle: (decision, outcome) =>
      enter([{ name: "decision.taken", data: { decision, outcome, settles: true } }]),
    note: (text, step) => enter([{ name: "note.made", data: step === null ? { text } : { text, step } }]),
    keepWatch: (watch, due) => enter([{ name: "watch.kept", data: { watch, due: inSeconds(due) } }]),
    moveItem: (item, to, reason) => enter([{ name: "item.moved", data: { item, to, reason } }]),
    readSupply: (crew, supply, value) => enter([{ name: "supply.read", data: { crew, supply, value } }]),
    hold: (reason) => enter([{ name: "hold.called", data: reason ? { reason } : {} }]),
    countOff: (step, check) => enter([{ name: "check.counted", data: { step, check } }]),
    setState: (state, value, reason) => enter([{ name: "state.set", data: { state, value, reason } }]),
    raiseAlerts: (ledger, alerts) => keep((at) => alertDrafts(ledger, alerts, at, actor)),
    seeAlert: (alert, level) => enter([{ name: "alert.seen", data: { alert, level } }]),
    reopenWalk: (reason) => enter([{ name: "walk.reopened", data: { reason } }]),
    lift: () => enter([{ name: "hold.lifted", data: {} }]),
    amend: (changes, reason) => enter([{ name: "plan.amended", data: { changes, reason, needs: 2 } }]),
    chooseLight: (light) => enter([{ name: "light.chosen", data: { light } }]),
    seeAmendment: ({ source, id }) =>
      enter([{ name: "amendment.seen", data: { amendment: { source, id } } }]),
    close: (end, reason) => enter([{ name: "walk.closed", data: reason ? { end, reason } : { end } }]),
    fromPaper: (marks, onKept) => keep(() => paperDrafts(marks, ownTime, actor), onKept),
    undo: async (entries) => {
      try {
        await session.undo(entries, now(), actor);
      } catch (error) {
        failed(error);
      }
    },
  };
}
