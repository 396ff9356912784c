import type { Outline } from "../procedure/index.ts";
import type { CrewId } from "../units/index.ts";

/** The call signs of crew members; an unknown id is shown as it is. */
export const callsOf = (outline: Outline, crew: readonly CrewId[]): string[] =>
  crew.map((id) => outline.crewMember(id)?.call ?? id);

/** What a window is called; an unknown id is shown as it is. */
export const windowLabel = (outline: Outline, id: string): string =>
  outline.procedure.windows.find((window) => window.id === id)?.label ?? id;
