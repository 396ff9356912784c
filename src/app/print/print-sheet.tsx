import { Fragment, type ReactNode, useMemo, useState } from "react";
import type { Plan } from "../../core/plan/index.ts";
import type { Finding, Outline, Task } from "../../core/procedure/index.ts";
import type { Instant, StepId } from "../../core/units/index.ts";
import type { WalkState } from "../../core/walk/index.ts";
import { inMarkedWords, message, words } from "../../words/index.ts";
import { spanText } from "../parts/index.ts";
import { TextInLanguage } from "../texts/index.ts";
import { FrontMatter } from "./front-matter.tsx";
import type { PrintedPlan } from "./printed-plan.ts";
import { printedPlanOf } from "./printed-plan.ts";
import { StepRow } from "./step-row.tsx";
import { stepStandings } from "./step-standing.ts";
import { TaskTable } from "./task-table.tsx";
import "./print.css";

/** A walk that is printed as it stands, and the device from whose log. */
export interface PrintedWalk {
  readonly state: WalkState;
  readonly device: string;
}

export interface PrintSheetProps {
  readonly outline: Outline;
  /** The plan of the procedure; of a walk the plan of record, in whose place the plan in force is printed. */
  readonly plan: Plan;
  /** The checker's findings, listed on the first page. */
  readonly findings?: readonly Finding[];
  /** When the sheet is printed; the moment it is opened unless given. */
  readonly printedAt?: Instant;
  /** The walk as it stands, to go on with on paper ([REV5]); without one the sheet is empty. */
  readonly walk?: PrintedWalk | null;
  /** How steps differ from another revision, in words: each has a bar in the margin. None unless given. */
  readonly changed?: ReadonlyMap<StepId, string>;
  /** What was taken out since another revision, drawn where it stood: behind a step, or at the beginning of a task. */
  readonly dropped?: (place: { readonly step: StepId } | { readonly firstOf: Task["id"] }) => ReactNode;
  /** Stands behind the identity of the document. */
  readonly children?: ReactNode;
}

const NONE: ReadonlyMap<StepId, string> = new Map();

/**
 * A procedure as a printed document, the backup on paper, with the words and figures of the screen. It must be outside
 * Ionic's pages, so that the document itself scrolls and prints in full.
 */
export function PrintSheet(props: PrintSheetProps) {
  const { outline, plan, findings = [], printedAt, walk = null, changed = NONE, dropped, children } = props;
  const { procedure } = outline;
  const [opened] = useState(() => Date.now() as Instant);
  const at = printedAt ?? opened;
  const { id, title } = procedure;
  const printed = useMemo(() => printedPlanOf(plan, walk?.state ?? null), [plan, walk]);
  const standings = useMemo(() => (walk ? stepStandings(walk.state) : null), [walk]);
  const revision = procedure.revision
    ? words("print/revision", { revision: procedure.revision })
    : words("print/no-revision");
  return (
    <main className="print-sheet">
      <style>{pageFoot(words("print/foot", { id, revision, at }))}</style>
      <p className="print-tools">
        <button type="button" className="main-button" onClick={() => window.print()}>
          {words("print/print")}
        </button>
      </p>
      <header>
        <p className="print-kind">{words("print/kind")}</p>
        <h1>
          <TextInLanguage list="head" id={"."} field="title">
            {title}
          </TextInLanguage>
        </h1>
        <p className="print-identity">
          <b>{id}</b> · {revision}
          {procedure.setting && ` · ${words(`print/setting-${procedure.setting}`)}`} ·{" "}
          {words("print/printed", { at })}
          {plan.start !== null && ` · ${words("print/planned-from", { at: plan.start })}`}
        </p>
        {walk && <p className="print-standing">{standingWords(walk, at)}</p>}
        {procedure.summary && (
          <p>
            <TextInLanguage list="head" id={"."} field="summary">
              {procedure.summary}
            </TextInLanguage>
          </p>
        )}
      </header>
      {children}
      <FrontMatter outline={outline} plan={printed} findings={findings} state={walk?.state ?? null} />
      <section className="print-steps">
        <h2>{words("print/steps")}</h2>
        <p>{words("print/steps-how")}</p>
        {procedure.tasks.map((task, index) => (
          <TaskTable
            key={task.id}
            title={
              <>
                {index + 1}{" "}
                <TextInLanguage list="tasks" id={task.id} field="title">
                  {task.title}
                </TextInLanguage>
              </>
            }
            remark={taskRemark(outline, printed, task)}
          >
            {dropped?.({ firstOf: task.id })}
            {outline.steps
              .filter((entry) => entry.task === task)
              .map((entry) => (
                <Fragment key={entry.step.id}>
                  <StepRow
                    outline={outline}
                    step={entry.step}
                    number={entry.number}
                    entry={entry}
                    planned={printed.course?.steps.get(entry.step.id) ?? null}
                    standing={standings?.get(entry.step.id) ?? null}
                    changed={changed.get(entry.step.id) ?? null}
                  />
                  {dropped?.({ step: entry.step.id })}
                </Fragment>
              ))}
          </TaskTable>
        ))}
      </section>
      {procedure.contingencies.length > 0 && (
        <section className="print-steps print-contingencies">
          <h2>{words("print/contingencies")}</h2>
          {procedure.contingencies.map((contingency, index) => {
            const letter = `C${index + 1}`;
            return contingency.tasks.map((task, taskIndex) => (
              <TaskTable
                key={`${contingency.id} ${task.id}`}
                title={
                  <>
                    {letter}{" "}
                    <TextInLanguage list="contingencies" id={contingency.id} field="title">
                      {contingency.title}
                    </TextInLanguage>
                  </>
                }
                remark={
                  contingency.when === undefined
                    ? task.title
                    : words("print/contingency-when", { task: task.title, when: contingency.when })
                }
              >
                {dropped?.({ firstOf: task.id })}
                {task.steps.map((step, stepIndex) => (
                  <Fragment key={step.id}>
                    <StepRow
                      outline={outline}
                      step={step}
                      number={`${letter}.${taskIndex + 1}.${stepIndex + 1}`}
                      entry={null}
                      planned={null}
                      changed={changed.get(step.id) ?? null}
                    />
                    {dropped?.({ step: step.id })}
                  </Fragment>
                ))}
              </TaskTable>
            ));
          })}
        </section>
      )}
      <footer>
        <p>{words("print/advises")} </p>
        <p>{words("print/check-revision", { title, id, revision, at })} </p>
      </footer>
    </main>
  );
}

/** From which walk, at what time and by whose log the sheet was filled in. */
function standingWords({ state: { ledger, pet }, device }: PrintedWalk, at: Instant): string {
  const told = { walk: ledger.opened.walk, device, at };
  return pet === null ? words("print/stands-not-started", told) : words("print/stands", { ...told, pet });
}

function taskRemark(outline: Outline, { course }: PrintedPlan, task: Task): string {
  const own = outline.steps.filter((entry) => entry.task === task);
  const planned = own.flatMap(({ step }) => course?.steps.get(step.id) ?? []);
  const remarks: string[] = [];
  if (task.priority === "get-ahead") remarks.push(words("print/get-ahead"));
  if (task.closeout) remarks.push(words("print/closeout"));
  const [first] = planned;
  if (first) {
    const start = planned.reduce((least, step) => (step.start < least ? step.start : least), first.start);
    const finish = planned.reduce((most, step) => (step.finish > most ? step.finish : most), first.finish);
    remarks.push(words("print/planned", { span: spanText(start, finish) }));
  }
  return remarks.join(" · ");
}

/**
 * The style of the foot of every printed page, where the printer supports one, so that loose pages can be put back in
 * order.
 */
function pageFoot(foot: string): string {
  const quoted = (text: string) => `"${text.replaceAll(/["\\\n<>]/g, " ")}"`;
  // The printer counts the pages: its counters are placed between the quoted parts of the text.
  const numbers = inMarkedWords(message("print/page"))
    .map((part) => (typeof part === "string" ? quoted(part) : `counter(${part.mark})`))
    .join(" ");
  return `@page { @bottom-left { content: ${quoted(foot)}; } @bottom-right { content: ${numbers}; } }`;
}
