import type { Briefing, Cue } from "./briefing.ts";

/**
 * Two briefings played by one clock: the chapters of the first, the cues of both, and the later finish. A cue that both
 * have stands once, with the steps of both.
 */
export function sideBySide(first: Briefing, second: Briefing): Briefing {
  const cues = new Map<Cue["pet"], Cue>();
  for (const { pet, steps } of [...first.cues, ...second.cues]) {
    const before = cues.get(pet)?.steps ?? [];
    cues.set(pet, { pet, steps: [...before, ...steps.filter((step) => !before.includes(step))] });
  }
  return {
    ...first,
    cues: [...cues.values()].toSorted((a, b) => a.pet - b.pet),
    finish: first.finish > second.finish ? first.finish : second.finish,
  };
}
