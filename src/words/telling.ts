import type { Figure, Quantity } from "../core/quantity/index.ts";
import type { UtcStyle } from "./utc-text.ts";

/** A quantity in the units of the reader; `null` where it is shown as written alone. */
export type InReadersUnits = (quantity: Quantity) => Figure | null;

/** In which of the ways that a reader may choose things are told, whatever the language. */
interface Telling {
  readonly inReadersUnits: InReadersUnits;
  readonly utc: UtcStyle;
}

/** As it was written, with nothing beside it: what a reader gets who chose nothing, and every machine. */
const PLAIN: Telling = { inReadersUnits: () => null, utc: "plain" };

let inUse = PLAIN;

/** How things are told now. */
export const telling = (): Telling => inUse;

/** Chooses the units that quantities are shown in beside those as written, from here on; `null` for none ([WRD5]). */
export function showUnits(inReadersUnits: InReadersUnits | null): void {
  inUse = { ...inUse, inReadersUnits: inReadersUnits ?? PLAIN.inReadersUnits };
}

/** Chooses how instants of UTC are told from here on ([WRD6]). */
export function showUtc(utc: UtcStyle): void {
  inUse = { ...inUse, utc };
}

/** Returns what `work` does at once, with whatever it words told as a machine is told it: as written, with dates, whatever a reader has chosen. */
export function forMachines<Result>(work: () => Result): Result {
  const before = inUse;
  inUse = PLAIN;
  try {
    return work();
  } finally {
    inUse = before;
  }
}
