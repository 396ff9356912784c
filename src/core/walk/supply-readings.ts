import type { Step, StepRecord, Supply } from "../procedure/index.ts";
import type { Reading } from "../supply/index.ts";
import { impossibleReading } from "../supply/index.ts";
import type { Instant } from "../units/index.ts";
import { between } from "../units/index.ts";
import type { Ledger } from "./ledger.ts";

/**
 * Returns the readings of a supply that its forecast goes by, in the order of the log, with their PETs. A reading that
 * cannot be true stays in the log and is not counted: it would either hide that a supply runs out, or make it seem to
 * have run out long ago ([OFF7]).
 */
export function readingsOf(ledger: Ledger, supply: Supply): readonly Reading[] {
  const petZero = ledger.petZero ?? ledger.opened.at;
  const found: Reading[] = [];
  for (const { crew, supply: id, at, value } of ledger.readings) {
    if (crew !== supply.crew || id !== supply.id || impossibleReading(supply, value) !== null) continue;
    found.push({ at: between(petZero, at), value });
  }
  return found;
}

/**
 * Returns the readings with the value of a record that is bound to a supply ([OFF7]): a reading of the first performer who
 * has that supply. A record in another unit than the supply's is none.
 */
export function withReading(
  { readings, inForce: { outline } }: Ledger,
  { by }: Step,
  record: StepRecord,
  { at, value }: { readonly at: Instant; readonly value: number },
): Ledger["readings"] {
  const owner = by.find((crew) =>
    outline.procedure.supplies.some(
      (one) => one.crew === crew && one.id === record.supply && one.unit === record.unit,
    ),
  );
  return owner === undefined || record.supply === undefined
    ? readings
    : readings.and({ at, crew: owner, supply: record.supply, value });
}
