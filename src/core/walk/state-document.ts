import type { Say } from "../../words/index.ts";
import type { HoldUp } from "../course/index.ts";
import { marginOf } from "../course/index.ts";
import type { Location } from "../procedure/index.ts";
import type { Instant } from "../units/index.ts";
import { formatInstant, inSeconds } from "../units/index.ts";
import { alertsOf } from "./alerts-of.ts";
import type { Amendment } from "./amendment.ts";
import type { AmendmentOutcome } from "./amendment-outcome.ts";
import { amendmentOutcome, amendmentSeenBy } from "./amendment-outcome.ts";
import { forecastRisk } from "./forecast-risk.ts";
import type { Ledger } from "./ledger.ts";
import { newerEntriesOf } from "./newer-entries.ts";
import { deviationsAt, outstandingOf } from "./outstanding.ts";
import { stateValuesOf } from "./state-values.ts";
import { turnBackState } from "./turn-back-state.ts";
import type { Folded } from "./walk-fold.ts";
import { walkStateAt } from "./walk-state.ts";

/** A figure before and after an amendment, in seconds; `null` where there is none. */
interface BeforeAndAfter {
  readonly before: number | null;
  readonly after: number | null;
}

/** The state of a walk as one JSON document; all times in seconds of PET. */
export interface StateDocument {
  readonly walk: string;
  readonly phase: string;
  readonly pet: number | null;
  readonly lanes: readonly {
    readonly crew: string;
    readonly status: string;
    readonly step: string | null;
    readonly done: number;
    readonly of: number;
    readonly waitingOn: readonly object[];
    readonly behind: number | null;
  }[];
  readonly forecast: {
    readonly finish: number;
    readonly margin: number | null;
    readonly withinLimit: number | null;
  } | null;
  /** The return time if the work is broken off now, and the latest PET to turn back; `null` where it cannot be told. */
  readonly return: {
    readonly seconds: number | null;
    readonly turnBack: number | null;
    /** The bounds that the way home breaks: `doneBy`, or `within` after another step, and by how much. */
    readonly broken: readonly object[];
    /** The state that bars the way home: its value, the one it must have, what needs that and what would have to set it. */
    readonly bar: object | null;
  };
  readonly items: Readonly<Record<string, Location>>;
  /** The value of every state, by id. */
  readonly states: Readonly<Record<string, string>>;
  /** The amendments of the plan, in the order of the log ([AMD2]). */
  readonly amendments: readonly {
    readonly source: string;
    readonly id: string;
    readonly at: string;
    readonly by: string | null;
    readonly reason: string;
    readonly steps: readonly { readonly step: string; readonly how: string }[];
    readonly finish: BeforeAndAfter;
    readonly margin: BeforeAndAfter;
    readonly seen: readonly { readonly by: string | null; readonly at: string; readonly source: string }[];
  }[];
  /** The entries that only a newer version of the program understands ([AMD4]); they are among the ignored ones too. */
  readonly newer: readonly { readonly source: string; readonly id: string }[];
  readonly ignored: readonly { readonly source: string; readonly id: string; readonly reason: string }[];
  readonly deviations: readonly {
    readonly kind: string;
    readonly step: string | null;
    readonly text: string;
  }[];
  /** What was owed and is not there ([OFF2]), the oldest first. */
  readonly outstanding: readonly {
    readonly kind: string;
    readonly step: string | null;
    /** The record or watch it is about; `null` where the kind and the step say all. */
    readonly of: string | null;
    readonly since: number;
    readonly text: string;
  }[];
  /** The alerts that hold ([OFF3]), the most urgent first; `seen` says who acknowledged it, and when. */
  readonly alerts: readonly {
    readonly level: string;
    readonly alert: string;
    readonly about: string | null;
    readonly since: number;
    readonly seen: { readonly by: string | null; readonly at: string } | null;
    readonly text: string;
  }[];
}

function waitDocument(holdUp: HoldUp): object {
  switch (holdUp.kind) {
    case "crew":
      return { crew: holdUp.crew, step: holdUp.step };
    case "lag":
      return { lag: holdUp.step, until: inSeconds(holdUp.until) };
    case "notBefore":
      return { notBefore: inSeconds(holdUp.until) };
    case "window":
      return { window: holdUp.window, until: inSeconds(holdUp.until) };
    case "hold":
      return { hold: true, since: inSeconds(holdUp.since) };
  }
}

function amendmentDocument(ledger: Ledger, amendment: Amendment): StateDocument["amendments"][number] {
  const { source, id, at, actor, reason, steps } = amendment;
  const { finish, margin } = amendmentOutcome(amendment);
  const both = ({ before, after }: AmendmentOutcome["finish"]): BeforeAndAfter => ({
    before: before && inSeconds(before),
    after: after && inSeconds(after),
  });
  return {
    source,
    id,
    at: formatInstant(at),
    by: actor,
    reason,
    steps,
    finish: both(finish),
    margin: both(margin),
    seen: amendmentSeenBy(ledger, amendment).map((one) => ({
      by: one.actor,
      at: formatInstant(one.at),
      source: one.source,
    })),
  };
}

/**
 * Returns the state document at an instant, or `null` when no walk was opened. The same set of entries always gives
 * the same document ([LOG3]). `say` turns messages into text.
 */
export function stateDocument(folded: Folded, at: Instant, say: Say): StateDocument | null {
  const { ledger } = folded;
  if (!ledger) return null;
  const state = walkStateAt(ledger, at);
  const margin = state.forecast && marginOf(state.forecast);
  const { longestReturn, turnBack, returnPlan, bar } = turnBackState(state);
  return {
    walk: ledger.opened.walk,
    phase: state.phase,
    pet: state.pet === null ? null : inSeconds(state.pet),
    lanes: state.lanes.map(({ crew, status, step, done, of, waitingOn, behind }) => ({
      crew,
      status,
      step,
      done,
      of,
      waitingOn: waitingOn.map(waitDocument),
      behind: behind === null ? null : inSeconds(behind),
    })),
    forecast: state.forecast && {
      finish: inSeconds(state.forecast.finish),
      margin: margin === null ? null : inSeconds(margin),
      withinLimit: forecastRisk(state)?.withinLimit ?? null,
    },
    return: {
      seconds: longestReturn && inSeconds(longestReturn.total),
      turnBack: turnBack && inSeconds(turnBack.at),
      broken: (returnPlan?.broken ?? []).map(({ bound, over }) => ({
        ...bound,
        ...("doneBy" in bound ? { doneBy: inSeconds(bound.doneBy) } : { within: inSeconds(bound.within) }),
        over: inSeconds(over),
      })),
      bar: bar && {
        state: bar.state,
        is: bar.is,
        mustBe: bar.value,
        step: bar.step,
        crew: bar.crew,
        setBy: bar.setBy,
      },
    },
    items: Object.fromEntries([...ledger.custody].sort(([a], [b]) => (a < b ? -1 : 1))),
    states: Object.fromEntries([...stateValuesOf(ledger)].sort(([a], [b]) => (a < b ? -1 : 1))),
    amendments: ledger.amendments.map((amendment) => amendmentDocument(ledger, amendment)),
    newer: newerEntriesOf(folded).map(({ source, id }) => ({ source, id })),
    ignored: folded.ignored.map(({ source, id, reason }) => ({ source, id, reason: say(reason) })),
    deviations: deviationsAt(folded, state).map(({ kind, step, text }) => ({ kind, step, text: say(text) })),
    outstanding: outstandingOf(state).map(({ kind, step, record, watch, since, text }) => ({
      kind,
      step,
      of: record ?? watch,
      since: inSeconds(since),
      text: say(text),
    })),
    alerts: alertsOf(state).map(({ level, alert, about, since, seen, text }) => ({
      level,
      alert,
      about,
      since: inSeconds(since),
      seen: seen && { by: seen.actor, at: formatInstant(seen.at) },
      text: say(text),
    })),
  };
}
