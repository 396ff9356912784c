import type { Figure, Quantity } from "../core/quantity/index.ts";

/** A quantity in the units of the reader; `null` where it is shown as written alone. */
export type InReadersUnits = (quantity: Quantity) => Figure | null;

/** In which of the ways that a reader may choose things are told, whatever the language. */
interface Telling {
  readonly inReadersUnits: InReadersUnits;
}

/** As it was written, with nothing beside it: what a reader gets who chose nothing, and every machine. */
const PLAIN: Telling = { inReadersUnits: () => null };

let inUse = PLAIN;

/** How things are told now. */
export const telling = (): Telling => inUse;

/** Chooses the units that quantities are shown in beside those as written, from here on; `null` for none ([WRD5]). */
export function showUnits(inReadersUnits: InReadersUnits | null): void {
  inUse = { ...inUse, inReadersUnits: inReadersUnits ?? PLAIN.inReadersUnits };
}

/** Returns what `work` does at once, with whatever it words told as a machine is told it: as written, whatever a reader has chosen. */
export function forMachines<Result>(work: () => Result): Result {
  const before = inUse;
  inUse = PLAIN;
  try {
    return work();
  } finally {
    inUse = before;
  }
}
