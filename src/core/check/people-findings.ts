import { message } from "../../words/index.ts";
import type { Plan } from "../plan/index.ts";
import type { Finding } from "../procedure/index.ts";
import { finding } from "../procedure/index.ts";
import type { PlaceId } from "../units/index.ts";
import { callsOf, placeLabel } from "./item-words.ts";

/**
 * Returns findings for steps at a place outside that only people inside or on the ground do ([PRO15]). A place is
 * outside unless it is a refuge or one of those people starts there. With somebody who is outside, the others take part
 * by voice.
 */
export function peopleFindings({ outline, network }: Plan): Finding[] {
  const isInside = (lane: number) => outline.crew[lane]?.station !== "outside";
  const indoors = new Set<PlaceId>(
    outline.crew.flatMap(({ start, station }) => (station !== "outside" && start ? [start] : [])),
  );
  return outline.steps.flatMap(({ index, step, pointer, performers }) => {
    if (!network.activity.active[index] || !performers.every(isInside)) return [];
    return (["at", "to"] as const).flatMap((key) => {
      const place = step[key];
      if (place === undefined || indoors.has(place) || outline.place(place)?.refuge) return [];
      const outside = message("place/inside-works-outside", {
        step: step.id,
        place: placeLabel(outline, place),
        crew: callsOf(outline, step.by),
      });
      return [
        finding("error", "place/inside-works-outside", `${pointer}/${key}`, outside, {
          steps: [step.id],
          things: [...step.by, place],
        }),
      ];
    });
  });
}
