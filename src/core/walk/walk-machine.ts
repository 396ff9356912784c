import { setup } from "xstate";
import { stepperOf } from "./machine-stepper.ts";

/** The phase of a walk ([WLK1]). */
export type WalkPhase = "prepared" | "running" | "held" | "closed";

/**
 * The commands of a walk. `open`: opens it once, before anything else, so no phase accepts it. `start`: starts its
 * clock. `hold`, `lift`: begin and end a hold. `close`: closes it. `mark`: an entry on a step (done, skipped, a
 * record, a decision …). `report`: an entry on an item or a supply. `amend`: an amendment of the plan. `note`: a note.
 * `reopen`, `reopen-held`, `reopen-prepared`: reopen a closed walk as it was before, running, held or prepared.
 */
export type WalkCommand =
  | "open"
  | "start"
  | "hold"
  | "lift"
  | "close"
  | "mark"
  | "report"
  | "amend"
  | "note"
  | "reopen"
  | "reopen-held"
  | "reopen-prepared";

/** The phases from which a walk is closed, each with the command that leads back to it. */
export const REOPENINGS: Readonly<Record<Exclude<WalkPhase, "closed">, WalkCommand>> = {
  prepared: "reopen-prepared",
  running: "reopen",
  held: "reopen-held",
};

/**
 * Prepared → running ⇄ held → closed. A walk may be closed without having run. Steps can be marked while the clock
 * runs, also during a hold. Items and supplies can also be reported, and the plan amended, before the clock is started. Notes can be made in
 * every phase. A closed walk can be reopened. The machine refuses every other command.
 */
export const walkMachine = setup({ types: { events: {} as { type: WalkCommand } } }).createMachine({
  id: "walk",
  initial: "prepared",
  states: {
    prepared: {
      on: { start: "running", close: "closed", report: "prepared", amend: "prepared", note: "prepared" },
    },
    running: {
      on: {
        hold: "held",
        close: "closed",
        mark: "running",
        report: "running",
        amend: "running",
        note: "running",
      },
    },
    held: {
      on: { lift: "running", close: "closed", mark: "held", report: "held", amend: "held", note: "held" },
    },
    closed: {
      on: { note: "closed", reopen: "running", "reopen-held": "held", "reopen-prepared": "prepared" },
    },
  },
});

/** Returns the phase after a command, or `null` when the walk refuses the command in this phase. */
export const phaseAfter = stepperOf<WalkPhase, WalkCommand>(walkMachine);

/** True when a walk in this phase takes the command. */
export function walkMay(phase: WalkPhase, command: WalkCommand): boolean {
  return phaseAfter(phase, command) !== null;
}
