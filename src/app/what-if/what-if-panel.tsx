import { useDeferredValue, useId, useMemo } from "react";
import type { Plan, Risk } from "../../core/plan/index.ts";
import type { Finding, Outline, OutlineStep } from "../../core/procedure/index.ts";
import type { CrewId, Duration } from "../../core/units/index.ts";
import { minus } from "../../core/units/index.ts";
import type { Message } from "../../words/index.ts";
import { inWords, message, words } from "../../words/index.ts";
import { callsOf, Worded } from "../parts/index.ts";
import { RearrangeFields } from "./rearrange-fields.tsx";
import { rearrangedWords } from "./rearranged-words.ts";
import type { Trial, TrialResult } from "./trial.ts";
import { AS_WRITTEN, findingsOf, isEmpty, NO_TRIAL } from "./trial.ts";
import "./what-if.css";

interface WhatIfPanelProps {
  /** The outline of the procedure in the file. */
  readonly outline: Outline;
  readonly plan: Plan;
  readonly findings: readonly Finding[];
  readonly odds: Risk | null;
  readonly trial: Trial;
  readonly result: TrialResult;
  readonly triedOdds: Risk | null;
  /** The step that the reader chose; `null` when there is none. */
  readonly chosen: OutlineStep | null;
  /** The revision as which the trial would be saved. */
  readonly revision: string;
  readonly onTrial: (trial: Trial) => void;
  readonly onSave: () => void;
}

/**
 * Shows the effect of a longer step, of other performers, and of tasks left out or rearranged. The file stays as it is until the
 * change is saved as a revision of its own.
 */
export function WhatIfPanel(props: WhatIfPanelProps) {
  const { outline, plan, odds, trial, result, triedOdds, chosen, revision, onTrial, onSave } = props;
  const empty = isEmpty(trial);
  const { tasks } = outline.procedure;
  return (
    <section className="what-if" aria-labelledby="what-if">
      <h2 id="what-if">{words("what-if/title")}</h2>
      <Outcome plan={plan} odds={odds} result={result} triedOdds={triedOdds} empty={empty} />
      <div className="what-if-parts">
        {chosen ? (
          <ChosenStep outline={outline} plan={plan} entry={chosen} trial={trial} onTrial={onTrial} />
        ) : (
          <p className="hint">{words("what-if/choose")}</p>
        )}
        <fieldset className="what-if-tasks">
          <legend>{words("what-if/tasks")}</legend>
          {tasks.map((task, index) => (
            <label key={task.id}>
              <input
                type="checkbox"
                checked={
                  task.priority === "essential" ? !trial.dropped.has(task.id) : trial.broughtIn.has(task.id)
                }
                onChange={() =>
                  onTrial(
                    task.priority === "essential"
                      ? { ...trial, dropped: toggled(trial.dropped, task.id) }
                      : { ...trial, broughtIn: toggled(trial.broughtIn, task.id) },
                  )
                }
              />
              <span>
                {task.priority === "essential"
                  ? `${index + 1} ${task.title}`
                  : words("what-if/get-ahead", { number: index + 1, task: task.title })}
              </span>
            </label>
          ))}
        </fieldset>
        <Pace trial={trial} onTrial={onTrial} />
        <Decisions outline={outline} trial={trial} onTrial={onTrial} />
        <RearrangeFields outline={outline} trial={trial} onTrial={onTrial} />
      </div>
      {!empty && <Changed {...props} />}
      <div className="panel-acts">
        <button type="button" className="plain-button" disabled={empty} onClick={() => onTrial(NO_TRIAL)}>
          {words("what-if/back")}
        </button>
        <button type="button" className="main-button" disabled={empty || !result.file} onClick={onSave}>
          {words("what-if/save", { revision })}
        </button>
      </div>
    </section>
  );
}

interface TriedProps {
  readonly trial: Trial;
  readonly onTrial: (trial: Trial) => void;
}

/** How much slower or faster everybody is. */
function Pace({ trial, onTrial }: TriedProps) {
  const id = useId();
  return (
    <div>
      <label htmlFor={id}>{words("what-if/pace", { pace: trial.pace })}</label>
      <input
        id={id}
        type="range"
        min={50}
        max={200}
        step={5}
        value={trial.pace}
        onChange={(event) => onTrial({ ...trial, pace: Number(event.target.value) })}
      />
    </div>
  );
}

/** How each decision comes out: as the file expects unless chosen otherwise. */
function Decisions({ outline, trial, onTrial }: TriedProps & { readonly outline: Outline }) {
  const id = useId();
  return outline.decisions.map(({ decision, madeBy }) => {
    const outcome = trial.outcomes.get(decision.id) ?? decision.expect;
    const choose = (next: string) => {
      const outcomes = new Map(trial.outcomes);
      if (next === decision.expect) outcomes.delete(decision.id);
      else outcomes.set(decision.id, next);
      onTrial({ ...trial, outcomes });
    };
    return (
      <fieldset key={decision.id} className="what-if-people">
        <legend>
          {madeBy.number} {decision.ask}
        </legend>
        {decision.outcomes.map((one) => (
          <label key={one}>
            <input
              type="radio"
              name={`${id}-${decision.id}`}
              checked={one === outcome}
              onChange={() => choose(one)}
            />
            <span>{one}</span>
          </label>
        ))}
      </fieldset>
    );
  });
}

function toggled<Id>(set: ReadonlySet<Id>, id: Id): ReadonlySet<Id> {
  const next = new Set(set);
  if (!next.delete(id)) next.add(id);
  return next;
}

const percent = (odds: Risk | null) =>
  odds?.withinLimit == null ? "" : ` · ${words("what-if/within-limit", { share: odds.withinLimit })}`;

const marginWords = (margin: Duration | null) =>
  margin === null ? "" : ` · ${words(margin < 0 ? "what-if/over" : "what-if/margin", { time: margin })}`;

interface OutcomeProps {
  readonly plan: Plan;
  readonly odds: Risk | null;
  readonly result: TrialResult;
  readonly triedOdds: Risk | null;
  readonly empty: boolean;
}

/** Finish, margin and probability, for the file and for the trial. */
function Outcome({ plan, odds, result, triedOdds, empty }: OutcomeProps) {
  const finish = plan.timeline?.course.finish ?? null;
  const next = result.plan?.timeline?.course.finish ?? null;
  return (
    <div className="what-if-outcome" role="status">
      <p>
        <Worded
          message={finish === null ? message("what-if/in-file-none") : message("what-if/in-file", { finish })}
        />
        {marginWords(plan.margin)}
        {percent(odds)}
      </p>
      {!empty && (
        <p>
          <Worded message={triedMessage(finish, next)} />
          {marginWords(result.plan?.margin ?? null)}
          {percent(triedOdds)}
        </p>
      )}
    </div>
  );
}

/** When the tried plan finishes, and how far that is from the finish in the file. */
function triedMessage(finish: Duration | null, next: Duration | null): Message {
  if (next === null) return message("what-if/tried-none");
  if (finish === null) return message("what-if/tried", { finish: next });
  const by = minus(next, finish);
  if (by === 0) return message("what-if/tried-same", { finish: next });
  return message(by > 0 ? "what-if/tried-later" : "what-if/tried-earlier", { finish: next, by });
}

/** The longest duration that can be tried, as a multiple of the likely one in the file. */
const FURTHEST = 3;
const STEP = 30_000;

interface ChosenStepProps {
  readonly outline: Outline;
  readonly plan: Plan;
  readonly entry: OutlineStep;
  readonly trial: Trial;
  readonly onTrial: (trial: Trial) => void;
}

function ChosenStep({ outline, plan, entry, trial, onTrial }: ChosenStepProps) {
  const { step } = entry;
  const id = useId();
  const likely = plan.whereabouts.times[entry.index]?.likely ?? (0 as Duration);
  const time = trial.times.get(step.id) ?? likely;
  const by = trial.performers.get(step.id) ?? step.by;
  const station = outline.crew[entry.performers[0] ?? -1]?.station;
  const others = outline.crew.filter((member) => member.station === station);
  const setTime = (next: Duration) => {
    const times = new Map(trial.times);
    if (next === likely) times.delete(step.id);
    else times.set(step.id, next);
    onTrial({ ...trial, times });
  };
  const setPerformer = (crew: CrewId) => {
    const performers = new Map(trial.performers);
    if (crew === step.by[0]) performers.delete(step.id);
    else performers.set(step.id, [crew]);
    onTrial({ ...trial, performers });
  };
  return (
    <div className="what-if-step">
      <h3>
        {entry.number} {callsOf(outline, by)}: {step.do}
      </h3>
      <label htmlFor={id}>
        <Worded
          message={
            time === likely
              ? message("what-if/takes", { time })
              : message("what-if/takes-not-as-file", { time, likely })
          }
        />
      </label>
      <input
        id={id}
        type="range"
        min={0}
        max={Math.max(Math.ceil((likely * FURTHEST) / STEP) * STEP, 10 * 60_000)}
        step={STEP}
        value={time}
        aria-valuetext={words("figures/length", { time })}
        onChange={(event) => setTime(Number(event.target.value) as Duration)}
      />
      {step.by.length === 1 && others.length > 1 && (
        <fieldset className="what-if-people">
          <legend>{words("what-if/done-by")}</legend>
          {others.map((member) => (
            <label key={member.id}>
              <input
                type="radio"
                name={`${id}-by`}
                checked={by[0] === member.id}
                onChange={() => setPerformer(member.id)}
              />
              <span>{member.call}</span>
            </label>
          ))}
        </fieldset>
      )}
    </div>
  );
}

/** What is tried, and the findings that it adds and removes. */
function Changed({ outline, findings, trial, result }: WhatIfPanelProps) {
  const tried = [
    ...[...trial.times].map(([step, time]) =>
      words("what-if/step-takes", { step: String(outline.step(step)?.number), time }),
    ),
    ...[...trial.performers].map(([step, by]) =>
      words("what-if/step-done-by", {
        step: String(outline.step(step)?.number),
        crew: callsOf(outline, by),
      }),
    ),
    ...outline.procedure.tasks
      .filter(({ id }) => trial.dropped.has(id))
      .map(({ title }) => words("what-if/task-left-out", { task: title })),
    ...outline.procedure.tasks
      .filter(({ id }) => trial.broughtIn.has(id))
      .map(({ title }) => words("what-if/task-brought-in", { task: title })),
    ...rearrangedWords(trial, outline),
    ...[...trial.outcomes].map(([decision, outcome]) => words("what-if/decided", { decision, outcome })),
    ...(trial.pace === AS_WRITTEN ? [] : [words("what-if/pace", { pace: trial.pace })]),
  ];
  // The checker examines every scenario, so its findings may lag behind while a slider is dragged.
  const settled = useDeferredValue(result);
  const change = useMemo(
    () =>
      settled.outline
        ? findingsOf(findings, settled.outline)
        : { new: [...settled.problems], gone: [], same: [] },
    [settled, findings],
  );
  return (
    <div className="what-if-changes">
      <p>{words("what-if/changes", { changes: tried.join(words("figures/between-clauses")) })}</p>
      {change.new.length === 0 && change.gone.length === 0 && (
        <p className="hint">{words("what-if/no-finding-changes")}</p>
      )}
      {change.new.length > 0 && (
        <>
          <h3>{words("what-if/new-findings")}</h3>
          <ul className="plain-list">
            {change.new.map(({ code, pointer, message: said }) => (
              <li key={`${code} ${pointer} ${inWords(said)}`}>{inWords(said)}</li>
            ))}
          </ul>
        </>
      )}
      {change.gone.length > 0 && (
        <>
          <h3>{words("what-if/findings-gone")}</h3>
          <ul className="plain-list">
            {change.gone.map(({ code, pointer, message: said }) => (
              <li key={`${code} ${pointer} ${inWords(said)}`}>{inWords(said)}</li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}
