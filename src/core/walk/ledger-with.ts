import { sameJson } from "../changes/index.ts";
import { custodyAtStart, movedInTurn } from "../custody/index.ts";
import type { Network } from "../order/index.ts";
import type { RecordedLight } from "../plan/index.ts";
import type { Instant, StepId } from "../units/index.ts";
import type { BegunSteps } from "./begun-steps.ts";
import { begunSteps } from "./begun-steps.ts";
import { startOf } from "./gate.ts";
import type { LaidOutProcedure } from "./laid-out-procedure.ts";
import { lanesRewound } from "./lane-progress.ts";
import type { LaneProgress, Ledger } from "./ledger.ts";
import { isComplete, progressOf, UNTOUCHED } from "./ledger.ts";
import { walkScenarioOf } from "./scenario-cache.ts";
import { walkWindows } from "./walk-windows.ts";

/** What is followed from an instant on. */
interface Followed {
  readonly inForce: LaidOutProcedure;
  readonly light: RecordedLight | null;
}

/**
 * Returns the ledger with another procedure or source of light in force from an instant on. What has happened stays:
 * steps in work keep their starts, and steps that are new, or that now wait for something else, cannot have begun before.
 * The lanes are worked out anew. The plan of record stays.
 */
export function ledgerWith(
  ledger: Ledger,
  { inForce, light }: Followed,
  at: Instant,
  begun: BegunSteps = begunSteps(ledger, at),
): Ledger {
  const { file, outline } = inForce;
  const before = ledger.inForce.file;
  let { steps } = ledger;
  for (const { step } of outline.steps) {
    if (steps.get(step.id) === undefined) steps = steps.with(step.id, UNTOUCHED);
  }
  const { petZero, opened } = ledger;
  const next: Ledger = {
    ...ledger,
    inForce,
    light,
    steps,
    ...walkScenarioOf(outline, ledger.outcomes),
    windows:
      light === ledger.light && sameJson(before.windows, file.windows)
        ? ledger.windows
        : walkWindows({ inForce, light }, petZero ?? opened.plannedStart),
    custody: sameJson(before.items, file.items)
      ? ledger.custody
      : movedInTurn(custodyAtStart(outline.procedure), ledger.moves),
  };
  const gated = { ...next, notBegunBefore: notBegunBefore(ledger, next, begun, at) };
  return keepingStarts({ ...gated, lanes: lanesWith(ledger, gated) }, begun);
}

/** The lanes by the crew in force: what becomes of those that were, and one for everybody who is new. */
function lanesWith(ledger: Ledger, next: Ledger): Ledger["lanes"] {
  const hasStarted = ledger.petZero !== null;
  const fresh: LaneProgress = { next: null, free: null, status: hasStarted ? "finished" : "ready" };
  const lanes = next.inForce.outline.crew.map(
    ({ id }) => ledger.lanes[ledger.inForce.outline.lane(id)] ?? fresh,
  );
  if (hasStarted) return lanesRewound({ ...next, lanes }, next.steps);
  const { steps } = next.inForce.outline;
  return lanes.map((one, lane) => ({
    ...one,
    next: steps[next.network.lanes[lane]?.[0] ?? -1]?.step.id ?? null,
  }));
}

/** What a step waits for, besides what it says itself. */
function linksTo({ before, outline }: Network, index: number): string {
  const links = (before[index] ?? []).map(
    ({ from, lag, because }) => `${outline.steps[from]?.step.id} ${lag} ${because}`,
  );
  return links.sort().join("\n");
}

/** When each step cannot have begun before: the given instant for those that can start at another time than they could. */
function notBegunBefore(
  ledger: Ledger,
  next: Ledger,
  { working }: BegunSteps,
  at: Instant,
): Ledger["notBegunBefore"] {
  const found = new Map<StepId, Instant>();
  for (const { index, step } of next.inForce.outline.steps) {
    if (isComplete(next, step.id) || working.has(step.id)) continue;
    const was = ledger.inForce.outline.step(step.id);
    const isSame =
      was !== null &&
      linksTo(ledger.network, was.index) === linksTo(next.network, index) &&
      sameJson(
        [was.step.by, was.step.when, was.step.within, was.step.notBefore],
        [step.by, step.when, step.within, step.notBefore],
      ) &&
      (step.within.length === 0 || ledger.windows === next.windows);
    const known = ledger.notBegunBefore.get(step.id);
    if (!isSame) found.set(step.id, at);
    else if (known !== undefined) found.set(step.id, known);
  }
  return found;
}

/** The ledger in which the steps in work have the starts that they had. */
function keepingStarts(ledger: Ledger, { working }: BegunSteps): Ledger {
  let { steps } = ledger;
  for (const [step, start] of working) {
    const entry = ledger.inForce.outline.step(step);
    if (!entry || startOf(ledger, entry)?.at === start) continue;
    steps = steps.with(step, { ...progressOf(ledger, step), saidStart: start });
  }
  return steps === ledger.steps ? ledger : { ...ledger, steps };
}
