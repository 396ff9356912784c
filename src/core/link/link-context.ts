import { saidBy } from "../../words/index.ts";
import { waitAfter } from "./backoff.ts";
import type { Latch, LinkTime } from "./latch.ts";
import { OVER } from "./latch.ts";
import type { Direction, LinkReport } from "./link-report.ts";
import type { LinkSettings } from "./link-settings.ts";
import type { FarSide, NearSide } from "./link-sides.ts";
import { TurnedAwayError, UnreachableError } from "./link-sides.ts";

/** What both directions of a link share. */
export interface LinkContext {
  readonly near: NearSide;
  readonly far: FarSide;
  readonly time: LinkTime;
  readonly settings: LinkSettings;
  /** Is aborted when the link ends for good. */
  readonly stop: AbortController;
  readonly report: LinkReport;
}

/** The other side may ask to be left alone for so long at most, in ms. */
const LONGEST_RETRY_AFTER = 600_000;

/**
 * Records why an attempt failed. Returns whether to try again: false once the link is stopped, or once the other side has
 * turned this one away, which ends the link.
 */
export function survives({ stop, report }: LinkContext, error: unknown, direction: Direction): boolean {
  if (stop.signal.aborted) return false;
  const words = saidBy(error);
  if (error instanceof TurnedAwayError) {
    report.set({ kind: "ended", words });
    stop.abort(OVER);
    return false;
  }
  if (error instanceof UnreachableError) report.set({ words });
  else report.setTrouble(direction, words);
  return true;
}

/** How long an error says that the other side wants to be left alone, in ms; `null` when it does not say. */
export function retryAfterSaidBy(error: unknown): number | null {
  return error instanceof UnreachableError ? error.retryAfter : null;
}

/** Waits after so many failures in a row; resolves with whether the latch was raised, meaning a retry may succeed. */
export function sitOut(
  { time, settings, stop }: LinkContext,
  hope: Latch,
  failures: number,
  retryAfter: number | null,
): Promise<boolean> {
  const own = waitAfter(failures, time.random(), settings.backoff);
  const asked = Math.min(retryAfter ?? 0, LONGEST_RETRY_AFTER);
  return hope.wait(Math.max(own, asked), stop.signal, time);
}
