import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { checkProcedureText } from "../../src/core/check/index.ts";
import { fileWith, step } from "../core/procedure-builder.ts";

const { valid, notValid } = JSON.parse(readFileSync("tests/truth/fixtures/unit-codes.json", "utf8")) as {
  valid: string[];
  notValid: string[];
};

const isRefused = (unit: string) =>
  checkProcedureText(
    JSON.stringify(fileWith([step("read", "ev1", 1, { records: [{ id: "value", unit }] })])),
  ).findings.some(({ code }) => code === "unit/not-valid");

describe("units against published cases of UCUM", () => {
  it.each(valid)("[PRO19] %s is a code", (unit) => {
    expect(isRefused(unit)).toBe(false);
  });
  it.each(notValid)("[PRO19] %s is none", (unit) => {
    expect(isRefused(unit)).toBe(true);
  });
});
