import { stepSource } from "../plan/index.ts";
import type { Duration } from "../units/index.ts";
import type { Surprise, SurprisesFile } from "./surprises-file.ts";

/**
 * The surprises of a file that a seed lets come, in the order of the file, those between two PETs at the one that was drawn, to the
 * second. Each has draws of its own, so that another surprise in the file changes nothing of the others ([TRN2]).
 */
export function drawnSurprises(file: SurprisesFile, seed: number): readonly Surprise[] {
  return file.surprises.flatMap((surprise) => {
    const draw = stepSource(surprise.id, seed);
    const comes = draw() < surprise.chance;
    if (!comes) return [];
    const { when } = surprise;
    if (!("from" in when)) return [surprise];
    const pet = when.from + Math.floor((draw() * (when.to - when.from)) / SECOND) * SECOND;
    return [{ ...surprise, when: { pet: pet as Duration } }];
  });
}

const SECOND = 1_000;
