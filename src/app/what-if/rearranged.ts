import { canBeShifted, shiftedWindow } from "../../core/changes/index.ts";
import type { Change, Outline } from "../../core/procedure/index.ts";
import type { CrewId, Duration, TaskId, WindowId } from "../../core/units/index.ts";

/** Tasks, windows and people that are tried elsewhere than in the file. */
export interface Rearranged {
  /** The task that each of these stands behind; `null` for the first place. They are moved in this order. */
  readonly moved: ReadonlyMap<TaskId, TaskId | null>;
  /** How much later these windows come; below zero for earlier. */
  readonly shifted: ReadonlyMap<WindowId, Duration>;
  /** The two people who change places in these tasks. */
  readonly swapped: ReadonlyMap<TaskId, readonly [CrewId, CrewId]>;
}

/** Everything where the file has it. */
export const NOT_REARRANGED: Rearranged = { moved: new Map(), shifted: new Map(), swapped: new Map() };

/** The changes that move tasks. A task is not moved behind itself. */
export function movesOf({ moved }: Rearranged): Change[] {
  return [...moved].flatMap(([move, behind]): Change[] => {
    if (move === behind) return [];
    return [behind === null ? { move, list: "tasks", first: true } : { move, list: "tasks", behind }];
  });
}

/** The changes that shift windows. */
export function shiftsOf({ shifted }: Rearranged, { procedure }: Outline): Change[] {
  return procedure.windows.flatMap((window): Change[] => {
    const by = shifted.get(window.id);
    return by === undefined || by === 0 || !canBeShifted(window) ? [] : [shiftedWindow(window, by)];
  });
}
