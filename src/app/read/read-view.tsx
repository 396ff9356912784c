import { useCallback, useMemo } from "react";
import type { Wait } from "../../core/course/index.ts";
import type { Plan } from "../../core/plan/index.ts";
import type { Finding, Outline } from "../../core/procedure/index.ts";
import { clockText, hourMinuteText, minus } from "../../core/units/index.ts";
import { inWords, words } from "../../words/index.ts";
import { BraidedList, strandsOf } from "../braid/index.ts";
import { AlertBox, callsOf, Fact, limitWords, locationWords, Performers } from "../parts/index.ts";
import type { ReadRow } from "./read-rows.ts";
import { readRows } from "./read-rows.ts";
import "./read.css";

interface ReadViewProps {
  readonly outline: Outline;
  readonly plan: Plan;
  readonly findings: readonly Finding[];
  /** Buttons above the steps for what can be done from here. */
  readonly children: React.ReactNode;
}

/** A procedure as prepared: the braid, planned times, and findings beside the steps they concern. */
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
            <span className="read-revision">
              {" "}
              {words("parts/revision", { revision: procedure.revision })}
            </span>
          )}
        </h1>
        {procedure.summary !== undefined && <p>{procedure.summary}</p>}
        <dl className="read-facts">
          <Fact name={words("read/setting")}>
            {procedure.setting ? words(`shelf/setting-${procedure.setting}`) : words("read/setting-not-said")}
          </Fact>
          <Fact name={words("read/planned-finish")}>
            {plan.timeline ? hourMinuteText(plan.timeline.course.finish) : words("parts/no-plan")}
          </Fact>
          <Fact name={words("read/elapsed-limit")}>
            {limit === undefined ? words("read/no-limit") : hourMinuteText(limit)}
          </Fact>
          <Fact name={words("read/margin")}>
            {plan.margin === null
              ? "–"
              : words(plan.margin < 0 ? "figures/length-negative" : "figures/length", { time: plan.margin })}
          </Fact>
          <Fact name={words("read/steps")}>
            {words("read/steps-and-joint", {
              steps: outline.steps.length,
              joint: outline.steps.filter(({ performers }) => performers.length > 1).length,
            })}
          </Fact>
          <Fact name={words("read/items")}>{procedure.items.length}</Fact>
        </dl>
        <div className="panel-acts">{children}</div>
        <section className="read-findings" aria-labelledby="findings">
          <h2 id="findings">{words("read/findings")}</h2>
          {findings.length === 0 ? (
            <p className="hint">{words("read/no-findings")} </p>
          ) : (
            <ul className="plain-list">
              {general.map((one) => (
                <FindingItem key={`${one.code} ${one.pointer}`} finding={one} />
              ))}
              {findings.length > general.length && (
                <li className="hint">
                  {words("read/more-findings", { count: findings.length - general.length })}
                </li>
              )}
            </ul>
          )}
        </section>
      </header>
      <BraidedList label={words("read/steps")} strands={strands} rows={rows} markers={[]}>
        {renderRow}
      </BraidedList>
      {procedure.contingencies.length > 0 && (
        <section className="read-contingencies" aria-labelledby="contingencies">
          <h2 id="contingencies">{words("read/contingencies")}</h2>
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
      <b>{words(`read/level-${finding.level}`)}</b> {inWords(finding.message)}
      {finding.position && <span className="hint"> {words("read/line", finding.position)}</span>}
    </li>
  );
}

function waitText(outline: Outline, { crew: id, from, to, on }: Wait): string {
  const crew = outline.crewMember(id)?.call ?? id;
  const time = minus(to, from);
  if (on === null) return words("read/waits", { crew, time });
  if ("window" in on) {
    const label = outline.procedure.windows.find((window) => window.id === on.window)?.label ?? on.window;
    return words("read/waits-for", { crew, time, what: label });
  }
  if ("lag" in on)
    return words("read/waits-after", { crew, time, step: outline.step(on.lag)?.number ?? on.lag });
  if ("hold" in on) return words("read/waits-for-hold", { crew, time });
  return words("read/waits-for", { crew, time, what: callsOf(outline, on.crew) });
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
        {row.task.priority === "get-ahead" && <span className="hint">{words("read/get-ahead")}</span>}
        {row.task.closeout && <span className="hint">{words("read/closeout")}</span>}
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
          {planned ? `${clockText(planned.start)} – ${clockText(planned.finish)}` : words("read/not-in-plan")}
          {slack?.critical && ` · ${words("read/critical")}`}
        </span>
      </div>
      <ul className="read-notes">
        {step.when && (
          <li>
            {words("read/only-if", {
              branches: Object.entries(step.when)
                .map(
                  ([decision, outcome]) =>
                    `${outline.decision(decision)?.decision.ask ?? decision} ${outcome}`,
                )
                .join(", "),
            })}
          </li>
        )}
        {step.decide && (
          <li>
            {words("read/decision", {
              ask: step.decide.ask,
              outcomes: step.decide.outcomes,
              expected: step.decide.expect,
            })}
          </li>
        )}
        {step.records.map((record) => (
          <li key={record.id}>
            {limitWords(record)
              ? words("read/record-within", {
                  record: record.label ?? record.id,
                  limits: limitWords(record),
                })
              : words("read/record", { record: record.label ?? record.id })}
          </li>
        ))}
        {step.confirm && (
          <li>
            {words("read/confirms", {
              crew: callsOf(outline, [step.confirm.by]),
              text: step.confirm.text,
            })}
          </li>
        )}
        {step.moves.map(({ item, to }) => (
          <li key={item}>
            {outline.item(item)?.label ?? item} → {locationWords(outline, to)}
          </li>
        ))}
        {step.within.length > 0 && (
          <li>
            {words("read/only-in", {
              windows: step.within.map(
                (id) => outline.procedure.windows.find((window) => window.id === id)?.label ?? id,
              ),
            })}
          </li>
        )}
        {step.after.map(({ step: id, lag }) => (
          <li key={id}>
            {lag > 0
              ? words("read/after-and", { step: outline.step(id)?.number ?? id, lag })
              : words("read/after", { step: outline.step(id)?.number ?? id })}
          </li>
        ))}
        {waits.map((wait) => (
          <li key={wait}>{wait}</li>
        ))}
        {slack && slack.slack > 0 && <li>{words("read/slack", { time: slack.slack })}</li>}
        {row.findings.map((one) => (
          <FindingItem key={`${one.code} ${one.pointer}`} finding={one} />
        ))}
      </ul>
    </li>
  );
}
