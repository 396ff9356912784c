import { useState } from "react";
import { writeLines } from "../../core/log/index.ts";
import type { Outline } from "../../core/procedure/index.ts";
import type { Instant } from "../../core/units/index.ts";
import type { Folded, WalkState } from "../../core/walk/index.ts";
import type { FitSubject } from "../fit/index.ts";

/** A walk as it was when something was asked of it. */
export interface WalkSubject {
  readonly subject: FitSubject;
  /** The plan that was in force. */
  readonly outline: Outline;
  /** True when something was entered since. */
  readonly hasMovedOn: boolean;
  /** Takes the walk as it is now. */
  readonly onAgain: () => void;
}

/** Keeps the walk as it is at the first drawing, until it is asked again. */
export function useWalkSubject({ ledger }: WalkState, { entries }: Folded, now: Instant): WalkSubject {
  const ask = () => ({
    subject: { kind: "walk", lines: writeLines(entries), at: now } as const,
    outline: ledger.inForce.outline,
    count: entries.length,
  });
  const [{ subject, outline, count }, setAsked] = useState(ask);
  return { subject, outline, hasMovedOn: entries.length !== count, onAgain: () => setAsked(ask()) };
}
