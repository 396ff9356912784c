import type { Contingency, Procedure, Step } from "./schema.ts";

/**
 * The contingencies that a step names: those whose title stands in its action or in one of its alerts, in the order of
 * the procedure. Capitals do not matter.
 */
export function contingenciesNamedBy(
  { contingencies }: Procedure,
  { do: action, alerts }: Step,
): readonly Contingency[] {
  if (contingencies.length === 0) return contingencies;
  const text = [action, ...alerts.map((alert) => alert.text)].join("\n").toLowerCase();
  return contingencies.filter(({ title }) => text.includes(title.toLowerCase()));
}
