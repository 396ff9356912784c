import { readFileSync } from "node:fs";
import { fc, test } from "@fast-check/vitest";
import { describe, expect } from "vitest";
import { checkProcedureText } from "../../../src/core/check/index.ts";
import { said } from "../said.ts";

const text = readFileSync("procedures/osier-bring-in.procedure.json", "utf8");
type Json = null | boolean | number | string | Json[] | { [key: string]: Json };

/** Replaces, drops or doubles one part somewhere in a JSON value; `choices` say where. */
function disturbed(value: Json, choices: readonly number[], junk: Json): Json {
  const [choice = 0, ...rest] = choices;
  if (rest.length === 0 || typeof value !== "object" || value === null) return junk;
  const keys = Object.keys(value);
  const key = keys[choice % Math.max(1, keys.length)];
  if (key === undefined) return junk;
  if (Array.isArray(value)) {
    const index = Number(key);
    return choice % 5 === 0
      ? value.toSpliced(index, 1)
      : choice % 5 === 1
        ? value.toSpliced(index, 0, value[index] ?? null)
        : value.with(index, disturbed(value[index] ?? null, rest, junk));
  }
  return { ...value, [key]: disturbed(value[key] ?? null, rest, junk) };
}

const words = [...new Set(text.match(/(?<=")[a-z0-9-]+(?=")/g))];
const anyJunk = fc.oneof(
  fc.jsonValue() as fc.Arbitrary<Json>,
  fc.constantFrom(...words, "__proto__", "constructor", "PT0S", "PT1H", "P366D", "2031-04-02T09:12:31Z"),
  fc.constantFrom<Json>([], {}, null, 0, -1, 1e308, ""),
);

describe("the checker", () => {
  test.prop([fc.oneof(fc.string(), fc.json())])("[CHK4] never throws, whatever the text", (any) => {
    const { findings, procedure } = checkProcedureText(any);
    expect(procedure).toBeNull();
    expect(findings.length).toBeGreaterThan(0);
  });

  test.prop(
    [
      fc.array(fc.tuple(fc.array(fc.nat(), { minLength: 1, maxLength: 8 }), anyJunk), {
        minLength: 1,
        maxLength: 3,
      }),
    ],
    { numRuns: 300 },
  )(
    "[CHK4] never throws on a procedure that has been disturbed, and every finding is whole",
    (disturbances) => {
      const file = disturbances.reduce<Json>(
        (value, [choices, junk]) => disturbed(value, choices, junk),
        JSON.parse(text) as Json,
      );
      const { findings, procedure } = checkProcedureText(JSON.stringify(file));
      if (procedure === null) expect(findings.some(({ level }) => level === "error")).toBe(true);
      for (const one of findings) {
        expect(one.code).toMatch(/^[a-z]+\/[a-z-]+$/);
        expect(said(one)).not.toMatch(/undefined|NaN|\[object/);
        expect(one.pointer).toMatch(/^(\/|$)/);
      }
    },
    60_000,
  );
});
