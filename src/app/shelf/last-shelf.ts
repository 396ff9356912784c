import type { WalkCard } from "../../io/store/index.ts";
import { StoredChoice } from "../session/index.ts";

/** What of a walk stands on the shelf whatever else is known of it. */
export type ListedWalk = Pick<WalkCard, "walk" | "title" | "phase" | "mode">;
/** What of a procedure that was brought in stands on the shelf whatever else is known of it. */
export interface ListedProcedure {
  readonly key: string;
  readonly title: string;
  readonly revision: string | null;
  readonly isReadable: boolean;
}

/** The most of each that are kept: what comes after them is not on the first screen. */
const MOST = 50;

const kept = {
  walks: new StoredChoice<readonly ListedWalk[]>("tetherline.listed-walks", []),
  procedures: new StoredChoice<readonly ListedProcedure[]>("tetherline.listed-procedures", []),
} as const;

const listIn = (value: unknown): readonly Partial<Record<string, unknown>>[] =>
  Array.isArray(value) ? value.filter((one) => typeof one === "object" && one !== null) : [];

const PHASES: ReadonlySet<unknown> = new Set([
  "prepared",
  "running",
  "held",
  "closed",
] satisfies ListedWalk["phase"][]);

/** The walks that were listed last on this device, so that the shelf stands as it will before they are read. Not their facts. */
export function lastWalks(): readonly ListedWalk[] {
  return listIn(kept.walks.current()).flatMap(({ walk, title, phase, mode }) =>
    typeof walk === "string" && (typeof title === "string" || title === null) && PHASES.has(phase)
      ? [{ walk, title, phase, mode: mode === "rehearsal" || mode === "live" ? mode : null } as ListedWalk]
      : [],
  );
}

/** The procedures brought in that were listed last on this device. */
export function lastProcedures(): readonly ListedProcedure[] {
  return listIn(kept.procedures.current()).flatMap(({ key, title, revision, isReadable }) =>
    typeof key === "string" && typeof title === "string"
      ? [
          {
            key,
            title,
            revision: typeof revision === "string" ? revision : null,
            isReadable: isReadable === true,
          },
        ]
      : [],
  );
}

/** Keeps which walks are listed now. */
export function keepWalks(walks: readonly ListedWalk[]): void {
  kept.walks.choose(
    walks.slice(0, MOST).map(({ walk, title, phase, mode }) => ({ walk, title, phase, mode })),
  );
}

/** Keeps which procedures brought in are listed now. */
export function keepProcedures(procedures: readonly ListedProcedure[]): void {
  kept.procedures.choose(
    procedures
      .slice(0, MOST)
      .map(({ key, title, revision, isReadable }) => ({ key, title, revision, isReadable })),
  );
}
