import type { Message } from "../../words/index.ts";
import type { Outlook, WindowMargin } from "../plan/index.ts";
import type { Supply } from "../procedure/index.ts";
import type { Duration, StepId, WindowId } from "../units/index.ts";
import type { AmendedStep, Ledger } from "../walk/index.ts";
import type { FindingsEffect } from "./findings-effect.ts";
import type { Sides } from "./sides.ts";

/** What becomes of a window that a step to come lies in. */
export interface WindowEffect {
  readonly window: WindowId;
  /** The margin of the step that is tightest in it; `null` on the side on which no step to come lies in it. */
  readonly margin: Sides<WindowMargin | null>;
}

/** What becomes of a supply. */
export interface SupplyEffect {
  /** As in the procedure after. */
  readonly supply: Supply;
  /**
   * How long before its redline the last step of its owner is done, below zero when after it; `null` on the side on which that
   * cannot be told, or the redline is not met.
   */
  readonly left: Sides<Duration | null>;
}

/** What an amendment would come to from the present state of a walk ([AMD3]), and what the walk comes to without it. Times are PET. */
export interface AmendmentEffect {
  /** The walk as it would be, to be shown before it is entered. */
  readonly ledger: Ledger;
  /** The steps that are otherwise with it. */
  readonly steps: readonly AmendedStep[];
  /** Finish and margin: as the plan of record has them, by likely times, and as the samples say. */
  readonly outlook: Sides<Outlook>;
  /** The share of samples within the elapsed limit; `null` without a limit, and unless it is asked for thoroughly. */
  readonly withinLimit: Sides<number | null>;
  /** The step that fits its windows no more, so that there is no forecast; `null` for none. */
  readonly unfit: Sides<StepId | null>;
  /** How long the return takes if the work is broken off now; `null` where that cannot be told. */
  readonly home: Sides<Duration | null>;
  /** The latest PET to turn back; `null` where nothing sets one. */
  readonly turnBack: Sides<Duration | null>;
  /** The windows in which steps to come lie, on either side, in the order of the procedure. */
  readonly windows: readonly WindowEffect[];
  readonly supplies: readonly SupplyEffect[];
  /** The findings of the checker that are new, gone and the same, and the bounds that the forecast breaks. */
  readonly findings: FindingsEffect;
  /**
   * What is grave and was not so before, a sentence each: findings that are errors, and a forecast over the limit, without a way
   * home or beyond a redline. While there is any, the amendment needs a second confirmation with a reason.
   */
  readonly grave: readonly Message[];
}

/** What an amendment would come to, or the reason why it would have no effect. */
export type JudgedAmendment =
  | { readonly effect: AmendmentEffect; readonly refusal: null }
  | { readonly effect: null; readonly refusal: Message };

/** How the effect of an amendment is asked for. */
export interface AmendmentEffectOptions {
  /**
   * True to sample durations on both sides ([FOR2]), and to plan the return from every step for what the checker finds of it.
   * That takes several times as long as all the rest, and belongs to what is shown before an amendment is entered.
   */
  readonly thorough: boolean;
}
