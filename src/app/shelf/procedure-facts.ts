import { checkProcedureText } from "../../core/check/index.ts";
import { planOf } from "../../core/plan/index.ts";
import type { FindingLevel, Procedure } from "../../core/procedure/index.ts";
import type { Duration } from "../../core/units/index.ts";

/** What the shelf tells of a procedure, as figures. */
export interface ProcedureFacts {
  /** How many findings there are of each level. */
  readonly findings: Readonly<Record<FindingLevel, number>>;
  /** `null` when the text cannot be read as a procedure. */
  readonly procedure: {
    readonly title: string;
    readonly revision: string | null;
    readonly summary: string | null;
    readonly setting: Procedure["setting"] | null;
    readonly steps: number;
    /** PET of the planned finish; `null` when there is no plan. */
    readonly finish: Duration | null;
    readonly limit: Duration | null;
  } | null;
}

/** Checks and plans the text of a procedure. */
export function factsOf(text: string): ProcedureFacts {
  const { outline, findings } = checkProcedureText(text);
  const count = (level: FindingLevel) => findings.filter((one) => one.level === level).length;
  const counts = { error: count("error"), caution: count("caution"), advice: count("advice") };
  if (!outline) return { findings: counts, procedure: null };
  const { title, revision, summary, setting, limits } = outline.procedure;
  return {
    findings: counts,
    procedure: {
      title,
      revision: revision ?? null,
      summary: summary ?? null,
      setting: setting ?? null,
      steps: outline.steps.length,
      finish: planOf(outline).timeline?.course.finish ?? null,
      limit: limits.elapsed ?? null,
    },
  };
}
