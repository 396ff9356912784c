import type { Outline } from "../procedure/index.ts";
import type { CheckOptions, ScenarioCheck } from "./scenario-check.ts";

/**
 * Remembers what the scenarios of the last procedure came to, for whoever checks one after another: the words of steps have no part in
 * it, so that it is the same for a procedure in which only these differ.
 */
export class CheckMemory {
  #of = "";
  #known: ScenarioCheck | null = null;

  /** What the scenarios come to, worked out unless it is known. */
  scenarios(outline: Outline, options: CheckOptions, work: () => ScenarioCheck): ScenarioCheck {
    const of = JSON.stringify(
      [options.start ?? null, options.light ?? null, outline.procedure],
      withoutWords,
    );
    if (this.#known === null || this.#of !== of) {
      this.#known = work();
      this.#of = of;
    }
    return this.#known;
  }
}

/** What a step, or a watch, says is to be done is read by the advice on words alone. */
const withoutWords = (key: string, value: unknown) => (key === "do" ? undefined : value);
