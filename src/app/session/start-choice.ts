import { useSyncExternalStore } from "react";
import type { Instant } from "../../core/units/index.ts";
import { formatInstant, Listeners, parseInstant } from "../../core/units/index.ts";

const chosen = new Map<string, Instant>();
const listeners = new Listeners();

/** Keeps the instant of PET 0 that a procedure is planned with, for all pages until the app is loaded anew. */
export function chooseStart(procedure: string, start: Instant): void {
  chosen.set(procedure, start);
  listeners.tell();
}

/** The instant of PET 0 that a procedure is planned with; `null` until one is chosen. */
export function useStartChoice(procedure: string): Instant | null {
  return useSyncExternalStore(listeners.add, () => chosen.get(procedure) ?? null);
}

/** The address of a page of its own of a procedure, printable or for the audience of a briefing, with the start it is planned with. The page is loaded anew. */
export function printAddress(
  procedure: string,
  start: Instant | null,
  as: "print" | "cards" | "poster" | "storyboard" | "audience" = "print",
): string {
  return start === null ? `/${as}/${procedure}` : `/${as}/${procedure}?start=${formatInstant(start)}`;
}

/** The start in the query of an address such as {@link printAddress} gives; `null` where there is no sound one. */
export function startInQuery(query: string): Instant | null {
  return parseInstant(new URLSearchParams(query).get("start") ?? "");
}
