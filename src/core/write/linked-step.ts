import { message } from "../../words/index.ts";
import { applyChanges } from "../changes/index.ts";
import { networkOf } from "../order/index.ts";
import type { Change, ProcedureFile } from "../procedure/index.ts";
import { AS_EXPECTED, activityOf, outlineOf, parseProcedure } from "../procedure/index.ts";
import type { Duration } from "../units/index.ts";
import { formatDuration, NO_TIME } from "../units/index.ts";
import type { Proposal } from "./proposal.ts";
import { impossible, proposed } from "./proposal.ts";
import type { FileStep } from "./sheet.ts";
import { placedStep } from "./sheet.ts";

/** Whether everybody would wait for somebody else; false too where it cannot be told, which the reading says. */
function isRing(file: ProcedureFile, changes: readonly Change[]): boolean {
  const changed = applyChanges(file, changes).file;
  const procedure = changed && parseProcedure(changed).procedure;
  if (!procedure) return false;
  const outline = outlineOf(procedure);
  return networkOf(outline, activityOf(outline, AS_EXPECTED, true)).ring.length > 0;
}

/** Lets a step come after others, and after nothing else ([WRT3]). */
export function waitsSet(file: ProcedureFile, row: string, waits: NonNullable<FileStep["after"]>): Proposal {
  const placed = placedStep(file, row);
  if (!placed) return impossible(message("write/link-steps"));
  const changes: readonly Change[] =
    waits.length > 0 ? [{ change: row, set: { after: waits } }] : [{ change: row, unset: ["after"] }];
  if (waits.length > 0 && !isRing(file, []) && isRing(file, changes)) {
    const there = new Set(placed.step.after?.map(idOfWait));
    const added = waits.map(idOfWait).find((id) => !there.has(id)) ?? row;
    const other = placedStep(file, added)?.step.do ?? added;
    return impossible(message("write/link-ring", { step: placed.step.do, other }));
  }
  return proposed(changes, [row]);
}

/** The step that a wait is for. */
export const idOfWait = (wait: NonNullable<FileStep["after"]>[number]): string =>
  typeof wait === "string" ? wait : wait.step;

/** Lets a step come after another one, with a time that must pass in between ([WRT3]); again with another time sets that. */
export function stepLinked(file: ProcedureFile, row: string, to: string, lag: Duration = NO_TIME): Proposal {
  const [placed, other] = [placedStep(file, row), placedStep(file, to)];
  if (!placed || !other) return impossible(message("write/link-steps"));
  if (row === to) return impossible(message("write/link-itself"));
  const waits = (placed.step.after ?? []).filter((one) => idOfWait(one) !== to);
  return waitsSet(file, row, [...waits, lag > 0 ? { step: to, lag: formatDuration(lag) } : to]);
}

/** Lets a step no longer come after another one. */
export function stepUnlinked(file: ProcedureFile, row: string, to: string): Proposal {
  const placed = placedStep(file, row);
  const waits = placed?.step.after?.filter((one) => idOfWait(one) !== to) ?? [];
  if (!placed || waits.length === placed.step.after?.length) return impossible(message("write/link-steps"));
  return waitsSet(file, row, waits);
}

/** Lets a crew member take part in a step, or no longer ([WRT3]). Somebody must do it. */
export function performerTurned(file: ProcedureFile, row: string, crew: string): Proposal {
  const placed = placedStep(file, row);
  if (!placed) return impossible(message("write/nothing-chosen"));
  const { by } = placed.step;
  const others = by.filter((one) => one !== crew);
  if (others.length === 0) return impossible(message("write/nobody"));
  return proposed([{ change: row, set: { by: others.length < by.length ? others : [...by, crew] } }], [row]);
}
