import type { Supply } from "../procedure/index.ts";
import { supplyForecast } from "../supply/index.ts";
import type { Duration, Instant } from "../units/index.ts";
import { between, later } from "../units/index.ts";
import type { Ledger, PlayedMove } from "../walk/index.ts";
import { progressOf, readingsOf } from "../walk/index.ts";
import type { SurpriseEffect } from "./surprises-file.ts";

type SupplyFalls = Extract<SurpriseEffect, { kind: "supply" }>;

/** How often a played crew reads a supply that falls faster. */
const EVERY = (10 * 60_000) as Duration;

const HOUR = 3_600_000;
/** A gauge is read to so many parts of its range. */
const PARTS = 1_000;

/** A supply that falls faster, from an instant on. */
interface Falling {
  readonly does: SupplyFalls;
  readonly began: Instant;
  readonly isFired: boolean;
}

function supplyMeant({ inForce: { outline } }: Ledger, { crew, supply }: SupplyFalls): Supply | null {
  return outline.procedure.supplies.find((one) => one.crew === crew && one.id === supply) ?? null;
}

/**
 * The level of a supply that falls faster from `began` on, at an instant: as forecast up to then ([FOR3]), from there by the
 * faster rate; cut to a thousandth of its range, and never below zero. `null` where there is no such supply in this unit.
 */
export function fallingLevel(
  ledger: Ledger,
  does: SupplyFalls,
  began: Instant,
  at: Instant,
  unit?: string,
): number | null {
  const supply = supplyMeant(ledger, does);
  if (!supply || ledger.petZero === null || (unit !== undefined && unit !== supply.unit)) return null;
  const turn = between(ledger.petZero, at < began ? at : began);
  const before = readingsOf(ledger, supply).filter((reading) => reading.at <= turn);
  const level = supplyForecast(supply, before, turn).level;
  const fallen = at > began ? (between(began, at) / HOUR) * supply.perHour * does.factor : 0;
  const part = Math.abs(supply.full) / PARTS || 1;
  // Multiples of a decimal fraction would carry digits that no gauge shows.
  return Number((Math.floor(Math.max(0, level - fallen) / part) * part).toPrecision(6));
}

/**
 * The next reading of a supply that falls faster: every ten minutes, from PET 0 where it was known beforehand and from the
 * firing where it was fired, so that the first reading betrays nothing; `null` once the owner's steps are done.
 */
export function nextReading(ledger: Ledger, { does, began, isFired }: Falling): PlayedMove | null {
  const { petZero } = ledger;
  const supply = supplyMeant(ledger, does);
  if (!supply || petZero === null || isOver(ledger, supply)) return null;
  const since = isFired ? began : petZero;
  let last: Instant | null = null;
  for (const reading of ledger.readings) {
    const isOwn = reading.crew === does.crew && reading.supply === does.supply && reading.at >= since;
    if (isOwn && (last === null || reading.at > last)) last = reading.at;
  }
  const at = last === null ? since : later(last, EVERY);
  const value = fallingLevel(ledger, does, began, at);
  if (value === null) return null;
  const data = { crew: does.crew, supply: does.supply, value };
  return { at, drafts: [{ name: "supply.read", data, at, actor: does.crew }] };
}

function isOver({ inForce: { outline }, network, steps }: Ledger, { crew }: Supply): boolean {
  return !outline.steps.some(
    ({ index, step, getAhead }) =>
      !getAhead &&
      step.by.includes(crew) &&
      network.activity.active[index] &&
      progressOf({ steps }, step.id).status === "open",
  );
}
