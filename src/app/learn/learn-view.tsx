import { useState } from "react";
import type { LearnedStep } from "../../core/learn/index.ts";
import { offeredChange } from "../../core/learn/index.ts";
import type { Change, Outline } from "../../core/procedure/index.ts";
import type { StepId, WalkId } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { LearnedStepRow } from "./learned-step-row.tsx";
import { RenamedSteps } from "./renamed-steps.tsx";
import { StripLegend } from "./strip-legend.tsx";
import type { OpenWalk } from "./walk-marks.tsx";
import type { Renamed, WalksTold } from "./walks-request.ts";
import "./learn.css";

/** What somebody took over, to be saved. */
export interface TakenOver {
  readonly changes: readonly Change[];
  /** The walks that told of what is changed. */
  readonly walks: readonly WalkId[];
}

interface LearnViewProps {
  readonly outline: Outline;
  readonly told: WalksTold;
  /** The revision as which what is taken would be saved. */
  readonly revision: string;
  readonly renamed: Renamed;
  readonly onRenamed: (renamed: Renamed) => void;
  readonly onSave: (taken: TakenOver) => void;
  readonly onOpen: OpenWalk;
}

type Shown = "evidence" | "offered" | "all";
const SHOWN: readonly Shown[] = ["evidence", "offered", "all"];

/** What the walks on this device tell of how long the steps of a procedure take ([LRN4]). Nothing changes until it is saved. */
export function LearnView({ outline, told, revision, renamed, onRenamed, onSave, onOpen }: LearnViewProps) {
  const { learned, compared } = told;
  const [taken, setTaken] = useState<ReadonlySet<StepId>>(new Set());
  const [shown, setShown] = useState<Shown>(() =>
    learned.steps.some(({ offer }) => offer === "offered") ? "offered" : "evidence",
  );
  const live = compared.walks.filter(({ mode }) => mode === "live").length;
  if (compared.walks.length === 0) {
    return (
      <p role="status" className="page-message">
        {words("learn/no-walks")}
      </p>
    );
  }
  const beganAt = new Map(compared.walks.map(({ walk, began }) => [walk, began]));
  const isShown = ({ observations, offer }: LearnedStep) =>
    shown === "all" || (shown === "offered" ? offer === "offered" : observations.length > 0);
  const steps = learned.steps.filter(isShown);
  const chosen = learned.steps.filter(({ entry }) => taken.has(entry.step.id));
  const save = () =>
    onSave({
      changes: chosen.flatMap((step) => offeredChange(step) ?? []),
      walks: compared.walks.flatMap(({ walk }) =>
        chosen.some(({ observations }) => observations.some((one) => one.walk === walk)) ? [walk] : [],
      ),
    });
  return (
    <article className="of-walks learn">
      <p className="learn-from">
        {words("learn/told-by", { live, rehearsed: compared.walks.length - live })}
      </p>
      <LearningWords told={told} />
      {learned.inOneGo > 0 && <p className="hint">{words("learn/in-one-go", { count: learned.inOneGo })}</p>}
      {learned.unmatched.length > 0 && (
        <p className="hint">
          {words("learn/unmatched", {
            count: learned.unmatched.length,
            steps: [...new Set(learned.unmatched.map(({ entry }) => entry.step.id))],
          })}
        </p>
      )}
      <RenamedSteps outline={outline} unmatched={learned.unmatched} renamed={renamed} onRenamed={onRenamed} />
      <fieldset className="learn-shown">
        <legend className="heard-only">{words("learn/which")}</legend>
        {SHOWN.map((one) => (
          <button
            key={one}
            type="button"
            className="plain-button"
            aria-pressed={one === shown}
            onClick={() => setShown(one)}
          >
            {words(`learn/shown-${one}`, { count: learned.steps.filter(countedAs(one)).length })}
          </button>
        ))}
      </fieldset>
      <StripLegend hasPlan />
      <ul className="of-walks-rows learned-steps" aria-label={words("learn/steps")}>
        {steps.map((step) => (
          <LearnedStepRow
            key={step.entry.step.id}
            outline={outline}
            step={step}
            beganAt={beganAt}
            isTaken={taken.has(step.entry.step.id)}
            onTake={(isTaken) => {
              const next = new Set(taken);
              if (isTaken) next.add(step.entry.step.id);
              else next.delete(step.entry.step.id);
              setTaken(next);
            }}
            onOpen={onOpen}
          />
        ))}
      </ul>
      {steps.length === 0 && <p className="hint">{words("learn/none-shown")}</p>}
      <div className="learn-save">
        <p className="hint">{words("learn/how")}</p>
        <button type="button" className="main-button" disabled={chosen.length === 0} onClick={save}>
          {words("learn/save", { revision, count: chosen.length })}
        </button>
      </div>
      <p className="hint">{words("follow/advises")}</p>
    </article>
  );
}

const countedAs =
  (shown: Shown) =>
  ({ observations, offer }: LearnedStep): boolean =>
    shown === "all" || (shown === "offered" ? offer === "offered" : observations.length > 0);

/** What repeats of the rehearsal show, or that they show nothing. */
function LearningWords({ told }: { readonly told: WalksTold }) {
  const { learning } = told.learned;
  if (!learning) return null;
  if (!learning.isClaimed) return <p>{words("learn/no-learning", { walks: learning.walks })}</p>;
  const isShorter = learning.slope < 0;
  const percent = Math.abs(1 - learning.rate) * 100;
  return (
    <p>
      {words(isShorter ? "learn/learning-shorter" : "learn/learning-longer", {
        walks: learning.walks,
        percent: isShorter ? Math.floor(percent) : Math.ceil(percent),
      })}
    </p>
  );
}
