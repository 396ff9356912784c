import type { ReactNode } from "react";
import { useMemo, useState } from "react";
import { applyChanges } from "../../core/changes/index.ts";
import type { Plan, PlanOptions } from "../../core/plan/index.ts";
import { riskModelOf } from "../../core/plan/index.ts";
import type { Finding, Outline, OutlineStep, ProcedureFile } from "../../core/procedure/index.ts";
import { layoutChanges } from "../../core/worksite/index.ts";
import { useRisk } from "../risk/index.ts";
import { planIn } from "../texts/index.ts";
import { TimelineView } from "../timeline/index.ts";
import type { Trial } from "./trial.ts";
import { isEmpty, NO_TRIAL, tried } from "./trial.ts";
import { WhatIfPanel } from "./what-if-panel.tsx";

interface WhatIfProps {
  readonly file: ProcedureFile;
  readonly plan: Plan;
  /** The start and the light that the plan was made with. */
  readonly options: PlanOptions;
  readonly findings: readonly Finding[];
  /** Gives an outline with the texts that the reader wants. What is changed and saved is the file as it was written. */
  readonly show: (outline: Outline) => Outline;
  /** Shown between the timeline and the panel. */
  readonly children: ReactNode;
  /** The revision as which a trial would be saved. */
  readonly revision: string;
  /** Saves a changed procedure on the shelf as that revision. */
  readonly onSave: (file: ProcedureFile) => void;
}

/** The model to sample for a plan; `null` without a timeline. */
function modelOf({ timeline }: Plan) {
  return timeline && riskModelOf(timeline.course);
}

/** The timeline of a plan with its risk, and a panel for trying out changes to it. */
export function WhatIf({ file, plan, options, findings, show, children, revision, onSave }: WhatIfProps) {
  const { outline } = plan;
  const [trial, setTrial] = useState<Trial>(NO_TRIAL);
  const [chosen, setChosen] = useState<OutlineStep | null>(null);
  const result = useMemo(() => tried(file, outline, trial, options), [file, outline, trial, options]);
  const odds = useRisk(useMemo(() => modelOf(plan), [plan]));
  const shown = isEmpty(trial) ? plan : result.plan;
  const inTexts = useMemo(() => shown && planIn(shown, show(shown.outline)), [shown, show]);
  const texts = show(outline);
  const triedOdds = useRisk(useMemo(() => (shown && shown !== plan ? modelOf(shown) : null), [shown, plan]));
  const save = () => {
    if (result.file) onSave(result.file);
  };
  const keepLayout = () => {
    const kept = applyChanges(file, layoutChanges(outline.procedure));
    if (kept.file) onSave(kept.file);
  };
  return (
    <>
      {inTexts && (
        <TimelineView
          outline={inTexts.outline}
          plan={inTexts}
          state={null}
          risk={shown === plan ? odds : triedOdds}
          onChoose={setChosen}
          {...(shown === plan ? { onKeepLayout: keepLayout } : {})}
        />
      )}
      {children}
      <WhatIfPanel
        outline={texts}
        plan={plan}
        findings={findings}
        odds={odds}
        trial={trial}
        result={result}
        triedOdds={triedOdds}
        chosen={chosen === null ? null : texts.step(chosen.step.id)}
        revision={revision}
        onTrial={setTrial}
        onSave={save}
      />
    </>
  );
}
