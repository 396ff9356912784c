import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { Finding } from "../procedure/index.ts";
import type { AmendmentEffect } from "./amendment-effect.ts";

type Judged = Omit<AmendmentEffect, "grave" | "ledger" | "steps"> & Pick<AmendmentEffect, "ledger">;

/**
 * Returns what an amendment makes grave that was not so before, a sentence each: what it makes impossible first, then the
 * errors that the checker finds with it and did not find without.
 */
export function graveMessages(effect: Judged): readonly Message[] {
  return [
    ...noForecast(effect),
    ...overLimit(effect),
    ...noHome(effect),
    ...pastRedline(effect),
    ...effect.findings.new.flatMap((one) =>
      one.level === "error" && !isLessOver(one, effect.findings.gone) ? [one.message] : [],
    ),
  ];
}

/** True for a plan over its limit that was so before, by as much or more: what makes a late walk shorter is not grave. */
function isLessOver(found: Finding, gone: readonly Finding[]): boolean {
  if (found.code !== OVER_LIMIT) return false;
  const was = gone.find(({ code }) => code === OVER_LIMIT)?.message.arguments["over"];
  const { over } = found.message.arguments;
  return typeof was === "number" && typeof over === "number" && over <= was;
}

const OVER_LIMIT = "time/over-limit";

function noForecast({ outlook, unfit }: Judged): Message[] {
  if (outlook.after.forecast.finish !== null || outlook.before.forecast.finish === null) return [];
  return [
    unfit.after === null ? message("amend/no-forecast") : message("amend/unfit", { step: unfit.after }),
  ];
}

function overLimit({ outlook: { before, after } }: Judged): Message[] {
  const { margin } = after.forecast;
  const isNew = margin !== null && margin < 0 && !((before.forecast.margin ?? 0) < 0);
  return isNew ? [message("amend/over-limit", { margin })] : [];
}

function noHome({ home, ledger }: Judged): Message[] {
  const hasRefuge = ledger.inForce.outline.procedure.places.some(({ refuge }) => refuge);
  return home.after === null && home.before !== null && hasRefuge ? [message("amend/no-home")] : [];
}

function pastRedline({ supplies, ledger }: Judged): Message[] {
  return supplies.flatMap(({ supply, left: { before, after } }) => {
    if (after === null || after >= 0 || (before ?? 0) < 0) return [];
    const crew = ledger.inForce.outline.crewMember(supply.crew)?.call ?? supply.crew;
    return [message("amend/past-redline", { crew, supply: supply.label ?? supply.id, margin: after })];
  });
}
