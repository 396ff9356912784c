import { describe, expect, it } from "vitest";
import type { FieldSchema } from "../../../src/app/write/field-schema.ts";
import {
  firstValue,
  formOf,
  headSchema,
  listNamedBy,
  memberSchema,
} from "../../../src/app/write/field-schema.ts";
import { FIELD_NAMES, fieldWords } from "../../../src/app/write/field-words.ts";
import { minutesText, timeText, typedDuration, typedTime } from "../../../src/app/write/minutes-text.ts";
import { parseDuration } from "../../../src/core/units/index.ts";

/** Never shown as a field: what the file says of itself, and lists of the table or with a form of their own. */
const NOT_SHOWN = new Set(
  "$schema format places routes items states windows supplies tasks contingencies watches pictures words steps type data".split(
    " ",
  ),
);

function keysOf(schema: FieldSchema, keys = new Set<string>()): Set<string> {
  for (const [key, inner] of Object.entries(schema.properties ?? {})) keysOf(inner, keys.add(key));
  for (const value of schema.enum ?? []) if (!value.includes("/")) keys.add(value);
  for (const inner of [
    ...(schema.anyOf ?? []),
    ...(schema.prefixItems ?? []),
    ...(schema.items ? [schema.items] : []),
  ])
    keysOf(inner, keys);
  return keys;
}

describe("the fields of the file", () => {
  it("[WRT5] each have a name on the screen", () => {
    const keys = [...keysOf(headSchema)].filter((key) => !NOT_SHOWN.has(key));
    expect(keys.length).toBeGreaterThan(60);
    expect(
      keys.filter((key) => fieldWords(key) === key && !(FIELD_NAMES as readonly string[]).includes(key)),
    ).toEqual([]);
    expect(fieldWords("notBefore")).toBe("Not before (PET)");
    expect(fieldWords("a-word-of-the-author")).toBe("a-word-of-the-author");
  });

  it("[WRT5] name members of the lists that the file names there", () => {
    const named = (list: Parameters<typeof listNamedBy>[0], path: string) =>
      listNamedBy(list, path.split(" "));
    expect(named("crew", "start")).toBe("places");
    expect(named("states", "start")).toBeNull();
    expect(named("steps", "moves * to crews")).toBe("crew");
    expect(named("steps", "after * step")).toBe("steps");
    expect(named("watches", "until")).toBe("steps");
    expect(named("steps", "do")).toBeNull();
  });

  it("[WRT5] begin with the least that the schema takes", () => {
    const named = () => [{ id: "hatch", name: "Hatch" }];
    const of = (list: "items" | "steps", key: string) =>
      firstValue(memberSchema(list).properties?.[key] ?? {}, [key], named);
    expect(of("steps", "confirm")).toEqual({ by: "hatch", text: "New text" });
    expect(of("steps", "after")).toEqual(["hatch"]);
    expect(of("steps", "moves")).toEqual([{ item: "hatch", to: { crew: "hatch" } }]);
    expect(of("items", "mass")).toBe(0);
  });

  it("[WRT5] know which of several forms a value has", () => {
    const end = memberSchema("items").properties?.["end"] ?? {};
    expect(
      [{ crew: "a" }, { crews: ["a", "b"] }, { place: "p" }, { item: "i" }].map((one) => formOf(end, one)),
    ).toEqual([0, 1, 2, 3]);
    const spans = memberSchema("windows").properties?.["spans"]?.items || {};
    expect(formOf(spans, { from: "PT1M", to: "PT2M" })).toBe(0);
    expect(formOf(spans, { from: "2031-04-02T09:00:00Z", to: "2031-04-02T10:00:00Z" })).toBe(1);
  });
});

describe("times as they are typed", () => {
  it.each([
    ["3", "PT3M"],
    ["1.5", "PT1M30S"],
    ["1,5", "PT1M30S"],
    ["1:05", "PT1H5M"],
    ["0:01:20", "PT1M20S"],
    ["90 s", "PT1M30S"],
    ["1 h 5 min", "PT1H5M"],
    ["0", "PT0S"],
    ["PT90S", "PT90S"],
  ])("[WRT2] %s is %s", (typed, written) => expect(typedDuration(typed)).toBe(written));

  it.each(["", "soon", "-1", "1:60", "1e9"])("[WRT2] %j is none, and is not taken for another", (typed) =>
    expect(typedDuration(typed)).toBeNull(),
  );

  it("[WRT2] are shown as they can be typed", () => {
    expect(["PT3M", "PT90S", "PT1H5M", "never"].map(minutesText)).toEqual(["3", "1.5", "1:05", "never"]);
    expect(["PT20S", "PT1M20S", "PT1H30S"].map(minutesText)).toEqual(["0:00:20", "0:01:20", "1:00:30"]);
    for (const written of ["PT20S", "PT1M6S", "PT1H0M30S", "PT0.5S", "P1DT1S"])
      expect(parseDuration(typedDuration(minutesText(written)) ?? "")).toBe(parseDuration(written));
    const time = { low: "PT2M", likely: "PT3M", high: "PT1H" };
    expect(timeText(time)).toBe("2/3/1:00");
    expect(typedTime("2/3/1:00")).toEqual(time);
    expect(typedTime("2/3")).toBeNull();
    expect(timeText(undefined)).toBe("");
  });
});
