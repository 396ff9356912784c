import type { HappensBefore, Race } from "../order/index.ts";
import { MOST_RACES, racesOf } from "../order/index.ts";
import type { Finding, Outline } from "../procedure/index.ts";
import { finding } from "../procedure/index.ts";
import type { ItemId, StepId } from "../units/index.ts";

/** The races of an ordered network, one finding each ([ORD3]). */
export function raceFindings(order: HappensBefore): Finding[] {
  const { outline } = order.network;
  const { races, complete } = racesOf(order);
  const found = races.map((race) => raceFinding(outline, race));
  if (complete) return found;
  const message = `More than ${MOST_RACES} pairs of steps get in each other’s way over items; the rest are not listed.`;
  return [...found, finding("caution", "order/more-races", "", message)];
}

function raceFinding(outline: Outline, { item, steps, mover, other, need, handled }: Race): Finding {
  const label = (id: ItemId) => outline.item(id)?.label ?? id;
  const idOf = (index: number) => outline.steps[index]?.step.id as StepId;
  const named = (index: number) => {
    const calls = (outline.steps[index]?.step.by ?? []).map((crew) => outline.crewMember(crew)?.call ?? crew);
    return `"${idOf(index)}" (${calls.join(" and ")})`;
  };
  const clash =
    need === "moves"
      ? `${named(mover)} and ${named(other)} both move ${label(item)}`
      : need === "takes-out"
        ? `${named(mover)} moves ${label(item)} while ${named(other)} needs it where it is, to get at ${label(handled)}`
        : `${named(mover)} moves ${label(item)} while ${named(other)} puts ${label(handled)} into it`;
  const message = `${clash}, and nothing says which comes first. Let one come after the other.`;
  return finding("error", "order/race", outline.steps[steps[1]]?.pointer ?? "", message, {
    steps: steps.map(idOf),
    things: [item],
  });
}
