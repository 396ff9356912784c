import type { ReactNode } from "react";
import { marginOf } from "../../core/course/index.ts";
import type { Duration, Instant } from "../../core/units/index.ts";
import { clockText, formatInstant, hourMinuteText, lengthText, minus } from "../../core/units/index.ts";
import type { WalkState } from "../../core/walk/index.ts";
import { turnBackState } from "../../core/walk/index.ts";
import { behindTone, behindWords } from "../parts/index.ts";
import type { NextChange } from "./next-change.ts";

/** How the walk's log is kept, as the bar says it. */
export interface KeptWords {
  readonly title: string;
  readonly detail: string;
  /** True when the reader must act. */
  readonly alarming: boolean;
  /** True when all is as usual: left out where there is no room. */
  readonly usual: boolean;
}

interface FollowBarProps {
  readonly state: WalkState;
  readonly now: Instant;
  readonly change: NextChange | null;
  readonly kept: KeptWords;
  /** Opens what there is to say about how the log is kept and linked. */
  readonly onKept: () => void;
  readonly mode: "live" | "rehearsal";
  /** Probability of finishing within the limit; `null` when not known. */
  readonly odds: number | null;
}

const PHASES = { prepared: "Prepared", running: "Running", held: "Held", closed: "Closed" } as const;

/** The largest delay of any lane that is not finished, or of all when all are: how far the walk as a whole is off the plan. */
function worstBehind({ lanes }: WalkState): Duration | null {
  const open = lanes.filter(({ status }) => status !== "finished");
  const known = (open.length ? open : lanes).flatMap(({ behind }) => behind ?? []);
  return known.length ? (Math.max(...known) as Duration) : null;
}

/** The bar that never scrolls away: the clock, the phase, the margin, what changes next, how the log is kept. */
export function FollowBar({ state, now, change, kept, onKept, mode, odds }: FollowBarProps) {
  const { forecast, phase, pet } = state;
  const margin = forecast && marginOf(forecast);
  const limit = state.ledger.inForce.outline.procedure.limits.elapsed;
  const behind = worstBehind(state);
  return (
    <header className="follow-bar" data-phase={phase}>
      <div className="follow-clock">
        <span className="follow-key">PET</span>
        <span className="follow-pet">{pet === null ? "–:––:––" : clockText(pet)}</span>
      </div>
      <Cell title={mode === "rehearsal" ? "UTC, rehearsed" : "UTC"} minor>
        {formatInstant(now).slice(11, 19)}
      </Cell>
      <Cell
        title={mode === "rehearsal" ? `${PHASES[phase]} · rehearsal` : PHASES[phase]}
        tone={behindTone(behind)}
      >
        {phase === "prepared" ? "clock not started" : behindWords(behind)}
      </Cell>
      {forecast ? (
        <Cell
          title={`Finish ${hourMinuteText(forecast.finish)}${limit === undefined ? "" : ` · limit ${hourMinuteText(limit)}`}`}
          tone={margin !== null && margin < 0 ? "late" : undefined}
        >
          {margin === null ? "no limit set" : marginWords(margin)}
          {odds !== null && (
            <span className="follow-odds">
              {` · ${oddsWords(odds)}`}
              <span className="follow-likely"> likely</span>
            </span>
          )}
        </Cell>
      ) : (
        <Cell title="Finish">cannot be forecast</Cell>
      )}
      <TurnBackCell state={state} />
      {change && (
        <Cell title={change.title} minor>
          {change.words}
        </Cell>
      )}
      <button
        type="button"
        className="follow-cell follow-kept"
        data-minor={kept.usual || undefined}
        aria-label={`${kept.title}, ${kept.detail}: link and followers`}
        onClick={onKept}
      >
        <span className="follow-key">{kept.title}</span>
        <span className="follow-value" data-tone={kept.alarming ? "late" : undefined}>
          {kept.detail}
        </span>
      </button>
    </header>
  );
}

/** Until when those outside may go on, what sets that, and how long it still is. */
function TurnBackCell({ state }: { readonly state: WalkState }) {
  const { pet, phase, ledger } = state;
  if (pet === null || phase === "closed") return null;
  const { turnBack, limiting, longestReturn } = turnBackState(state);
  if (!turnBack || !longestReturn) return null;
  const left = minus(turnBack.at, pet);
  const crew = limiting && ledger.inForce.outline.crewMember(limiting.supply.crew)?.call;
  const why =
    turnBack.because === "limit" ? "limit" : `${crew} ${limiting?.supply.label ?? limiting?.supply.id}`;
  return (
    <Cell
      title={`Turn back ${hourMinuteText(turnBack.at)} · ${why}`}
      tone={left < 0 ? "late" : undefined}
      minor
    >
      {left < 0 ? `${lengthText(left)} past` : `in ${clockText(left)}`}
    </Cell>
  );
}

/** Whole percents; sampling cannot tell the last one from certainty. */
function oddsWords(odds: number): string {
  if (odds > 0.99) return "> 99 %";
  return odds < 0.01 ? "< 1 %" : `${Math.round(odds * 100)} %`;
}

function marginWords(margin: Duration): string {
  return margin < 0 ? `${lengthText(margin)} over` : `${lengthText(margin)} margin`;
}

interface CellProps {
  readonly title: string;
  readonly children: ReactNode;
  readonly tone?: "late" | "early" | undefined;
  /** Left out where there is no room. */
  readonly minor?: boolean;
}

function Cell({ title, children, tone, minor = false }: CellProps) {
  return (
    <div className="follow-cell" data-minor={minor || undefined}>
      <span className="follow-key">{title}</span>
      <span className="follow-value" data-tone={tone}>
        {children}
      </span>
    </div>
  );
}
