import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { Outline } from "../procedure/index.ts";
import { measuredAgainst } from "../quantity/index.ts";
import type { Surprise } from "./surprises-file.ts";

const callOf = (outline: Outline, crew: string) => outline.crew[outline.lane(crew)]?.call ?? crew;

/** A step by its number and what is to be done; its id where the procedure in force has it no more. */
function stepNamed(outline: Outline, id: string): string {
  const entry = outline.step(id);
  return entry ? `${entry.number} ${entry.step.do}` : id;
}

/** What a surprise brings about, as a sentence. */
export function effectMessage(outline: Outline, { does }: Surprise): Message {
  switch (does.kind) {
    case "stretch":
      return message("surprise/stretch", {
        step: stepNamed(outline, does.step),
        factor: String(does.factor),
      });
    case "record": {
      const record = outline.step(does.step)?.step.records.find(({ id }) => id === does.record);
      return message("surprise/record", {
        step: stepNamed(outline, does.step),
        record: record?.label ?? does.record,
        value: record ? measuredAgainst(record, does.value) : { value: does.value, unit: "1" },
      });
    }
    case "missing":
      return message("surprise/missing", {
        item: outline.item(does.item)?.label ?? does.item,
        time: does.for,
      });
    case "silent":
      return message("surprise/silent", { crew: callOf(outline, does.crew), time: does.for });
    case "contact":
      return message("surprise/contact", { time: does.for });
    case "supply": {
      const supply = outline.procedure.supplies.find(
        ({ crew, id }) => crew === does.crew && id === does.supply,
      );
      return message("surprise/supply", {
        crew: callOf(outline, does.crew),
        supply: supply?.label ?? does.supply,
        factor: String(does.factor),
      });
    }
    case "decision":
      return message("surprise/decision", {
        ask: outline.decision(does.decision)?.decision.ask ?? does.decision,
        outcome: does.outcome,
      });
  }
}

/** When a surprise comes if nobody fires it, as a part of a sentence. */
export function whenMessage(outline: Outline, { when }: Surprise): Message {
  if ("pet" in when) return message("surprise/at-pet", { pet: when.pet });
  if ("from" in when) return message("surprise/between", { from: when.from, to: when.to });
  if ("step" in when) return message("surprise/at-step", { step: stepNamed(outline, when.step) });
  const place = outline.place(when.place)?.label ?? when.place;
  return when.crew === undefined
    ? message("surprise/at-place", { place })
    : message("surprise/crew-at-place", { crew: callOf(outline, when.crew), place });
}

/** Who should notice a surprise, by call sign. */
export function expectedCrew(outline: Outline, { expect }: Surprise): readonly string[] {
  return expect.who.map((crew) => callOf(outline, crew));
}
