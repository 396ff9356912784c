import { useSyncExternalStore } from "react";
import { StoredChoice } from "../session/index.ts";

const NONE: readonly string[] = [];

/** The walks whose guide was put away on this device, the latest last. */
const away = new StoredChoice<readonly string[]>("tetherline.practice-guide-away", NONE);

/** So many walks are remembered; nobody keeps more practice walks than that. */
const MOST = 20;

/** What is stored, unless something else wrote it. */
const stored = (): readonly string[] => {
  const walks = away.current();
  return Array.isArray(walks) ? walks : NONE;
};

/** Puts the guide of a walk away, or brings it back. */
export function putGuideAway(walk: string, isAway: boolean): void {
  const others = stored().filter((one) => one !== walk);
  away.choose(isAway ? [...others, walk].slice(-MOST) : others);
}

/** True while the guide of a walk is put away on this device ([PRA4]). */
export function useGuideAway(walk: string): boolean {
  return useSyncExternalStore(away.watch, () => stored().includes(walk));
}
