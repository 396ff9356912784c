import { useState } from "react";
import type { Weighed } from "../../core/learn/index.ts";
import type { Duration, Instant, StepId, WalkId } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";

/** Opens the review of a walk at a step. */
export type OpenWalk = (walk: WalkId, step: StepId) => void;

interface WalkMarksProps {
  readonly step: StepId;
  readonly observations: readonly Weighed[];
  readonly beganAt: ReadonlyMap<WalkId, Instant>;
  readonly onOpen: OpenWalk;
}

/** Every walk that tells of a step, in words, each leading to its review at that step. */
export function WalkMarks({ step, observations, beganAt, onOpen }: WalkMarksProps) {
  // A long procedure has thousands of them, of which few are looked at.
  const [isOpen, setOpen] = useState(false);
  return (
    <details className="walk-marks" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary className="plain-button">{words("learn/walks", { count: observations.length })}</summary>
      <ul className="plain-list">
        {(isOpen ? observations : []).map((one) => (
          <li key={one.walk}>
            <button type="button" className="plain-button" onClick={() => onOpen(one.walk, step)}>
              {words(one.isBrokenOff ? "learn/walk-broken-off" : "learn/walk-took", {
                time: (one.minutes * 60_000) as Duration,
                mode: words(`learn/mode-${one.mode}`),
                at: beganAt.get(one.walk) ?? (0 as Instant),
              })}
            </button>
            <span>{detailsOf(one).join(" · ")}</span>
          </li>
        ))}
      </ul>
    </details>
  );
}

function detailsOf(one: Weighed): readonly string[] {
  return [
    words("learn/weighs", { weight: one.weight }),
    words(one.isStartSaid ? "learn/start-said" : "learn/start-inferred"),
    ...(one.isReopened ? [words("learn/was-reopened")] : []),
    ...(one.isHeld ? [words("learn/was-held")] : []),
    ...(one.isOutlier ? [words("learn/far-off")] : []),
  ];
}
