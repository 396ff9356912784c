import type { Band, LearnedStep } from "../../core/learn/index.ts";
import { offeredTime, offerMessage } from "../../core/learn/index.ts";
import type { Outline } from "../../core/procedure/index.ts";
import type { Duration, Instant, WalkId } from "../../core/units/index.ts";
import { inMinutes } from "../../core/units/index.ts";
import { inWords, words } from "../../words/index.ts";
import { callsOf } from "../parts/index.ts";
import { StepName } from "../texts/index.ts";
import { StepStrip } from "./step-strip.tsx";
import type { OpenWalk } from "./walk-marks.tsx";
import { WalkMarks } from "./walk-marks.tsx";

interface LearnedStepRowProps {
  readonly outline: Outline;
  readonly step: LearnedStep;
  readonly beganAt: ReadonlyMap<WalkId, Instant>;
  readonly isTaken: boolean;
  readonly onTake: (isTaken: boolean) => void;
  readonly onOpen: OpenWalk;
}

const ofMinutes = (minutes: number) => (minutes * 60_000) as Duration;
const stripBand = ({ p10, p50, p90 }: Band) => ({ from: p10, middle: p50, to: p90 });

/** One step: its band in the plan over that of the evidence, every walk, and what is offered ([LRN4]). */
export function LearnedStepRow({ outline, step, beganAt, isTaken, onTake, onOpen }: LearnedStepRowProps) {
  const { entry, planned, observations, band, plannedBand, isThin, offer, moved } = step;
  const hasEvidence = observations.length > 0;
  return (
    <li className="of-walks-row learned-step" data-offer={offer}>
      <div className="learned-name">
        <h3>
          <b>{entry.number}</b> <StepName outline={outline} step={entry.step} />
        </h3>
        <p className="hint">{callsOf(outline, entry.step.by)}</p>
      </div>
      <StepStrip
        likely={inMinutes(planned.likely)}
        planned={stripBand(plannedBand)}
        found={hasEvidence ? stripBand(band) : null}
        observations={observations}
      />
      <div className="learned-words">
        <p>{words("learn/planned", planned)}</p>
        {hasEvidence && (
          <p>
            {words("learn/expected", {
              from: ofMinutes(band.p10),
              middle: ofMinutes(band.p50),
              to: ofMinutes(band.p90),
            })}
          </p>
        )}
        {hasEvidence && (
          <p className="hint">
            {words(isThin ? "learn/weight-thin" : "learn/weight", { weight: step.weight })}
            {step.isRehearsedOnly && ` · ${words("learn/rehearsed-only")}`}
          </p>
        )}
        {offer !== "offered" && hasEvidence && <p>{inWords(offerMessage(step))}</p>}
        {offer === "offered" && (
          <label className="learned-take">
            <input
              type="checkbox"
              checked={isTaken}
              onChange={(event) => onTake(event.currentTarget.checked)}
            />
            <span>{words("learn/take", offeredTime(moved))}</span>
          </label>
        )}
      </div>
      {hasEvidence && (
        <WalkMarks step={entry.step.id} observations={observations} beganAt={beganAt} onOpen={onOpen} />
      )}
    </li>
  );
}
