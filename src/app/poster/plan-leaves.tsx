import { useState } from "react";
import type { Plan, Timeline } from "../../core/plan/index.ts";
import { saveFile } from "../../io/browser-files/index.ts";
import { forMachines, inWords, words } from "../../words/index.ts";
import "./poster.css";

interface PlanLeavesProps {
  readonly plan: Plan;
  readonly timeline: Timeline;
  /** The address of the poster. */
  readonly poster: string;
}

/** The ways in which a plan leaves the app ([WRT11]): a table, a workbook, a sheet for the wall. */
export function PlanLeaves({ plan, timeline, poster }: PlanLeavesProps) {
  const [problem, setProblem] = useState<string | null>(null);
  const { id } = plan.outline.procedure;
  const give = async (kind: "csv" | "workbook") => {
    setProblem(null);
    const workbook = await writers();
    if (!workbook) return setProblem(words("poster/not-written"));
    const { planCsv, planSheets, workbookFile } = workbook;
    if (kind === "csv") {
      const csv = forMachines(() => planCsv(plan, timeline, inWords));
      await saveFile(`${id}.plan.csv`, csv, "text/csv");
      return;
    }
    const sheets = forMachines(() => planSheets(plan, timeline, inWords));
    await saveFile(`${id}.plan.xlsx`, await workbookFile(sheets), WORKBOOK);
  };
  return (
    <fieldset className="plan-leaves">
      <legend>{words("poster/leaves")}</legend>
      <button type="button" className="plain-button" onClick={() => void give("csv")}>
        {words("poster/leave-csv")}
      </button>
      <button type="button" className="plain-button" onClick={() => void give("workbook")}>
        {words("poster/leave-workbook")}
      </button>
      <a className="plain-button" href={poster}>
        {words("poster/leave-poster")}
      </a>
      <p role="status">{problem}</p>
    </fieldset>
  );
}

/** What writes tables and workbooks, loaded only when it is asked for; `null` when it cannot be loaded. */
const writers = () => import("../../core/workbook/index.ts").catch(() => null);

const WORKBOOK = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
