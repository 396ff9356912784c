import { useCallback, useMemo } from "react";
import type { Plan } from "../../core/plan/index.ts";
import type { Finding, Outline } from "../../core/procedure/index.ts";
import { hourMinuteText } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { BraidedList, strandsOf } from "../braid/index.ts";
import { callsOf, Fact } from "../parts/index.ts";
import { StepAlerts, StepDo, TextInLanguage, TextsField, TextsTurn } from "../texts/index.ts";
import { FindingItem } from "./finding-item.tsx";
import { ReadRowItem } from "./read-row-item.tsx";
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
          <TextInLanguage list="head" id={"."} field="title">
            {procedure.title}
          </TextInLanguage>{" "}
          {procedure.revision !== undefined && (
            <span className="read-revision">
              {" "}
              {words("parts/revision", { revision: procedure.revision })}
            </span>
          )}
        </h1>
        {procedure.summary !== undefined && (
          <p>
            <TextInLanguage list="head" id={"."} field="summary">
              {procedure.summary}
            </TextInLanguage>
          </p>
        )}
        <dl className="read-facts">
          <Fact name={words("read/setting")}>
            {procedure.setting ? words(`shelf/setting-${procedure.setting}`) : words("read/setting-not-said")}
          </Fact>
          <Fact name={words("read/planned-finish")}>
            {plan.timeline ? hourMinuteText(plan.timeline.course.finish, "up") : words("parts/no-plan")}
          </Fact>
          <Fact name={words("read/elapsed-limit")}>
            {limit === undefined ? words("read/no-limit") : hourMinuteText(limit)}
          </Fact>
          <Fact name={words("read/margin")}>
            {plan.margin === null ? "–" : words("figures/margin", { time: plan.margin })}
          </Fact>
          <Fact name={words("read/steps")}>
            {words("read/steps-and-joint", {
              steps: outline.steps.length,
              joint: outline.steps.filter(({ performers }) => performers.length > 1).length,
            })}
          </Fact>
          <Fact name={words("read/items")}>{procedure.items.length}</Fact>
        </dl>
        <div className="panel-acts">
          {children}
          <TextsTurn />
        </div>
        <TextsField />
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
      <BraidedList label={words("read/steps")} strands={strands} rows={rows}>
        {renderRow}
      </BraidedList>
      {procedure.contingencies.length > 0 && (
        <section className="read-contingencies" aria-labelledby="contingencies">
          <h2 id="contingencies">{words("read/contingencies")}</h2>
          {procedure.contingencies.map((contingency) => (
            <section key={contingency.id}>
              <h3>
                <TextInLanguage list="contingencies" id={contingency.id} field="title">
                  {contingency.title}
                </TextInLanguage>
              </h3>
              {contingency.when !== undefined && (
                <p>{words("panel/contingency-when", { when: contingency.when })}</p>
              )}
              <ol>
                {contingency.tasks
                  .flatMap(({ steps }) => steps)
                  .map((step) => (
                    <li key={step.id}>
                      <StepAlerts step={step} />
                      <b>{callsOf(outline, step.by)}</b> <StepDo step={step} />
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
