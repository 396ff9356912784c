import type { Step, StepRecord, Supply } from "../procedure/index.ts";
import type { Reading } from "../supply/index.ts";
import { impossibleReading } from "../supply/index.ts";
import type { Instant } from "../units/index.ts";
import { between } from "../units/index.ts";
import type { Ledger, SupplyReading } from "./ledger.ts";

type Gauge = Pick<SupplyReading, "crew" | "supply">;

const gaugeKey = ({ crew, supply }: Gauge): string => JSON.stringify([crew, supply]);

const known = new WeakMap<Ledger["readings"], ReadonlyMap<string, readonly SupplyReading[]>>();

/** Sorts the readings by gauge. The result is cached, since it is asked for each supply and in each second. */
function byGauge(readings: Ledger["readings"]): ReadonlyMap<string, readonly SupplyReading[]> {
  const kept = known.get(readings);
  if (kept) return kept;
  const found = new Map<string, SupplyReading[]>();
  for (const reading of readings) {
    const key = gaugeKey(reading);
    const same = found.get(key);
    if (same) same.push(reading);
    else found.set(key, [reading]);
  }
  known.set(readings, found);
  return found;
}

/** Returns all readings of the gauge of a supply, in the order of the log, those that cannot be true included. */
export function gaugeReadings(
  ledger: Pick<Ledger, "readings">,
  { crew, id }: Supply,
): readonly SupplyReading[] {
  return byGauge(ledger.readings).get(gaugeKey({ crew, supply: id })) ?? [];
}

/**
 * Returns the readings of a supply that its forecast goes by, in the order of the log, with their PETs. A reading that
 * cannot be true stays in the log and is not counted: it would either hide that a supply runs out, or make it seem to
 * have run out long ago ([OFF7]).
 */
export function readingsOf(ledger: Ledger, supply: Supply): readonly Reading[] {
  const petZero = ledger.petZero ?? ledger.opened.at;
  const found: Reading[] = [];
  for (const { at, value } of gaugeReadings(ledger, supply)) {
    if (impossibleReading(supply, value) === null) found.push({ at: between(petZero, at), value });
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
