import type { AnyStateMachine } from "xstate";
import { setup, transition } from "xstate";

/** The phase of a walk ([WLK1]). */
export type WalkPhase = "prepared" | "running" | "held" | "closed";

/** What a walk can be told to do. */
export type WalkCommand = "start" | "hold" | "lift" | "close";

/** The status of a lane ([WLK1]). */
export type LaneStatus = "ready" | "working" | "waiting" | "finished";

/** What a lane can be told to do: work on its next step, wait for it, or stop because there is none left. */
export type LaneCommand = "work" | "wait" | "finish";

/** Prepared → running ⇄ held → closed. A walk may be closed without having run. */
export const walkMachine = setup({ types: { events: {} as { type: WalkCommand } } }).createMachine({
  id: "walk",
  initial: "prepared",
  states: {
    prepared: { on: { start: "running", close: "closed" } },
    running: { on: { hold: "held", close: "closed" } },
    held: { on: { lift: "running", close: "closed" } },
    closed: {},
  },
});

/** Ready, then working and waiting in turn, then finished; a reopened step or a new branch brings a finished lane back. */
export const laneMachine = setup({ types: { events: {} as { type: LaneCommand } } }).createMachine({
  id: "lane",
  initial: "ready",
  states: {
    ready: { on: { work: "working", wait: "waiting", finish: "finished" } },
    working: { on: { wait: "waiting", finish: "finished" } },
    waiting: { on: { work: "working", finish: "finished" } },
    finished: { on: { work: "working", wait: "waiting" } },
  },
});

/**
 * The machines have no context, so that a state's name is the whole state; each answer is asked of XState once and kept,
 * which makes a step of the fold as cheap as a look-up.
 */
function stepper<State extends string, Command extends string>(machine: AnyStateMachine) {
  const known = new Map<string, State>();
  return (from: State, command: Command): State => {
    const key = `${from} ${command}`;
    const kept = known.get(key);
    if (kept !== undefined) return kept;
    const [next] = transition(machine, machine.resolveState({ value: from, context: {} }), { type: command });
    const to = next.value as State;
    known.set(key, to);
    return to;
  };
}

/** The phase after a command; the same phase when the command does not apply. */
export const nextPhase = stepper<WalkPhase, WalkCommand>(walkMachine);

/** The status after a command; the same status when the command does not apply. */
export const nextStatus = stepper<LaneStatus, LaneCommand>(laneMachine);
