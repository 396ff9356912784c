import type { ReactNode } from "react";
import { marginOf } from "../../core/course/index.ts";
import type { Duration, Instant } from "../../core/units/index.ts";
import { clockText, minus } from "../../core/units/index.ts";
import type { WalkState } from "../../core/walk/index.ts";
import { turnBackState } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
import { behindTone, behindWords } from "../parts/index.ts";
import { figureGaps } from "./figure-gaps.ts";
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
  /** Opens the panel that says where the figures of the bar come from. */
  readonly onFigures: () => void;
  /** Opens the panel that says what still fits. */
  readonly onFit: () => void;
  /** How much is outstanding, and the way to the list of it. */
  readonly outstanding: number;
  readonly onOutstanding: () => void;
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
 * The bar that stays in place when the list scrolls: which procedure this is, the clock, the phase, the margin, the
 * turn-back, what changes next, and how the log is kept. Nothing in it is cut: what does not fit wraps, and on a phone
 * the minor figures are behind a button.
 */
export function FollowBar({
  state,
  now,
  change,
  kept,
  onKept,
  onFigures,
  onFit,
  outstanding,
  onOutstanding,
  mode,
  odds,
}: FollowBarProps) {
  const { phase, pet } = state;
  const { title, revision } = state.ledger.inForce.outline.procedure;
  const behind = worstBehind(state);
  const isAmended = state.ledger.amendments.length > 0;
  const against = phase === "prepared" ? words("follow/clock-not-started") : behindWords(behind);
  return (
    <header className="follow-bar" data-phase={phase}>
      <p className="follow-name">
        <b>{title}</b>
        {revision !== undefined && <span>{words("parts/revision", { revision })}</span>}
        <span>
          {words(mode === "rehearsal" ? `follow/phase-${phase}-rehearsal` : `follow/phase-${phase}`)}
        </span>
      </p>
      <div className="follow-clock">
        <span className="follow-key">{words("follow/pet")}</span>
        <span className="follow-pet">{pet === null ? "–:––:––" : clockText(pet)}</span>
        <span className="follow-key follow-utc">
          {words(mode === "rehearsal" ? "follow/utc-rehearsed" : "follow/utc")}{" "}
          <b>{words("figures/utc-time", { at: now })}</b>
        </span>
      </div>
      <button
        type="button"
        className="follow-cell follow-plan"
        aria-label={words(isAmended ? "follow/against-amended-label" : "follow/against-plan-label", {
          behind: against,
        })}
        onClick={onFit}
      >
        <span className="follow-key">
          {words(isAmended ? "follow/against-amended" : "follow/against-plan")}
        </span>
        <span className="follow-value" data-tone={behindTone(behind)}>
          {against}
        </span>
      </button>
      <FinishCell state={state} odds={odds} onSet={onFigures} />
      <TurnBackCell state={state} onSet={onFigures} />
      {change && (
        <Cell title={change.title} minor onSet={change.isKnown ? null : onFigures}>
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
      <button
        type="button"
        className="follow-cell follow-outstanding"
        data-some={outstanding > 0 || undefined}
        onClick={onOutstanding}
      >
        <span className="follow-key">{words("follow/outstanding")}</span>
        <span className="follow-value" data-tone={outstanding > 0 ? "late" : undefined}>
          {outstanding === 0 ? words("follow/outstanding-none") : outstanding}
        </span>
      </button>
      <button type="button" className="follow-cell follow-figures" onClick={onFigures}>
        {words("follow/figures")}
      </button>
    </header>
  );
}

/** When the walk is expected to finish, the margin to the limit, and the chance of keeping it. */
function FinishCell({ state, odds, onSet }: Pick<FollowBarProps, "state" | "odds"> & OnSet) {
  const { forecast } = state;
  const limit = state.ledger.inForce.outline.procedure.limits.elapsed;
  if (!forecast)
    return (
      <Cell title={words("follow/finish")} onSet={onSet}>
        {words("follow/cannot-be-forecast")}
      </Cell>
    );
  const { finish } = forecast;
  const margin = marginOf(forecast);
  return (
    <Cell
      title={
        limit === undefined
          ? words("follow/finish-at", { finish })
          : words("follow/finish-at-limit", { finish, limit })
      }
      tone={margin !== null && margin < 0 ? "late" : undefined}
      onSet={margin === null ? onSet : null}
    >
      {margin === null ? words("follow/no-limit-set") : marginWords(margin)}
      {odds !== null && <span className="follow-odds">{words("follow/odds", { share: odds })}</span>}
    </Cell>
  );
}

/** The PET until which those outside may go on, what determines it, and the time left until then. */
function TurnBackCell({ state, onSet }: Pick<FollowBarProps, "state"> & OnSet) {
  const { pet, phase, ledger } = state;
  if (pet === null || phase === "closed") return null;
  const limits = turnBackState(state);
  const { turnBack, longestReturn } = limits;
  if (!turnBack || !longestReturn)
    return figureGaps(state, limits).some((gap) => gap.of === "turn-back") ? (
      <Cell title={words("gap/turn-back")} onSet={onSet}>
        {words("gap/not-known")}
      </Cell>
    ) : null;
  const left = minus(turnBack.at, pet);
  const supply = turnBack.supply?.supply;
  const crew = supply && ledger.inForce.outline.crewMember(supply.crew)?.call;
  const title =
    turnBack.because === "limit"
      ? words("follow/turn-back-limit", { at: turnBack.at })
      : words("follow/turn-back-supply", {
          at: turnBack.at,
          crew: String(crew),
          supply: String(supply?.label ?? supply?.id),
        });
  return (
    <Cell title={title} tone={left < 0 ? "late" : undefined}>
      {words(left < 0 ? "follow/past" : "follow/in", { time: left })}
    </Cell>
  );
}

function marginWords(margin: Duration): string {
  return words(margin < 0 ? "follow/over" : "follow/margin", { time: margin });
}

/** The way to what can be done about a figure that is not known. */
interface OnSet {
  readonly onSet: () => void;
}

interface CellProps {
  readonly title: string;
  readonly children: ReactNode;
  /** Says why the figure is not known and what can be done; `null` for one that is known. */
  readonly onSet?: (() => void) | null;
  readonly tone?: "late" | "early" | undefined;
  /** True for a cell that is behind the button with the figures where there is no room. */
  readonly minor?: boolean;
}

function Cell({ title, children, tone, minor = false, onSet = null }: CellProps) {
  const content = (
    <>
      <span className="follow-key">{title}</span>
      <span className="follow-value" data-tone={tone}>
        {children}
      </span>
    </>
  );
  return onSet === null ? (
    <div className="follow-cell" data-minor={minor || undefined}>
      {content}
    </div>
  ) : (
    <button
      type="button"
      className="follow-cell follow-unknown"
      data-minor={minor || undefined}
      title={words("gap/set-it")}
      onClick={onSet}
    >
      {content}
    </button>
  );
}
