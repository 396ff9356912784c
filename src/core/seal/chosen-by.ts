import type { Entry } from "../log/index.ts";

const PREFIX = "tetherline.";

/** What is to be in an extract. Each list narrows the other one; an empty one does not. */
export interface Choice {
  readonly steps: readonly string[];
  /** Kinds without their prefix, such as `step.done`. */
  readonly kinds: readonly string[];
}

/** Whether an entry is of the kinds that are chosen, and about the steps that are. */
export function chosenBy({ steps, kinds }: Choice): (entry: Entry) => boolean {
  return (entry) =>
    (kinds.length === 0 || kinds.includes(kindOf(entry))) &&
    (steps.length === 0 || steps.includes(stepOf(entry) ?? ""));
}

/** The kind of an entry without its prefix. */
export const kindOf = ({ wire }: Entry): string =>
  wire.type.startsWith(PREFIX) ? wire.type.slice(PREFIX.length) : wire.type;

/** The step that an entry is about; `null` for none. */
function stepOf({ wire }: Entry): string | null {
  const { step } = (wire.data ?? {}) as Readonly<Record<string, unknown>>;
  return typeof step === "string" && step !== "" ? step : null;
}
