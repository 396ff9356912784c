import { message } from "../../words/index.ts";
import type { Finding, Outline, ReadProcedure } from "../procedure/index.ts";
import { finding, outlineOf, parseProcedure, readProcedure, scenariosOf } from "../procedure/index.ts";
import type { CheckMemory } from "./check-memory.ts";
import { inListOrder, withCauses } from "./following.ts";
import { languageFindings } from "./language-findings.ts";
import { procedureFindings } from "./procedure-findings.ts";
import type { CheckOptions } from "./scenario-check.ts";
import { scenarioCheck } from "./scenario-check.ts";
import { sizeFindings } from "./size-findings.ts";
import { textFindings } from "./text-findings.ts";
import { withTriedMends } from "./tried-mends.ts";
import { unitFindings } from "./unit-findings.ts";
import { writtenSteps } from "./written-steps.ts";

/** The findings of the checker, and the procedure when it could be read. */
export interface Checked extends ReadProcedure {
  /** The outline of the procedure; `null` when it could not be read. */
  readonly outline: Outline | null;
}

/**
 * Checks an outline in every scenario ([ORD4]): without get-ahead tasks, with all of them, and with each alone
 * ([PRO16]). Scenarios that perform the same steps are checked once. Returns each finding once, errors first, with what
 * follows from it under it. A finding that only occurs in other scenarios than the expected one says in which. The mends
 * are not tried; {@link checkProcedureText} does that. `memory` spares the scenarios where only words differ from the last.
 */
export function checkOutline(
  outline: Outline,
  options: CheckOptions = {},
  memory: CheckMemory | null = null,
): Finding[] {
  const { found, performed, count } = memory
    ? memory.scenarios(outline, options)
    : scenarioCheck(outline, options);
  const written = writtenSteps(outline);
  return inListOrder(
    withCauses(outline, [
      ...found,
      ...procedureFindings(outline, performed),
      ...textFindings(outline, written),
      ...unitFindings(outline, written),
      ...sizeFindings(written),
      ...languageFindings(outline.procedure),
      ...(performed ? [] : [notAllScenarios(count)]),
    ]),
  );
}

function notAllScenarios(checked: number): Finding {
  const some = message("order/not-all-scenarios", { count: checked });
  return finding("caution", "order/not-all-scenarios", "", some);
}

/** The most steps that are looked at, over all scenarios, when mends are tried: about a second of work. */
const MOST_STEPS_TRIED = 5_000;

/** A check in two parts: what is wrong, and after it the mends, which take as long as a check each. */
export interface CheckedInTurn extends Checked {
  /** Tries the mends, one at a step; returns the findings with those that hold ([CHK1]). `null` where there is none to try. */
  readonly tryMends: (() => Generator<void, readonly Finding[]>) | null;
}

/** Checks a procedure that was read. Its findings have no mends until these were tried. Never throws. */
export function checkInTurn(
  read: ReadProcedure,
  options: CheckOptions = {},
  memory: CheckMemory | null = null,
): CheckedInTurn {
  const { procedure, file, locate } = read;
  if (!procedure || !file) return { ...read, outline: null, tryMends: null };
  const outline = outlineOf(procedure);
  const found = checkOutline(outline, options, memory);
  const all = (findings: readonly Finding[]) => [...read.findings, ...locate(findings)];
  const checkFile = (changed: unknown): readonly Finding[] => {
    const { procedure: mended, findings } = parseProcedure(changed);
    return mended ? [...findings, ...checkOutline(outlineOf(mended), options)] : findings;
  };
  const scenarios = scenariosOf(outline).outcomes.length;
  const most = Math.floor(MOST_STEPS_TRIED / Math.max(1, outline.steps.length * scenarios));
  const untried = found.map((one): Finding => ({ ...one, mend: null, mendSays: null }));
  const tryMends = function* tried() {
    return all(yield* withTriedMends(file, found, checkFile, most));
  };
  const isToTry = found.some(({ mend }) => mend !== null);
  return { ...read, outline, findings: all(untried), tryMends: isToTry ? tryMends : null };
}

/**
 * Checks the text of a procedure file. Returns all findings, each with its position in the file, and only those mends
 * that were tried and mend nothing but their own finding ([CHK1]). Never throws.
 */
export function checkProcedureText(text: string, options: CheckOptions = {}): Checked {
  const { tryMends, ...checked } = checkInTurn(readProcedure(text), options);
  if (!tryMends) return checked;
  const trying = tryMends();
  let next = trying.next();
  while (!next.done) next = trying.next();
  return { ...checked, findings: next.value };
}
