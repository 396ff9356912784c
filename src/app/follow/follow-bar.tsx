import type { ReactNode } from "react";
import { marginOf } from "../../core/course/index.ts";
import type { Duration, Instant } from "../../core/units/index.ts";
import { clockText, formatInstant, minus } from "../../core/units/index.ts";
import type { WalkState } from "../../core/walk/index.ts";
import { turnBackState } from "../../core/walk/index.ts";
import type { Message } from "../../words/index.ts";
import { message, words } from "../../words/index.ts";
import { behindTone, behindWords, Worded } from "../parts/index.ts";
import type { NextChange } from "./next-change.ts";

/** How the walk's log is kept, as shown in the bar. */
export interface KeptWords {
  readonly title: string;
  readonly detail: string;
  /** True when the reader must act. */
  readonly alarming: boolean;
  /** True when nothing is unusual. Such words are left out where there is no room. */
  readonly usual: boolean;
}

interface FollowBarProps {
  readonly state: WalkState;
  readonly now: Instant;
  readonly change: NextChange | null;
  readonly kept: KeptWords;
  /** Opens the panel about how the log is kept and linked. */
  readonly onKept: () => void;
  readonly mode: "live" | "rehearsal";
  /** The probability of finishing within the limit; `null` when unknown. */
  readonly odds: number | null;
}

/**
 * How far the walk as a whole is off the plan: the largest delay among the lanes that are not finished, or among all
 * when all are finished.
 */
function worstBehind({ lanes }: WalkState): Duration | null {
  const open = lanes.filter(({ status }) => status !== "finished");
  const known = (open.length ? open : lanes).flatMap(({ behind }) => behind ?? []);
  return known.length ? (Math.max(...known) as Duration) : null;
}

/**
 * The bar that stays in place when the list scrolls: the clock, the phase, the margin, what changes next, and how the
 * log is kept.
 */
export function FollowBar({ state, now, change, kept, onKept, mode, odds }: FollowBarProps) {
  const { forecast, phase, pet } = state;
  const margin = forecast && marginOf(forecast);
  const limit = state.ledger.inForce.outline.procedure.limits.elapsed;
  const behind = worstBehind(state);
  return (
    <header className="follow-bar" data-phase={phase}>
      <div className="follow-clock">
        <span className="follow-key">{words("follow/pet")}</span>
        <span className="follow-pet">{pet === null ? "–:––:––" : clockText(pet)}</span>
      </div>
      <Cell title={words(mode === "rehearsal" ? "follow/utc-rehearsed" : "follow/utc")} minor>
        {formatInstant(now).slice(11, 19)}
      </Cell>
      <Cell
        title={words(mode === "rehearsal" ? `follow/phase-${phase}-rehearsal` : `follow/phase-${phase}`)}
        tone={behindTone(behind)}
      >
        {phase === "prepared" ? words("follow/clock-not-started") : behindWords(behind)}
      </Cell>
      {forecast ? (
        <Cell
          title={
            limit === undefined
              ? words("follow/finish-at", { finish: forecast.finish })
              : words("follow/finish-at-limit", { finish: forecast.finish, limit })
          }
          tone={margin !== null && margin < 0 ? "late" : undefined}
        >
          {margin === null ? words("follow/no-limit-set") : marginWords(margin)}
          {odds !== null && (
            <span className="follow-odds">
              {" · "}
              <Worded
                message={oddsMessage(odds)}
                marks={{ likely: (inside) => <span className="follow-likely">{inside}</span> }}
              />
            </span>
          )}
        </Cell>
      ) : (
        <Cell title={words("follow/finish")}>{words("follow/cannot-be-forecast")}</Cell>
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
        aria-label={words("follow/kept-label", { title: kept.title, detail: kept.detail })}
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

/** The PET until which those outside may go on, what determines it, and the time left until then. */
function TurnBackCell({ state }: { readonly state: WalkState }) {
  const { pet, phase, ledger } = state;
  if (pet === null || phase === "closed") return null;
  const { turnBack, limiting, longestReturn } = turnBackState(state);
  if (!turnBack || !longestReturn) return null;
  const left = minus(turnBack.at, pet);
  const crew = limiting && ledger.inForce.outline.crewMember(limiting.supply.crew)?.call;
  const title =
    turnBack.because === "limit"
      ? words("follow/turn-back-limit", { at: turnBack.at })
      : words("follow/turn-back-supply", {
          at: turnBack.at,
          crew: String(crew),
          supply: String(limiting?.supply.label ?? limiting?.supply.id),
        });
  return (
    <Cell title={title} tone={left < 0 ? "late" : undefined} minor>
      {words(left < 0 ? "follow/past" : "follow/in", { time: left })}
    </Cell>
  );
}

/**
 * The odds in whole per cent. Near 0 and 100 they are given in words, since sampling cannot distinguish the last per
 * cent from certainty.
 */
function oddsMessage(odds: number): Message {
  if (odds > 0.99) return message("follow/odds-sure");
  return odds < 0.01
    ? message("follow/odds-none")
    : message("follow/odds", { share: Math.round(odds * 100) });
}

function marginWords(margin: Duration): string {
  return words(margin < 0 ? "follow/over" : "follow/margin", { time: margin });
}

interface CellProps {
  readonly title: string;
  readonly children: ReactNode;
  readonly tone?: "late" | "early" | undefined;
  /** True for a cell that is left out where there is no room. */
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
