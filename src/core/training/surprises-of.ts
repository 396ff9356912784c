import type { Instant } from "../units/index.ts";
import { later } from "../units/index.ts";
import type { Ledger } from "../walk/index.ts";
import { inWork, progressOf } from "../walk/index.ts";
import { readObscured } from "./obscured.ts";
import type { Surprise } from "./surprises-file.ts";

/** A surprise that a walk carries. */
export interface CarriedSurprise {
  readonly surprise: Surprise;
  /** True when a trainer fired it; false when it comes when it says itself. */
  readonly isFired: boolean;
  /** Who entered it; `null` when the entry names nobody. */
  readonly actor: string | null;
  readonly entered: Instant;
  /** When it came, or comes as things stand; `null` while that cannot be told. */
  readonly began: Instant | null;
}

/**
 * The surprises that the log of a walk tells of, in its order, each once: a surprise that was laid and is fired comes when it
 * was fired, if it had not come before. What this program cannot read is left out.
 */
export function surprisesOf(ledger: Ledger): readonly CarriedSurprise[] {
  const carried = new Map<string, CarriedSurprise>();
  for (const { obscured, isFired, actor, at } of ledger.surprises) {
    const surprise = readObscured(ledger.opened.walk, obscured);
    if (!surprise) continue;
    const before = carried.get(surprise.id);
    const began = beginning(ledger, surprise, isFired ? at : null);
    const isEarlier = before?.began == null || (began !== null && began < before.began);
    if (before && !(isFired && !before.isFired && isEarlier)) continue;
    carried.set(surprise.id, { surprise, isFired, actor, entered: at, began });
  }
  return [...carried.values()];
}

/** When a surprise comes: at the instant it was fired at, or else when it says itself. Never before the clock was started. */
function beginning(ledger: Ledger, { when }: Surprise, fired: Instant | null): Instant | null {
  const { petZero } = ledger;
  if (petZero === null) return null;
  if (fired !== null) return fired > petZero ? fired : petZero;
  if ("pet" in when) return later(petZero, when.pet);
  // The seed has drawn a PET before it is entered; one that was entered otherwise comes at the earliest.
  if ("from" in when) return later(petZero, when.from);
  if ("step" in when) {
    const { start, saidStart } = progressOf(ledger, when.step);
    return start ?? saidStart ?? inWork(ledger, Number.MAX_SAFE_INTEGER as Instant).get(when.step) ?? null;
  }
  return arrivalAt(ledger, when);
}

/** When somebody, or the crew member named, has first moved to a place; PET 0 for who was there from the start. */
function arrivalAt(
  { inForce: { outline }, petZero, steps }: Ledger,
  { place, crew }: Extract<Surprise["when"], { place: unknown }>,
): Instant | null {
  const isMeant = (id: string) => crew === undefined || crew === id;
  if (outline.crew.some(({ id, start }) => start === place && isMeant(id))) return petZero;
  let first: Instant | null = null;
  for (const { step } of outline.steps) {
    if (step.to !== place || !step.by.some(isMeant)) continue;
    const progress = steps.get(step.id);
    if (progress?.status !== "done" || progress.finish === null) continue;
    if (first === null || progress.finish < first) first = progress.finish;
  }
  return first;
}
