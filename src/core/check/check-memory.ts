import type { Outline, Procedure } from "../procedure/index.ts";
import type { CheckOptions, ScenarioCheck } from "./scenario-check.ts";
import { scenarioCheck } from "./scenario-check.ts";
import { ScenarioMemory } from "./scenario-memory.ts";

/** The last check. */
interface Known {
  readonly procedure: Procedure;
  readonly start: CheckOptions["start"];
  readonly light: CheckOptions["light"];
  readonly check: ScenarioCheck;
}

/**
 * Remembers what the scenarios of the last procedure came to, for whoever checks one after another. The words of steps have no part in
 * it, so that it is the same for a procedure in which only these differ. Where the times of steps differ as well, what each scenario comes
 * to whatever its steps take is the same.
 */
export class CheckMemory {
  #known: Known | null = null;
  readonly #scenarios = new Map<string, ScenarioMemory>();

  /** What the scenarios come to, worked out unless it is known. */
  scenarios(outline: Outline, options: CheckOptions): ScenarioCheck {
    const { procedure } = outline;
    const { start = null, light = null } = options;
    const before = this.#known;
    const isAlike =
      before !== null && before.start === start && isSame(before.light, light, EVERYTHING)
        ? (left: Left) => isSame(before.procedure, procedure, left)
        : () => false;
    if (!isAlike(WORDS_AND_TIMES)) this.#scenarios.clear();
    const check =
      before && isAlike(WORDS)
        ? before.check
        : scenarioCheck(outline, options, (active) => this.#scenario(active));
    this.#known = { procedure, start, light, check };
    return check;
  }

  /** What is remembered of the scenario in which these steps are active. */
  #scenario(active: string): ScenarioMemory {
    const known = this.#scenarios.get(active) ?? new ScenarioMemory();
    this.#scenarios.set(active, known);
    return known;
  }
}

/** What two values of a key may differ in. */
type Left = (key: string, a: unknown, b: unknown) => boolean;

const EVERYTHING: Left = () => false;

/** What a step, or a watch, says is to be done is read by the advice on words alone. */
const WORDS: Left = (key) => key === "do";

/** Whether a step has a time matters to where somebody is; the times of routes and watches are no objects, and stay. */
const WORDS_AND_TIMES: Left = (key, a, b) =>
  WORDS(key, a, b) || (key === "time" && isObject(a) && isObject(b));

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null;

/** True for two JSON values that differ only in what is left out of it. */
function isSame(a: unknown, b: unknown, left: Left): boolean {
  if (a === b) return true;
  if (!isObject(a) || !isObject(b) || Array.isArray(a) !== Array.isArray(b)) return false;
  const keys = Object.keys(a);
  if (keys.length !== Object.keys(b).length) return false;
  return keys.every(
    (key) =>
      (Object.hasOwn(b, key) && isSame(a[key], b[key], left)) || (left(key, a[key], b[key]) && key in b),
  );
}
