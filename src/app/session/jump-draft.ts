import type { Draft } from "../../core/log/index.ts";
import { inSeconds } from "../../core/units/index.ts";
import type { ClockJump } from "../../io/clock/index.ts";

/** A jump of at most this is left alone, in ms: clocks are set right by little all the time. */
const TOLERATED = 2000;

/**
 * The entry by which a jump of this device's clock is logged ([OFF6]). Returns `null` for a jump of at most 2 s, and for
 * one that may be a sleep of the device, in which time really passed.
 */
export function jumpDraft({ at, by, mayBeSleep }: ClockJump, actor: string): Draft | null {
  if (mayBeSleep || Math.abs(by) <= TOLERATED) return null;
  return { name: "clock.jumped", data: { by: inSeconds(by) }, at, actor };
}
