import type { Duration } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import type { ListedProcedure } from "./last-shelf.ts";
import type { ProcedureFacts } from "./procedure-facts.ts";

/** A procedure as the shelf shows it. */
export interface ProcedureSummary {
  /** Names it in addresses of the app. */
  readonly key: string;
  /** False when it came with the app and cannot be removed. */
  readonly isImported: boolean;
  readonly title: string;
  readonly revision: string | null;
  readonly summary: string | null;
  /** `orbit · 157 steps · planned 5:43 of 6:30`, or that it is not read yet. */
  readonly size: string;
  /** The findings in a few words: `no findings`, `2 cautions`, `1 error`. Advice alone is left unsaid. `null` while it is not read. */
  readonly verdict: string | null;
  readonly hasErrors: boolean;
  /** False when it cannot be read, so that no walk can be opened with it. */
  readonly isReadable: boolean;
}

function verdictOf({ error, caution, advice }: ProcedureFacts["findings"]): string {
  if (error > 0) return words("shelf/errors", { count: error });
  if (caution > 0) return words("shelf/cautions", { count: caution });
  return advice > 0 ? words("shelf/advice-only") : words("shelf/no-findings");
}

/** What is known of a procedure, in words. */
export function summaryOf(
  { key, isImported }: Pick<ProcedureSummary, "key" | "isImported">,
  { findings, procedure }: ProcedureFacts,
): ProcedureSummary {
  return {
    key,
    isImported,
    title: procedure?.title ?? key,
    revision: procedure?.revision ?? null,
    summary: procedure?.summary ?? null,
    size: procedure ? sizeOf(procedure) : words("shelf/cannot-be-read"),
    verdict: verdictOf(findings),
    hasErrors: findings.error > 0,
    isReadable: procedure !== null,
  };
}

/** A procedure that was brought in, while only what was listed of it last is known. */
export const listedSummary = (listed: ListedProcedure): ProcedureSummary => ({
  ...listed,
  isImported: true,
  summary: null,
  size: words("shelf/not-read-yet"),
  verdict: null,
  hasErrors: false,
});

function sizeOf({ setting, steps, finish, limit }: NonNullable<ProcedureFacts["procedure"]>): string {
  return [
    setting && words(`shelf/setting-${setting}`),
    words("shelf/steps", { count: steps }),
    plannedWords(finish, limit),
  ]
    .filter(Boolean)
    .join(" · ");
}

function plannedWords(finish: Duration | null, limit: Duration | null): string {
  if (finish === null) return words("parts/no-plan");
  return limit === null ? words("shelf/planned", { finish }) : words("shelf/planned-of", { finish, limit });
}
