import { useState } from "react";
import { writeLines } from "../../core/log/index.ts";
import type { Instant } from "../../core/units/index.ts";
import type { Folded, WalkState } from "../../core/walk/index.ts";
import { progressOf } from "../../core/walk/index.ts";
import type { FitSubject, OnAmend } from "../fit/index.ts";
import { FitPanel } from "../fit/index.ts";

interface FitsPanelProps {
  readonly state: WalkState;
  readonly folded: Folded;
  readonly now: Instant;
  /** Opens an amendment that makes a plan of a set; `null` where the plan may not be amended. */
  readonly onAmend: OnAmend | null;
  readonly onClose: () => void;
}

/** What still fits in the walk, from the moment at which the panel was opened until it is asked again. */
export function FitsPanel({ state: { ledger }, folded, now, onAmend, onClose }: FitsPanelProps) {
  const ask = (): FitSubject => ({ kind: "walk", lines: writeLines(folded.entries), at: now });
  const [subject, setSubject] = useState(ask);
  const { outline } = ledger.inForce;
  const essential = outline.procedure.tasks.filter(
    ({ priority, closeout, steps }) =>
      priority === "essential" &&
      !closeout &&
      steps.some(({ id }) => progressOf(ledger, id).status === "open"),
  );
  return (
    <FitPanel
      outline={outline}
      subject={subject}
      essential={essential}
      onAgain={() => setSubject(ask())}
      onAmend={onAmend}
      onClose={onClose}
    />
  );
}
