import { setup } from "xstate";
import { stepperOf } from "./machine-stepper.ts";

/** The phase of a walk ([WLK1]). */
export type WalkPhase = "prepared" | "running" | "held" | "closed";

/**
 * What a walk can be told: to `open` (once, before anything else, so that no phase takes it), to `start` its clock, to `hold`, to `lift` the hold, to `close`; to take a `mark` of a step (done,
 * skipped, a record, a decision …), a `report` of an item or a supply, or a `note`.
 */
export type WalkCommand = "open" | "start" | "hold" | "lift" | "close" | "mark" | "report" | "note";

/**
 * Prepared → running ⇄ held → closed. A walk may be closed without having run. Steps are marked while the clock runs, held or
 * not; items and supplies may be reported before it was started too; notes are taken at any time. Every other command is refused.
 */
export const walkMachine = setup({ types: { events: {} as { type: WalkCommand } } }).createMachine({
  id: "walk",
  initial: "prepared",
  states: {
    prepared: { on: { start: "running", close: "closed", report: "prepared", note: "prepared" } },
    running: { on: { hold: "held", close: "closed", mark: "running", report: "running", note: "running" } },
    held: { on: { lift: "running", close: "closed", mark: "held", report: "held", note: "held" } },
    closed: { on: { note: "closed" } },
  },
});

/** The phase that a command leads to; `null` when the walk refuses it in this phase. */
export const phaseAfter = stepperOf<WalkPhase, WalkCommand>(walkMachine);

/** True when a walk in this phase takes the command. */
export function walkMay(phase: WalkPhase, command: WalkCommand): boolean {
  return phaseAfter(phase, command) !== null;
}
