import { checkProcedureText } from "../../core/check/index.ts";
import { planOf } from "../../core/plan/index.ts";
import type { Finding, ProcedureFile } from "../../core/procedure/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import type { ShelfText } from "./bundled-procedures.ts";

/** A procedure as the shelf shows it. */
export interface ProcedureSummary {
  readonly key: string;
  readonly isImported: boolean;
  readonly title: string;
  readonly revision: string | null;
  readonly summary: string | null;
  /** `orbit · 157 steps · planned 5:43 of 6:30`. */
  readonly size: string;
  /** The findings in a few words: `no findings`, `2 cautions`, `1 error`. */
  readonly verdict: string;
  readonly hasErrors: boolean;
  /** The file as written, for opening a walk; `null` when it could not be read. */
  readonly file: ProcedureFile | null;
}

/** The findings of a procedure in a few words, by the most serious level among them. */
export function verdictOf(findings: readonly Finding[]): string {
  const count = (level: Finding["level"]) => findings.filter((one) => one.level === level).length;
  const [errors, cautions, advice] = [count("error"), count("caution"), count("advice")];
  if (errors > 0) return words("shelf/errors", { count: errors });
  if (cautions > 0) return words("shelf/cautions", { count: cautions });
  return advice > 0 ? words("shelf/advice-only") : words("shelf/no-findings");
}

/** Checks and plans a procedure for the shelf. */
export function summaryOf({ key, text, isImported }: ShelfText): ProcedureSummary {
  const { outline, file, findings } = checkProcedureText(text);
  const shared = {
    key,
    isImported,
    verdict: verdictOf(findings),
    hasErrors: findings.some(({ level }) => level === "error"),
    file,
  };
  if (!outline)
    return { ...shared, title: key, revision: null, summary: null, size: words("shelf/cannot-be-read") };
  const { procedure, steps } = outline;
  return {
    ...shared,
    title: procedure.title,
    revision: procedure.revision ?? null,
    summary: procedure.summary ?? null,
    size: [
      procedure.setting && words(`shelf/setting-${procedure.setting}`),
      words("shelf/steps", { count: steps.length }),
      plannedWords(planOf(outline).timeline?.course.finish ?? null, procedure.limits.elapsed ?? null),
    ]
      .filter(Boolean)
      .join(" · "),
  };
}

function plannedWords(finish: Duration | null, limit: Duration | null): string {
  if (finish === null) return words("parts/no-plan");
  return limit === null ? words("shelf/planned", { finish }) : words("shelf/planned-of", { finish, limit });
}
