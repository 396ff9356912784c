import { message } from "../../words/index.ts";
import { applyChanges } from "../changes/index.ts";
import { networkOf } from "../order/index.ts";
import type { Change, ProcedureFile } from "../procedure/index.ts";
import { AS_EXPECTED, activityOf, outlineOf, parseProcedure } from "../procedure/index.ts";
import type { Duration } from "../units/index.ts";
import { formatDuration, NO_TIME } from "../units/index.ts";
import type { Proposal } from "./proposal.ts";
import { impossible, proposed } from "./proposal.ts";
import { placedStep } from "./sheet.ts";

/** Whether everybody would wait for somebody else; false too where it cannot be told, which the reading says. */
function isRing(file: ProcedureFile, changes: readonly Change[]): boolean {
  const changed = applyChanges(file, changes).file;
  const procedure = changed && parseProcedure(changed).procedure;
  if (!procedure) return false;
  const outline = outlineOf(procedure);
  return networkOf(outline, activityOf(outline, AS_EXPECTED, true)).ring.length > 0;
}

/** Lets a step come after another one, with a time that must pass in between ([WRT3]); again with another time sets that. */
export function stepLinked(file: ProcedureFile, row: string, to: string, lag: Duration = NO_TIME): Proposal {
  const [placed, other] = [placedStep(file, row), placedStep(file, to)];
  if (!placed || !other) return impossible(message("write/link-steps"));
  if (row === to) return impossible(message("write/link-itself"));
  const waits = (placed.step.after ?? []).filter((one) => (typeof one === "string" ? one : one.step) !== to);
  const wait = lag > 0 ? { step: to, lag: formatDuration(lag) } : to;
  const changes: readonly Change[] = [{ change: row, set: { after: [...waits, wait] } }];
  if (!isRing(file, []) && isRing(file, changes))
    return impossible(message("write/link-ring", { step: placed.step.do, other: other.step.do }));
  return proposed(changes, [row]);
}

/** Lets a step no longer come after another one. */
export function stepUnlinked(file: ProcedureFile, row: string, to: string): Proposal {
  const placed = placedStep(file, row);
  const waits = placed?.step.after?.filter((one) => (typeof one === "string" ? one : one.step) !== to) ?? [];
  if (!placed || waits.length === placed.step.after?.length) return impossible(message("write/link-steps"));
  return proposed(
    [waits.length > 0 ? { change: row, set: { after: waits } } : { change: row, unset: ["after"] }],
    [row],
  );
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
