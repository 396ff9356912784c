import { useEffect, useState, useSyncExternalStore } from "react";
import type { WalkId } from "../../core/units/index.ts";
import { bundledSurprises } from "./bundled-surprises.ts";
import { givenSurprises, surprisesChoice } from "./surprises-choice.ts";

/** The text of the surprises of a walk. */
export interface SurprisesText {
  /** What was chosen, or else what was given to the shelf, or what comes with the procedure; `null` while there is none. */
  readonly text: string | null;
  /** Takes another file. */
  choose(text: string): void;
}

/** The surprises that a trainer chose for a walk, or those that were given to the shelf for its procedure or come with it. */
export function useSurprisesText(walk: WalkId, procedure: string): SurprisesText {
  const chosen = useSyncExternalStore(surprisesChoice.watch, surprisesChoice.current);
  const given = useSyncExternalStore(givenSurprises.watch, givenSurprises.current);
  const [bundled, setBundled] = useState<string | null>(null);
  useEffect(() => {
    let isOver = false;
    // Without them there is still a file to choose.
    bundledSurprises(procedure).then(
      (text) => {
        if (!isOver) setBundled(text);
      },
      () => {},
    );
    return () => {
      isOver = true;
    };
  }, [procedure]);
  return {
    text: chosen?.walk === walk ? chosen.text : (given[procedure] ?? bundled),
    choose: (text) => surprisesChoice.choose({ walk, text }),
  };
}
