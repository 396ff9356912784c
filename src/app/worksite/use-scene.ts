import { useEffect, useMemo, useRef } from "react";
import type { CardDetail, WorksiteGround, WorksiteMoment, WorksiteScene } from "../../core/worksite/index.ts";
import { worksiteScene } from "../../core/worksite/index.ts";
import { inWords } from "../../words/index.ts";

/** A moment on the ground of a map, with the cards in the slots that they had in the moment shown before ([MAP7]). */
export function useScene(ground: WorksiteGround, moment: WorksiteMoment, detail: CardDetail): WorksiteScene {
  const shown = useRef<WorksiteScene | null>(null);
  const scene = useMemo(
    () => worksiteScene(ground, moment, { say: inWords, detail }, shown.current),
    [ground, moment, detail],
  );
  useEffect(() => {
    shown.current = scene;
  }, [scene]);
  return scene;
}
