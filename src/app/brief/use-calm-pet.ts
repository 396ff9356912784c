import { useMemo } from "react";
import type { Briefing } from "../../core/briefing/index.ts";
import { cueAt } from "../../core/briefing/index.ts";
import type { ShownPet } from "../worksite/index.ts";
import { useIsCalm } from "./use-media.ts";

/** The PET that is shown of a briefing. With less motion it stays at the present cue until the next while it is played. */
export function useCalmPet(briefing: Briefing, played: ShownPet, isPlaying: boolean): ShownPet {
  const isByCue = useIsCalm() && isPlaying;
  return useMemo(() => {
    if (!isByCue) return played;
    const pet = () => cueAt(briefing, played.pet())?.pet ?? played.pet();
    return { pet, subscribe: played.subscribe };
  }, [briefing, played, isByCue]);
}
