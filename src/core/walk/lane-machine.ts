import { setup } from "xstate";
import { stepperOf } from "./machine-stepper.ts";
import { RefusedCommandError } from "./refused-command-error.ts";

/** The status of a lane ([WLK1]). */
export type LaneStatus = "ready" | "working" | "waiting" | "finished";

/**
 * What can happen to a lane: the clock is started (`begin`), its next step can start (`work`), it has come past a step and there
 * is another (`advance`) or none (`finish`), or it has been led back to a step it was past (`reopen`).
 */
export type LaneCommand = "begin" | "work" | "advance" | "finish" | "reopen";

/**
 * Ready until the clock is started, then waiting for its next step or working on it, one at a time ([PRO1]), until none is
 * left. A lane is past a step whether it worked on it or not: a step can be skipped, or marked before its time. Only a
 * reopened step, or a decision taken otherwise, brings a finished lane back. Every other command is refused.
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

/** The status that a command leads to. A command that the lane refuses is a {@link RefusedCommandError}. */
export function statusAfter(status: LaneStatus, command: LaneCommand): LaneStatus {
  const next = answer(status, command);
  if (next === null) throw new RefusedCommandError(`a lane that is ${status} cannot ${command}`);
  return next;
}
