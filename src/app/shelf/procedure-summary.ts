import { checkProcedureText } from "../../core/check/index.ts";
import { planOf } from "../../core/plan/index.ts";
import type { Finding, ProcedureFile } from "../../core/procedure/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { hourMinuteText } from "../../core/units/index.ts";
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
  /** Findings in a word: `no findings`, `2 cautions`, `1 error`. */
  readonly verdict: string;
  readonly hasErrors: boolean;
  /** As written, for opening a walk; `null` when it could not be read. */
  readonly file: ProcedureFile | null;
}

/** The findings of a procedure in a word. Advice alone is left unsaid. */
export function verdictOf(findings: readonly Finding[]): string {
  const count = (level: Finding["level"]) => findings.filter((one) => one.level === level).length;
  const [errors, cautions, advice] = [count("error"), count("caution"), count("advice")];
  if (errors > 0) return errors === 1 ? "1 error" : `${errors} errors`;
  if (cautions > 0) return cautions === 1 ? "1 caution" : `${cautions} cautions`;
  if (advice > 0) return "advice only";
  return "no findings";
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
  if (!outline) return { ...shared, title: key, revision: null, summary: null, size: "cannot be read" };
  const { procedure, steps } = outline;
  return {
    ...shared,
    title: procedure.title,
    revision: procedure.revision ?? null,
    summary: procedure.summary ?? null,
    size: [
      procedure.setting,
      `${steps.length} steps`,
      plannedWords(planOf(outline).timeline?.course.finish ?? null, procedure.limits.elapsed ?? null),
    ]
      .filter(Boolean)
      .join(" · "),
  };
}

function plannedWords(finish: Duration | null, limit: Duration | null): string {
  if (finish === null) return "no plan";
  return `planned ${hourMinuteText(finish)}${limit === null ? "" : ` of ${hourMinuteText(limit)}`}`;
}
