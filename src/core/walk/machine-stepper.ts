import type { AnyStateMachine } from "xstate";
import { transition } from "xstate";

/**
 * How a machine answers a command in a state: the state it comes to, or `null` when it refuses. The machines here have no
 * context, so that the name of a state is the whole state; each answer is asked of XState once and kept, which makes it as
 * cheap as a look-up.
 */
export function stepperOf<State extends string, Command extends string>(
  machine: AnyStateMachine,
): (from: State, command: Command) => State | null {
  const known = new Map<string, State | null>();
  return (from, command) => {
    const key = `${from} ${command}`;
    const kept = known.get(key);
    if (kept !== undefined) return kept;
    const before = machine.resolveState({ value: from, context: {} });
    const event = { type: command };
    const answer = before.can(event) ? (transition(machine, before, event)[0].value as State) : null;
    known.set(key, answer);
    return answer;
  };
}
