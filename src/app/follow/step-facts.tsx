import { windowLabel } from "../../core/course/index.ts";
import type { OutlineStep, Step } from "../../core/procedure/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { between, clockText } from "../../core/units/index.ts";
import type { StepProgress, WalkState } from "../../core/walk/index.ts";
import { skipReason } from "../../core/walk/index.ts";
import { inWords, words } from "../../words/index.ts";
import { callsOf, Fact, limitWords, locationWords, spanText } from "../parts/index.ts";
import { actorsText } from "./actors-text.ts";

interface StepFactsProps {
  readonly entry: OutlineStep;
  readonly state: WalkState;
}

/** The facts of one step: its times, what must come before it, what it moves and records, and who confirms it. */
export function StepFacts({ entry: { step }, state }: StepFactsProps) {
  const { ledger, plan } = state;
  const { outline } = ledger.inForce;
  const progress = ledger.steps.get(step.id);
  const planned = plan.timeline?.course.steps.get(step.id);
  return (
    <dl className="facts">
      {planned && <Fact name={words("panel/planned")}>{spanText(planned.start, planned.finish)}</Fact>}
      <EndFact state={state} progress={progress} />
      {step.after.length > 0 && (
        <Fact name={words("panel/after")}>
          {step.after
            .map(({ step: id, lag }) => afterWords(outline.step(id)?.number ?? id, lag))
            .join(words("figures/between"))}
        </Fact>
      )}
      {step.within.length > 0 && (
        <Fact name={words("panel/only-in")}>
          {words("panel/windows", {
            windows: step.within.map((id) => windowLabel(outline, id)),
          })}
        </Fact>
      )}
      {step.moves.map(({ item, to }) => (
        <Fact key={item} name={words("panel/moves")}>
          {outline.item(item)?.label ?? item} → {locationWords(outline, to)}
        </Fact>
      ))}
      {step.anchor !== undefined && (
        <Fact name={words("panel/tether-to")}>{outline.place(step.anchor)?.label ?? step.anchor}</Fact>
      )}
      <RecordFacts step={step} progress={progress} />
      {step.confirm && (
        <Fact name={words("panel/confirms", { crew: callsOf(outline, [step.confirm.by]) })}>
          {step.confirm.text} · {words(progress?.confirmed ? "panel/confirmed" : "panel/not-yet")}
        </Fact>
      )}
    </dl>
  );
}

interface EndFactProps {
  readonly state: WalkState;
  readonly progress: StepProgress | undefined;
}

/** When a step was done or skipped, by whom, and why. Nothing is drawn while the step is open. */
function EndFact({ state: { ledger }, progress }: EndFactProps) {
  const { crew } = ledger.inForce.outline;
  if (progress?.finish == null || ledger.petZero === null) return null;
  const said = inWords(skipReason(progress) || (progress.reopened.at(-1)?.reason ?? ""));
  const pet = between(ledger.petZero, progress.finish);
  return (
    <Fact name={words(progress.status === "done" ? "panel/done" : "panel/skipped")}>
      {progress.completedBy?.actor
        ? words("panel/done-at-by", { pet, who: actorsText([progress.completedBy], crew) })
        : clockText(pet)}
      {progress.alsoDone.length > 0 &&
        ` · ${words("panel/confirmed-by", { who: actorsText(progress.alsoDone, crew) })}`}
      {said && ` · ${said}`}
    </Fact>
  );
}

interface RecordFactsProps {
  readonly step: Step;
  readonly progress: StepProgress | undefined;
}

/** The values that a step records, as far as they have been taken, with their limits. */
function RecordFacts({ step, progress }: RecordFactsProps) {
  return (
    <>
      {step.records.map((record) => (
        <Fact key={record.id} name={record.label ?? record.id}>
          {progress?.records
            .filter(({ record: of }) => of === record.id)
            .map(({ value, outOfRange }) =>
              words(outOfRange ? "panel/outside-limits" : "panel/value", { value }),
            )
            .join(words("figures/between")) || words("panel/not-recorded")}
          {limitWords(record) && ` · ${words("panel/allowed", { limits: limitWords(record) })}`}
        </Fact>
      ))}
    </>
  );
}

const afterWords = (step: string, lag: Duration) =>
  lag > 0 ? words("panel/after-lag", { step, lag: Math.round(lag / 60_000) }) : step;
