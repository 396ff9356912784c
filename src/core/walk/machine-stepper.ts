import type { AnyStateMachine } from "xstate";
import { transition } from "xstate";

/**
 * Returns a function that tells the state after a command, or `null` when the machine refuses the command. The
 * machines here have no context, so the name of a state is the whole state. XState is asked once for each pair of
 * state and command; the answer is cached, so later calls cost one look-up.
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
