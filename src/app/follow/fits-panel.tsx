import type { Instant } from "../../core/units/index.ts";
import type { Folded, WalkState } from "../../core/walk/index.ts";
import { progressOf } from "../../core/walk/index.ts";
import type { OnAmend } from "../fit/index.ts";
import { FitPanel } from "../fit/index.ts";
import { useWalkSubject } from "./use-walk-subject.ts";

interface FitsPanelProps {
  readonly state: WalkState;
  readonly folded: Folded;
  readonly now: Instant;
  /** Opens an amendment that makes a plan of a set; `null` where the plan may not be amended. */
  readonly onAmend: OnAmend | null;
  /** Goes on to the best split of the rest. */
  readonly onSplit: () => void;
  readonly onClose: () => void;
}

/** What still fits in the walk, from the moment at which the panel was opened until it is asked again. */
export function FitsPanel({ state, folded, now, onAmend, onSplit, onClose }: FitsPanelProps) {
  const { ledger } = state;
  const { subject, onAgain } = useWalkSubject(state, folded, now);
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
      onAgain={onAgain}
      onSplit={onSplit}
      onAmend={onAmend}
      onClose={onClose}
    />
  );
}
