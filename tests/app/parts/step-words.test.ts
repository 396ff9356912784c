import { describe, expect, it } from "vitest";
import {
  behindTone,
  behindWords,
  callsOf,
  limitWords,
  locationWords,
  spanText,
} from "../../../src/app/parts/index.ts";
import type { StepRecord } from "../../../src/core/procedure/index.ts";
import type { CrewId, Duration, ItemId, PlaceId, RecordId } from "../../../src/core/units/index.ts";
import { outlineFrom, step } from "../../core/procedure-builder.ts";

const outline = outlineFrom([step("a", "ev1", 1)], {
  places: [{ id: "hatch", label: "Hatch" }],
  items: [{ id: "bag", label: "Tool bag", start: { crew: "ev1" } }],
});
const crew = (id: string) => id as CrewId;
const minutes = (count: number) => (count * 60_000) as Duration;
const record = (more: Partial<StepRecord>): StepRecord =>
  ({ id: "torque" as RecordId, unit: "N.m", ...more }) as StepRecord;

describe("words on the screens", () => {
  it("name crew members by call sign, in a list", () => {
    expect(callsOf(outline, [])).toBe("");
    expect(callsOf(outline, ["ev1", "ev2", "iv"].map(crew))).toBe("EV1, EV2 and IV");
    expect(callsOf(outline, [crew("stranger")])).toBe("stranger");
  });

  it("say how far off the plan in minutes, and under a minute that it is on plan", () => {
    expect(behindWords(null)).toBe("no plan");
    expect(behindWords(59_999 as Duration)).toBe("on plan");
    expect(behindWords(minutes(6))).toBe("6 min behind");
    expect(behindWords(minutes(-2))).toBe("2 min ahead");
    expect([minutes(6), minutes(-2), minutes(0), null].map(behindTone)).toEqual([
      "late",
      "early",
      undefined,
      undefined,
    ]);
  });

  it("say where an item is", () => {
    expect(locationWords(outline, { crew: crew("ev1") })).toBe("with EV1");
    expect(locationWords(outline, { place: "hatch" as PlaceId })).toBe("at Hatch");
    expect(locationWords(outline, { item: "bag" as ItemId })).toBe("in Tool bag");
    expect(locationWords(outline, undefined)).toBe("nowhere known");
  });

  it("write units and limits as people do", () => {
    expect(limitWords(record({ min: 11, max: 13 }))).toBe("11 to 13 N·m");
    expect(limitWords(record({ min: 4 }))).toBe("at least 4 N·m");
    expect(limitWords(record({ max: 0 }))).toBe("at most 0 N·m");
    expect(limitWords(record({}))).toBe("");
    expect(spanText(minutes(61), minutes(65))).toBe("1:01–1:05");
    expect(spanText(minutes(61), minutes(61))).toBe("1:01");
  });
});
