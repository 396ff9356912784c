import { setup } from "xstate";
import { stepperOf } from "./machine-stepper.ts";
import { RefusedCommandError } from "./refused-command-error.ts";

/** The status of a lane ([WLK1]). */
export type LaneStatus = "ready" | "working" | "waiting" | "finished";

/**
 * The events of a lane. `begin`: the clock is started. `work`: its next step can start. `advance`: it has passed a
 * step and has another one. `finish`: it has passed its last step. `reopen`: it was sent back to a step it had
 * passed.
 */
export type LaneCommand = "begin" | "work" | "advance" | "finish" | "reopen";

/**
 * A lane is ready until the clock is started. After that it waits for its next step or works on it, one step at a
 * time ([PRO1]), until no step is left. A lane can pass a step without working on it, because a step can be skipped
 * or marked early. Only a reopened step or a changed decision brings a finished lane back. The machine refuses every
 * other command.
 */
export const laneMachine = setup({ types: { events: {} as { type: LaneCommand } } }).createMachine({
  id: "lane",
  initial: "ready",
  states: {
    ready: { on: { begin: "waiting" } },
    waiting: { on: { work: "working", advance: "waiting", finish: "finished", reopen: "waiting" } },
    working: { on: { advance: "waiting", finish: "finished", reopen: "waiting" } },
    finished: { on: { reopen: "waiting" } },
  },
});

const answer = stepperOf<LaneStatus, LaneCommand>(laneMachine);

/** True when a lane of this status takes the command. */
export function laneMay(status: LaneStatus, command: LaneCommand): boolean {
  return answer(status, command) !== null;
}

/** Returns the status after a command. Throws a {@link RefusedCommandError} when the lane refuses the command. */
export function statusAfter(status: LaneStatus, command: LaneCommand): LaneStatus {
  const next = answer(status, command);
  if (next === null) throw new RefusedCommandError(`a lane that is ${status} cannot ${command}`);
  return next;
}
