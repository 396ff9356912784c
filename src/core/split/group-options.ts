import type { Group, ModelStep } from "./split-model.ts";
import type { Use } from "./stand.ts";

/**
 * The steps in groups that change hands together: those between which something is in somebody's hands ([FIT3]). A step
 * alone may be done in each of its stands; in a larger group one person takes the place of another in all the steps
 * that name them, or nothing changes.
 */
export function optionsOf(steps: readonly ModelStep[], uses: readonly (readonly Use[])[]): readonly Group[] {
  const parent = steps.map((_, index) => index);
  const root = (index: number): number => {
    const above = parent[index] ?? index;
    return above === index ? index : root(above);
  };
  const last = new Map<string, number>();
  for (const [index, used] of uses.entries())
    for (const { of, from } of used) {
      const before = last.get(of);
      if (before !== undefined && from.crew.length > 0) parent[root(index)] = root(before);
      last.set(of, index);
    }
  const members = new Map<number, number[]>();
  for (const index of steps.keys()) {
    const own = members.get(root(index));
    if (own) own.push(index);
    else members.set(root(index), [index]);
  }
  return [...members.values()].map((group) => ({ steps: group, options: choicesFor(steps, group) }));
}

function choicesFor(steps: readonly ModelStep[], group: readonly number[]): readonly (readonly number[])[] {
  const [first] = group;
  const alone = first === undefined ? undefined : steps[first];
  if (group.length === 1 && alone) return alone.stands.map((_, stand) => [stand]);
  const asWritten = group.map(() => 0);
  const found = new Map<string, readonly number[]>();
  for (const index of group) {
    for (const { one, other } of substitutionsIn(steps[index])) {
      const choice = group.map((member) => standWith(steps[member], one, other));
      if (!choice.includes(-1)) found.set(choice.join(" "), choice);
    }
  }
  found.delete(asWritten.join(" "));
  return [asWritten, ...found.values()];
}

/** The stands of a step in which one person takes the place of another and nothing else changes. */
function substitutionsIn(step: ModelStep | undefined) {
  const [asWritten, ...others] = step?.writtenStands ?? [];
  return others.flatMap(({ by }) => {
    const changed = by.flatMap((crew, seat) => (asWritten?.by[seat] === crew ? [] : [seat]));
    const [seat] = changed;
    const one = asWritten?.by[seat ?? -1];
    const other = by[seat ?? -1];
    // Two who change places in a joint step are one substitution as well.
    const isOne =
      changed.length === 1 || (changed.length === 2 && other !== undefined && asWritten?.by.includes(other));
    return isOne && by.length === asWritten?.by.length && one && other ? [{ one, other }] : [];
  });
}

/** The stand of a step with one person in the place of another; 0 when it does not name that one, −1 when there is none. */
function standWith(step: ModelStep | undefined, one: string, other: string): number {
  const [asWritten, ...others] = step?.writtenStands ?? [];
  if (!asWritten?.by.some((crew) => crew === one)) return 0;
  const wanted = asWritten.by.map((crew) => (crew === one ? other : crew === other ? one : crew));
  const at = others.findIndex(
    ({ by }) => by.length === wanted.length && by.every((crew, seat) => crew === wanted[seat]),
  );
  return at === -1 ? -1 : at + 1;
}
