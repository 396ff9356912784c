import type { Outline, OutlineStep } from "../procedure/index.ts";
import type { PlaceId } from "../units/index.ts";
import type { NeedOf } from "./relaid.ts";
import type { Stand } from "./stand.ts";
import { heldKey, substitutionFor } from "./stand.ts";

/**
 * Who could do a step: those of the file first, then those of its `or` who break no rule by themselves. Nobody confirms
 * their own step, nobody inside works outside, and a record of a supply is of one whom that supply belongs to.
 */
export function standsOf(
  outline: Outline,
  entry: OutlineStep,
  { isFixed, needOf }: { readonly isFixed: boolean; readonly needOf: NeedOf },
): readonly Stand[] {
  const { step } = entry;
  const asWritten: Stand = { by: step.by, time: null };
  if (isFixed) return [asWritten];
  const place = step.by.reduce<PlaceId | null>((found, _, seat) => found ?? needOf(entry, seat), null);
  const isIndoors = (at: PlaceId) =>
    outline.place(at)?.refuge === true ||
    outline.crew.some(({ station, start }) => station !== "outside" && start === at);
  const isPossible = (stand: Stand): boolean => {
    const { by } = stand;
    const members = by.map((crew) => outline.crewMember(crew));
    const substitution = substitutionFor(step, stand);
    const confirms = step.confirm?.by;
    const outdoors = [place, step.to ?? null].some((at) => at !== null && !isIndoors(at));
    return (
      by.length === new Set(by).size &&
      (confirms === undefined || !by.includes(confirms) || step.by.includes(confirms)) &&
      (!outdoors || members.some((member) => member?.station === "outside")) &&
      step.records.every(
        ({ supply }) =>
          supply === undefined ||
          outline.procedure.supplies.some(({ id, crew }) => id === supply && by.includes(crew)),
      ) &&
      step.moves.every(({ to }) => {
        const crew = "crew" in to ? [to.crew] : "crews" in to ? [...to.crews] : [];
        return heldKey({ crew, value: "" }, substitution) !== null;
      })
    );
  };
  const seen = new Set([step.by.join(" ")]);
  const others = step.or.filter((stand) => {
    // The order counts: whoever stands first takes over from whoever stood first.
    const key = stand.by.join(" ");
    if (seen.has(key) || !isPossible(stand)) return false;
    seen.add(key);
    return true;
  });
  return [asWritten, ...others];
}
