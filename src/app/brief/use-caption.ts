import type { Briefing, CaptionLine } from "../../core/briefing/index.ts";
import { captionPlayedAt } from "../../core/briefing/index.ts";
import { spellAt } from "../../core/course/index.ts";
import type { ShownPet } from "../worksite/index.ts";
import { useReadAt } from "../worksite/index.ts";

/** The caption of the PET that is shown. Who asks is drawn anew from event to event, and not with each picture. */
export function useCaption(
  briefing: Briefing,
  shown: ShownPet,
  grain: "step" | "task",
): readonly CaptionLine[] {
  useReadAt(shown, (pet) => spellAt(briefing.course, pet));
  useReadAt(shown, (pet) => pet >= briefing.finish);
  return captionPlayedAt(briefing, shown.pet(), grain);
}
