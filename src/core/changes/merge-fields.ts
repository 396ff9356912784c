import type { Fields } from "../procedure/index.ts";
import { sameJson } from "./same-json.ts";

/** A value in the base and on both sides. */
export interface Three<Value> {
  readonly base: Value;
  readonly ours: Value;
  readonly theirs: Value;
}

/** What is made of a value in the base and on both sides. */
export const each = <From, To>({ base, ours, theirs }: Three<From>, make: (one: From) => To): Three<To> => ({
  base: make(base),
  ours: make(ours),
  theirs: make(theirs),
});

/** A field that is left out, told apart from any value. */
export const ABSENT: unique symbol = Symbol("absent");
const fieldOf = (fields: Fields, key: string): unknown => (Object.hasOwn(fields, key) ? fields[key] : ABSENT);
/** A value as a conflict shows it: `null` where it is left out. */
export const shown = (value: unknown) => (value === ABSENT || value === undefined ? null : value);

/** What two sides made of one value: what both have, else what the one that changed it has; `undecided` when both did. */
export function mergedValue<Value>({
  base,
  ours,
  theirs,
}: Three<Value>): { readonly value: Value } | "undecided" {
  if (sameJson(ours, theirs) || sameJson(theirs, base)) return { value: ours };
  return sameJson(ours, base) ? { value: theirs } : "undecided";
}

/** Whose value is taken where two sides made different things of one. */
export type MergeSide = keyof Three<unknown>;

/**
 * Merges objects field by field. `decide` is asked about each field that both sides changed, and names whose value is taken; with
 * `null` the field is left out. `merge` tells what comes of the values of a field before anybody is asked.
 */
export function mergedFields(
  sides: Three<Fields>,
  decide: (field: string, values: Three<unknown>) => MergeSide | null,
  merge: (values: Three<unknown>) => ReturnType<typeof mergedValue<unknown>> = mergedValue,
): Fields {
  const keys = new Set([sides.ours, sides.theirs, sides.base].flatMap((fields) => Object.keys(fields)));
  return Object.fromEntries(
    [...keys].flatMap((key): [string, unknown][] => {
      const values = each(sides, (fields) => fieldOf(fields, key));
      const merged = merge(values);
      if (merged !== "undecided") return merged.value === ABSENT ? [] : [[key, merged.value]];
      const side = decide(key, each(values, shown));
      return side === null || values[side] === ABSENT ? [] : [[key, values[side]]];
    }),
  );
}
