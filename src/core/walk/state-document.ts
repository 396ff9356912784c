import type { Location } from "../procedure/index.ts";
import type { Instant } from "../units/index.ts";
import { inSeconds } from "../units/index.ts";
import { forecastRisk } from "./forecast-risk.ts";
import type { Folded } from "./walk-fold.ts";
import type { WaitingOn } from "./walk-state.ts";
import { walkStateAt } from "./walk-state.ts";

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
  readonly items: Readonly<Record<string, Location>>;
  readonly ignored: Folded["ignored"];
  readonly deviations: readonly {
    readonly kind: string;
    readonly step: string | null;
    readonly text: string;
  }[];
}

const waitDocument = (wait: WaitingOn): object => {
  if ("crew" in wait) return { crew: wait.crew, step: wait.step };
  if ("window" in wait) return { window: wait.window, until: inSeconds(wait.until) };
  if ("lag" in wait) return { lag: wait.lag, until: inSeconds(wait.until) };
  return { hold: true, since: inSeconds(wait.since) };
};

/** The state document at an instant, the same for the same set of entries ([LOG3]); `null` when no walk was opened. */
export function stateDocument(folded: Folded, at: Instant): StateDocument | null {
  const { ledger } = folded;
  if (!ledger) return null;
  const state = walkStateAt(ledger, at);
  const { outline, walk } = ledger.opened;
  return {
    walk,
    phase: state.phase,
    pet: state.pet === null ? null : inSeconds(state.pet),
    lanes: state.lanes.map(({ crew, status, step, done, of, waitingOn, behind }) => ({
      crew,
      status,
      step: outline.steps[step ?? -1]?.step.id ?? null,
      done,
      of,
      waitingOn: waitingOn.map(waitDocument),
      behind: behind === null ? null : inSeconds(behind),
    })),
    forecast: state.forecast && {
      finish: inSeconds(state.forecast.finish),
      margin: state.forecast.margin === null ? null : inSeconds(state.forecast.margin),
      withinLimit: forecastRisk(state)?.withinLimit ?? null,
    },
    items: Object.fromEntries([...ledger.custody].sort(([a], [b]) => (a < b ? -1 : 1))),
    ignored: folded.ignored,
    deviations: folded.deviations.map(({ kind, step, text }) => ({ kind, step, text })),
  };
}
