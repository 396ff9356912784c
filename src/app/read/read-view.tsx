import { useCallback, useMemo } from "react";
import type { Wait } from "../../core/course/index.ts";
import type { Plan } from "../../core/plan/index.ts";
import type { Finding, Outline } from "../../core/procedure/index.ts";
import { clockText, hourMinuteText, lengthText, minus } from "../../core/units/index.ts";
import { BraidedList, strandsOf } from "../braid/index.ts";
import { AlertBox, callsOf, Fact, limitWords, locationWords, Performers } from "../parts/index.ts";
import type { ReadRow } from "./read-rows.ts";
import { readRows } from "./read-rows.ts";
import "./read.css";

interface ReadViewProps {
  readonly outline: Outline;
  readonly plan: Plan;
  readonly findings: readonly Finding[];
  /** What can be done from here: buttons above the steps. */
  readonly children: React.ReactNode;
}

const LEVELS = { error: "Error", caution: "To look at", advice: "Advice" } as const;

/** A procedure as prepared: the braid, plan times, and findings at the steps they concern. */
export function ReadView({ outline, plan, findings, children }: ReadViewProps) {
  const { procedure } = outline;
  const strands = useMemo(() => strandsOf(outline.crew), [outline]);
  const rows = useMemo(() => readRows(outline, plan, findings), [outline, plan, findings]);
  const general = findings.filter(({ steps }) => steps.length === 0 || steps.length > 3);
  const limit = procedure.limits.elapsed;
  const renderRow = useCallback(
    (row: ReadRow) => <ReadRowItem key={row.key} row={row} outline={outline} strands={strands} />,
    [outline, strands],
  );
  return (
    <article className="read">
      <header className="read-head">
        <h1>
          {procedure.title}
          {procedure.revision !== undefined && (
            <span className="read-revision"> rev. {procedure.revision}</span>
          )}
        </h1>
        {procedure.summary !== undefined && <p>{procedure.summary}</p>}
        <dl className="read-facts">
          <Fact name="Setting">{procedure.setting ?? "not said"}</Fact>
          <Fact name="Planned finish">
            {plan.timeline ? hourMinuteText(plan.timeline.course.finish) : "no plan"}
          </Fact>
          <Fact name="Elapsed limit">{limit === undefined ? "none" : hourMinuteText(limit)}</Fact>
          <Fact name="Margin">
            {plan.margin === null ? "–" : `${plan.margin < 0 ? "−" : ""}${lengthText(plan.margin)}`}
          </Fact>
          <Fact name="Steps">
            {outline.steps.length}, {outline.steps.filter(({ performers }) => performers.length > 1).length}{" "}
            joint
          </Fact>
          <Fact name="Items">{procedure.items.length}</Fact>
        </dl>
        <div className="panel-acts">{children}</div>
        <section className="read-findings" aria-labelledby="findings">
          <h2 id="findings">Findings</h2>
          {findings.length === 0 ? (
            <p className="hint">
              The checker has nothing to say. It checks order, places, custody and wording; it does not check
              judgement.
            </p>
          ) : (
            <ul className="plain-list">
              {general.map((one) => (
                <FindingItem key={`${one.code} ${one.pointer}`} finding={one} />
              ))}
              {findings.length > general.length && (
                <li className="hint">
                  {findings.length - general.length} more stand at the steps they concern.
                </li>
              )}
            </ul>
          )}
        </section>
      </header>
      <BraidedList label="Steps" strands={strands} rows={rows} markers={[]}>
        {renderRow}
      </BraidedList>
      {procedure.contingencies.length > 0 && (
        <section className="read-contingencies" aria-labelledby="contingencies">
          <h2 id="contingencies">Contingencies, not in the plan</h2>
          {procedure.contingencies.map((contingency) => (
            <section key={contingency.id}>
              <h3>{contingency.title}</h3>
              <ol>
                {contingency.tasks
                  .flatMap(({ steps }) => steps)
                  .map((step) => (
                    <li key={step.id}>
                      {step.alerts.map((alert) => (
                        <AlertBox key={alert.text} alert={alert} />
                      ))}
                      <b>{callsOf(outline, step.by)}</b> {step.do}
                    </li>
                  ))}
              </ol>
            </section>
          ))}
        </section>
      )}
    </article>
  );
}

function FindingItem({ finding }: { readonly finding: Finding }) {
  return (
    <li className="finding" data-level={finding.level}>
      <b>{LEVELS[finding.level]}</b> {finding.message}
      {finding.position && <span className="hint"> line {finding.position.line}</span>}
    </li>
  );
}

function waitText(outline: Outline, { crew, from, to, on }: Wait): string {
  const who = `${outline.crewMember(crew)?.call ?? crew} waits ${lengthText(minus(to, from))}`;
  if (on === null) return who;
  if ("window" in on) {
    const label = outline.procedure.windows.find(({ id }) => id === on.window)?.label ?? on.window;
    return `${who} for ${label}`;
  }
  if ("lag" in on) return `${who} after step ${outline.step(on.lag)?.number ?? on.lag}`;
  return "crew" in on ? `${who} for ${callsOf(outline, on.crew)}` : `${who} for the hold`;
}

interface ReadRowProps {
  readonly row: ReadRow;
  readonly outline: Outline;
  readonly strands: ReturnType<typeof strandsOf>;
}

function ReadRowItem({ row, outline, strands }: ReadRowProps) {
  if (row.kind === "task") {
    return (
      <li data-row={row.key} className="read-task">
        <h2>
          {row.number} {row.task.title}
        </h2>
        {row.task.priority === "get-ahead" && <span className="hint">get-ahead: only if time allows</span>}
        {row.task.closeout && <span className="hint">on the way home, however early</span>}
      </li>
    );
  }
  const { step, number, performers } = row.entry;
  const { planned, slack } = row;
  const waits = row.waits.map((wait) => waitText(outline, wait));
  return (
    <li data-row={row.key} className="read-step">
      {step.alerts.map((alert) => (
        <AlertBox key={alert.text} alert={alert} />
      ))}
      <div className="read-line" data-bead>
        <span className="hint">{number}</span>
        <Performers lanes={performers} strands={strands} />
        <span className="read-do">{step.do}</span>
        <span className="read-times">
          {planned ? `${clockText(planned.start)} – ${clockText(planned.finish)}` : "not in the plan"}
          {slack?.critical && " · critical"}
        </span>
      </div>
      <ul className="read-notes">
        {step.when && (
          <li>
            Only if{" "}
            {Object.entries(step.when)
              .map(
                ([decision, outcome]) => `${outline.decision(decision)?.decision.ask ?? decision} ${outcome}`,
              )
              .join(", ")}
          </li>
        )}
        {step.decide && (
          <li>
            {step.decide.ask} {step.decide.outcomes.join(" or ")}; expected: {step.decide.expect}
          </li>
        )}
        {step.records.map((record) => (
          <li key={record.id}>
            Record {record.label ?? record.id}
            {limitWords(record) && `: ${limitWords(record)}`}
          </li>
        ))}
        {step.confirm && (
          <li>
            {callsOf(outline, [step.confirm.by])} confirms: {step.confirm.text}
          </li>
        )}
        {step.moves.map(({ item, to }) => (
          <li key={item}>
            {outline.item(item)?.label ?? item} → {locationWords(outline, to)}
          </li>
        ))}
        {step.within.length > 0 && (
          <li>
            Only in{" "}
            {step.within
              .map((id) => outline.procedure.windows.find((window) => window.id === id)?.label ?? id)
              .join(" and ")}
          </li>
        )}
        {step.after.map(({ step: id, lag }) => (
          <li key={id}>
            After step {outline.step(id)?.number ?? id}
            {lag > 0 && ` and ${lengthText(lag)}`}
          </li>
        ))}
        {waits.map((wait) => (
          <li key={wait}>{wait}</li>
        ))}
        {slack && slack.slack > 0 && <li>Slack {lengthText(slack.slack)}</li>}
        {row.findings.map((one) => (
          <FindingItem key={`${one.code} ${one.pointer}`} finding={one} />
        ))}
      </ul>
    </li>
  );
}
