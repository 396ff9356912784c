import { message } from "../../words/index.ts";
import { parseDuration } from "../units/index.ts";
import { doubledIds } from "./declared-ids.ts";
import { errorAt } from "./error-at.ts";
import type { Finding } from "./finding.ts";
import type { RawPart } from "./raw-file.ts";
import { entries, member, textOf } from "./raw-file.ts";
import type { RawStep } from "./raw-step.ts";
import { namedStep } from "./raw-step.ts";
import type { Resolve } from "./resolve-reference.ts";
import { locationFindings } from "./resolve-reference.ts";

/** The errors in what one step says by itself: who, where, in which windows, what it moves and records, how long. */
export function stepFindings(step: RawStep, resolve: Resolve): Finding[] {
  const { part } = step;
  return [
    ...performerFindings(step, resolve),
    ...["at", "to", "anchor"].flatMap((key) => resolve("place", member(part, key), step)),
    ...entries(member(part, "within")).flatMap((window) => resolve("window", window, step)),
    ...entries(member(part, "moves")).flatMap((move) => [
      ...resolve("item", member(move, "item"), step),
      ...locationFindings(resolve, member(move, "to"), step),
    ]),
    ...resolve("crew-member", member(member(part, "confirm"), "by"), step),
    ...doubledIds(entries(member(part, "records")), "record"),
    ...entries(member(part, "records")).flatMap((record) => limitFindings(step, record)),
    ...entries(member(part, "or")).flatMap((stand) => standFindings(step, stand, resolve)),
    ...entries(member(part, "pictures")).flatMap((picture) => resolve("picture", picture, step)),
    ...timeFindings(step),
  ];
}

/** The errors in one of those who could do a step instead: a list of crew members, or `by` with a time. */
function standFindings(step: RawStep, stand: RawPart, resolve: Resolve): Finding[] {
  const by = Array.isArray(stand.value) ? stand : member(stand, "by");
  return [...crewFindings(step, by, resolve), ...timeOrder(step, member(stand, "time"))];
}

function performerFindings(step: RawStep, resolve: Resolve): Finding[] {
  return crewFindings(step, member(step.part, "by"), resolve);
}

function crewFindings(step: RawStep, by: RawPart, resolve: Resolve): Finding[] {
  const crew = entries(by);
  const found = crew.flatMap((one) => resolve("crew-member", one, step));
  if (new Set(crew.map(({ value }) => value)).size < crew.length)
    found.push(errorAt(by, "file/doubled-id", message("file/crew-twice"), { steps: namedStep(step) }));
  return found;
}

function limitFindings(step: RawStep, record: RawPart): Finding[] {
  const [min, max] = [member(record, "min").value, member(record, "max").value];
  if (typeof min !== "number" || typeof max !== "number" || min <= max) return [];
  const said = message("file/limits-crossed", { least: min, most: max });
  return [errorAt(member(record, "min"), "file/wrong-value", said, { steps: namedStep(step) })];
}

/** The errors in the duration of a step ([PRO6]): only a translation may leave it out, and low ≤ likely ≤ high. */
function timeFindings(step: RawStep): Finding[] {
  const steps = namedStep(step);
  const time = member(step.part, "time");
  if (time.value === undefined) {
    const isTranslation = member(step.part, "to").value !== undefined;
    return isTranslation ? [] : [errorAt(step.part, "time/missing", message("time/missing"), { steps })];
  }
  return timeOrder(step, time);
}

function timeOrder(step: RawStep, time: RawPart): Finding[] {
  const [low, likely, high] = ["low", "likely", "high"].map((key) =>
    parseDuration(textOf(member(time, key)) ?? ""),
  );
  if (low == null || likely == null || high == null || (low <= likely && likely <= high)) return [];
  return [errorAt(time, "time/out-of-order", message("time/out-of-order"), { steps: namedStep(step) })];
}
