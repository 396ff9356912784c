import { message } from "../../words/index.ts";
import type { HappensBefore, Race } from "../order/index.ts";
import { MOST_RACES, racesOf } from "../order/index.ts";
import type { Finding, Outline } from "../procedure/index.ts";
import { finding } from "../procedure/index.ts";
import type { ItemId, StepId } from "../units/index.ts";

/** Returns one finding for each race in an ordered network ([ORD3]). */
export function raceFindings(order: HappensBefore): Finding[] {
  const { outline } = order.network;
  const { races, complete } = racesOf(order);
  const found = races.map((race) => raceFinding(outline, race));
  if (complete) return found;
  const more = message("order/more-races", { most: MOST_RACES });
  return [...found, finding("caution", "order/more-races", "", more)];
}

function raceFinding(outline: Outline, { item, steps, mover, other, need, handled }: Race): Finding {
  const label = (id: ItemId) => outline.item(id)?.label ?? id;
  const idOf = (index: number) => outline.steps[index]?.step.id as StepId;
  const callsOf = (index: number) =>
    (outline.steps[index]?.step.by ?? []).map((crew) => outline.crewMember(crew)?.call ?? crew);
  const pair = {
    mover: idOf(mover),
    moverCrew: callsOf(mover),
    other: idOf(other),
    otherCrew: callsOf(other),
    item: label(item),
  };
  const clash =
    need === "moves"
      ? message("order/race-moves", pair)
      : message(`order/race-${need}`, { ...pair, handled: label(handled) });
  return finding("error", "order/race", outline.steps[steps[1]]?.pointer ?? "", clash, {
    steps: steps.map(idOf),
    things: [item],
  });
}
