import { useState } from "react";
import type { Plan } from "../../core/plan/index.ts";
import type { Finding, Outline, Task } from "../../core/procedure/index.ts";
import type { Instant } from "../../core/units/index.ts";
import { formatInstant } from "../../core/units/index.ts";
import { spanText } from "../parts/index.ts";
import { FrontMatter } from "./front-matter.tsx";
import { StepRow } from "./step-row.tsx";
import { TaskTable } from "./task-table.tsx";
import "./print.css";

export interface PrintSheetProps {
  readonly outline: Outline;
  readonly plan: Plan;
  /** What the checker has to say; listed on the first page. */
  readonly findings?: readonly Finding[];
  /** When it is printed; the moment it is opened unless said. */
  readonly printedAt?: Instant;
}

const SETTINGS = {
  orbit: "in orbit",
  pool: "pool rehearsal",
  surface: "on a surface",
} as const;

/**
 * A procedure as a document to print: the backup on paper, with the words and figures of the screen.
 * It must stand outside Ionic's pages, so that the document itself scrolls and prints whole.
 */
export function PrintSheet({ outline, plan, findings = [], printedAt }: PrintSheetProps) {
  const { procedure } = outline;
  const [opened] = useState(() => Date.now() as Instant);
  const printed = `${formatInstant(printedAt ?? opened)
    .slice(0, 16)
    .replace("T", " ")} UTC`;
  const revision = procedure.revision ? `revision ${procedure.revision}` : "no revision";
  return (
    <main className="print-sheet">
      <style>{pageFoot(`${procedure.id}, ${revision}, printed ${printed}`)}</style>
      <p className="print-tools">
        <button type="button" className="main-button" onClick={() => window.print()}>
          Print
        </button>
      </p>
      <header>
        <p className="print-kind">Procedure · paper backup</p>
        <h1>{procedure.title}</h1>
        <p className="print-identity">
          <b>{procedure.id}</b> · {revision}
          {procedure.setting && ` · ${SETTINGS[procedure.setting]}`} · printed {printed}
        </p>
        {procedure.summary && <p>{procedure.summary}</p>}
      </header>
      <FrontMatter outline={outline} plan={plan} findings={findings} />
      <section className="print-steps">
        <h2>Steps</h2>
        <p>Times are PET, in hours and minutes. Tick a step when it is done and write the time beside it.</p>
        {procedure.tasks.map((task, index) => (
          <TaskTable
            key={task.id}
            title={`${index + 1} ${task.title}`}
            remark={taskRemark(outline, plan, task)}
          >
            {outline.steps
              .filter((entry) => entry.task === task)
              .map((entry) => (
                <StepRow
                  key={entry.step.id}
                  outline={outline}
                  step={entry.step}
                  number={entry.number}
                  entry={entry}
                  planned={plan.timeline?.course.steps.get(entry.step.id) ?? null}
                />
              ))}
          </TaskTable>
        ))}
      </section>
      {procedure.contingencies.length > 0 && (
        <section className="print-steps print-contingencies">
          <h2>Contingencies</h2>
          {procedure.contingencies.map((contingency, index) => {
            const letter = `C${index + 1}`;
            return contingency.tasks.map((task, taskIndex) => (
              <TaskTable
                key={`${contingency.id} ${task.id}`}
                title={`${letter} ${contingency.title}`}
                remark={task.title}
              >
                {task.steps.map((step, stepIndex) => (
                  <StepRow
                    key={step.id}
                    outline={outline}
                    step={step}
                    number={`${letter}.${taskIndex + 1}.${stepIndex + 1}`}
                    entry={null}
                    planned={null}
                  />
                ))}
              </TaskTable>
            ));
          })}
        </section>
      )}
      <footer>
        <p>
          This sheet advises. Flight rules, local codes and the practice of licensed people decide. Planned
          times are likely times, not limits.
        </p>
        <p>
          {procedure.title}, {procedure.id}, {revision}, printed {printed}. Check the revision before use;
          destroy older prints.
        </p>
      </footer>
    </main>
  );
}

function taskRemark(outline: Outline, plan: Plan, task: Task): string {
  const own = outline.steps.filter((entry) => entry.task === task);
  const planned = own.flatMap(({ step }) => plan.timeline?.course.steps.get(step.id) ?? []);
  const words: string[] = [];
  if (task.priority === "get-ahead") words.push("get-ahead: only if time allows");
  if (task.closeout) words.push("closeout: must be done on the way home");
  const [first] = planned;
  if (first) {
    const start = planned.reduce((least, step) => (step.start < least ? step.start : least), first.start);
    const finish = planned.reduce((most, step) => (step.finish > most ? step.finish : most), first.finish);
    words.push(`planned ${spanText(start, finish)}`);
  }
  return words.join(" · ");
}

/** The foot of every printed page, where the printer can draw one: pages that fall apart can be put together again. */
function pageFoot(words: string): string {
  const text = words.replaceAll(/["\\\n<>]/g, " ");
  return `@page { @bottom-left { content: "${text}"; } @bottom-right { content: "Page " counter(page) " of " counter(pages); } }`;
}
