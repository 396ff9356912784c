import type { Procedure } from "../../core/procedure/index.ts";
import type { TurnBackState, WalkState } from "../../core/walk/index.ts";
import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";

/** A figure that is not known while a walk is prepared or runs. */
export interface FigureGap {
  readonly of: "clock" | "limit" | "forecast" | "turn-back" | "windows" | "supplies";
  /** What is missing, and why it cannot be set, where it cannot. */
  readonly text: Message;
  /** True when a reading of a supply makes it known. */
  readonly isReading: boolean;
}

/** Returns what is not known of a walk, in the order of the bar. A closed walk has nothing left to set. */
export function figureGaps(state: WalkState, limits: TurnBackState): readonly FigureGap[] {
  const { phase, pet, forecast, ledger } = state;
  const { procedure } = ledger.inForce.outline;
  if (phase === "closed") return [];
  const gap = (of: FigureGap["of"], text: Message, isReading = false): FigureGap => ({ of, text, isReading });
  const turnBack = pet === null ? null : turnBackGap(limits, procedure);
  const unread = limits.supplies.filter((one) => one.forecast.last === null);
  return [
    ...(pet === null ? [gap("clock", message("gap/not-started"))] : []),
    ...(procedure.limits.elapsed === undefined ? [gap("limit", message("gap/no-limit"))] : []),
    ...(forecast === null ? [gap("forecast", message("gap/no-forecast"))] : []),
    ...(turnBack === null ? [] : [gap("turn-back", turnBack, turnBack.key === "gap/no-end-of-supplies")]),
    ...windowGaps(state).map((text) => gap("windows", text)),
    ...(unread.length === 0
      ? []
      : [gap("supplies", message("gap/never-read", { supplies: unread.map(nameOf(state)) }), true)]),
  ];
}

/** Why there is no turn-back time; `null` when there is one, or when nobody has to come back. */
function turnBackGap(limits: TurnBackState, { crew, supplies }: Procedure): Message | null {
  const { turnBack, returnPlan, longestReturn } = limits;
  if (turnBack || crew.every(({ station }) => station !== "outside")) return null;
  if (!returnPlan) return message("gap/no-way-back");
  if (!longestReturn) return null;
  return message(supplies.length > 0 ? "gap/no-end-of-supplies" : "gap/nothing-runs-out");
}

/** The windows whose times are not known, by the reason why. */
function windowGaps({ ledger }: WalkState): readonly Message[] {
  const { procedure } = ledger.inForce.outline;
  const unknown = procedure.windows.filter(({ id }) => ledger.windows.get(id) === null);
  const without = { light: [] as string[], start: [] as string[] };
  for (const { id, label = id, spans } of unknown) {
    without[spans || ledger.light ? "start" : "light"].push(label);
  }
  return [
    ...(without.light.length > 0 ? [message("gap/no-light", { windows: without.light })] : []),
    ...(without.start.length > 0 ? [message("gap/windows-from-start", { windows: without.start })] : []),
  ];
}

const nameOf =
  ({ ledger }: WalkState) =>
  ({ supply }: TurnBackState["supplies"][number]): Message =>
    message("gap/supply-of", {
      crew: ledger.inForce.outline.crewMember(supply.crew)?.call ?? supply.crew,
      supply: supply.label ?? supply.id,
    });
