import type { Message } from "../../words/index.ts";
import type { CrewId, Duration, Instant, StepId } from "../units/index.ts";

/** The levels of an alert, the most urgent first ([OFF3]). */
export const ALERT_LEVELS = ["act-now", "look-soon", "know"] as const;

/** One of {@link ALERT_LEVELS}. */
export type AlertLevel = (typeof ALERT_LEVELS)[number];

/** An alert that holds at an instant of a walk, before it is known who has seen it. */
export interface RaisedAlert {
  /** Names the alert for as long as it holds; an alert that gets worse has another key or another level. */
  readonly alert: string;
  readonly level: AlertLevel;
  /** The id of what it is about: a step, a watch, an item, or crew member and supply; `null` for the whole walk. */
  readonly about: string | null;
  /** Whom it concerns; empty for everybody. */
  readonly crew: readonly CrewId[];
  /** The step it leads to; `null` when there is none. */
  readonly step: StepId | null;
  /** Since when it holds at this level, in PET, as far as the walk tells; never later than the instant of the state. */
  readonly since: Duration;
  readonly text: Message;
}

/** An alert, with who has seen it. */
export interface WalkAlert extends RaisedAlert {
  /** Who acknowledged it at this level or a more urgent one; `null` when nobody has. */
  readonly seen: { readonly at: Instant; readonly actor: string | null } | null;
}

/** An entry that says that an alert was raised. */
export interface AlertRaising {
  readonly at: Instant;
  readonly alert: string;
  readonly level: AlertLevel;
  readonly about: string | null;
}

/** An entry that says that somebody has seen an alert. */
export interface AlertSeeing {
  readonly at: Instant;
  readonly alert: string;
  /** The level that was seen. */
  readonly level: AlertLevel;
  readonly actor: string | null;
}

/** The alerts that were raised and seen so far, each list in the order of the log. */
export interface AlertLog {
  /** The first raising of each alert at each level. */
  readonly raised: readonly AlertRaising[];
  readonly seen: readonly AlertSeeing[];
}

/** Returns the key of an alert of a kind, with the ids and numbers that tell it from others of that kind. */
export function alertKey(kind: string, ...of: readonly (string | number)[]): string {
  return [kind, ...of].join(" ");
}

/** True when `a` is at least as urgent as `b`. */
export function isAsUrgent(a: AlertLevel, b: AlertLevel): boolean {
  return ALERT_LEVELS.indexOf(a) <= ALERT_LEVELS.indexOf(b);
}

/** True when an alert belongs on a screen: one that asks to act now until it is over, the others until they are seen. */
export function isShown({ level, seen }: WalkAlert): boolean {
  return level === "act-now" || seen === null;
}
