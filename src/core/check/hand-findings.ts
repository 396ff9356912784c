import { message } from "../../words/index.ts";
import type { Custody } from "../custody/index.ts";
import { crewHolding } from "../custody/index.ts";
import type { Plan } from "../plan/index.ts";
import type { Finding, Item, OutlineStep } from "../procedure/index.ts";
import { finding } from "../procedure/index.ts";
import type { CrewId } from "../units/index.ts";
import { NO_TIME } from "../units/index.ts";
import { callsOf, labelOf } from "./item-words.ts";

const HANDS = 2;

/**
 * Returns a finding for each crew member who after a step has more in hand than two hands hold ([PRO14]), with the
 * moment. Only a step that gives the crew member something to hold is looked at; `null` stands for PET 0. What lies in
 * something else needs no hand, and what several hold needs its hands of each of them.
 */
export function handFindings(plan: Plan, custody: Custody, entry: OutlineStep | null): Finding[] {
  const { outline, timeline } = plan;
  const inHands = outline.procedure.items.filter(({ hands }) => hands > 0);
  if (inHands.length === 0) return [];
  const holds = (crew: CrewId, item: Item) => {
    const at = custody.get(item.id);
    return at !== undefined && crewHolding(at).includes(crew);
  };
  return outline.crew.flatMap(({ id: crew }) => {
    const held = inHands.filter((item) => holds(crew, item));
    const needed = held.reduce((sum, { hands }) => sum + hands, 0);
    if (needed <= HANDS) return [];
    const taken = (entry?.step.moves ?? []).findIndex(({ item }) => held.some(({ id }) => id === item));
    if (entry && taken < 0) return [];
    const full = {
      crew: callsOf(outline, [crew])[0] ?? crew,
      items: held.map(({ id }) => labelOf(outline, id)),
      needed,
      at: (entry && timeline?.course.steps.get(entry.step.id)?.finish) ?? NO_TIME,
    };
    const things = [crew, ...held.map(({ id }) => id)];
    if (!entry) {
      const first = outline.procedure.items.findIndex(({ id }) => id === held[0]?.id);
      return [
        finding(
          "error",
          "custody/hands-full",
          `/items/${first}`,
          message("custody/hands-full-at-start", full),
          {
            things,
          },
        ),
      ];
    }
    const said = message("custody/hands-full", { ...full, step: entry.step.id });
    return [
      finding("error", "custody/hands-full", `${entry.pointer}/moves/${taken}`, said, {
        steps: [entry.step.id],
        things,
      }),
    ];
  });
}
