import { describe, expect, it } from "vitest";
import { laterTries, playwrightCounts, ReportError, vitestCounts } from "../machine/test-counts.ts";

describe("the counts of the closing line", () => {
  it("come from Vitest's report", () => {
    expect(vitestCounts({ numPassedTests: 12, numFailedTests: 0, success: true })).toEqual({
      passed: 12,
      failed: 0,
    });
    expect(vitestCounts({ numPassedTests: 12, numFailedTests: 3, success: false })).toEqual({
      passed: 12,
      failed: 3,
    });
  });

  it("count a test file that could not be loaded", () => {
    expect(vitestCounts({ numPassedTests: 12, numFailedTests: 0, success: false })).toEqual({
      passed: 12,
      failed: 1,
    });
    expect(playwrightCounts({ stats: { expected: 0, unexpected: 0, flaky: 0 }, errors: [{}] })).toEqual({
      passed: 0,
      failed: 1,
    });
  });

  it("come from Playwright's report, where what passes at another try has passed and is told of", () => {
    const report = { stats: { expected: 9, unexpected: 1, flaky: 2 }, errors: [] };
    expect(playwrightCounts(report)).toEqual({ passed: 11, failed: 1 });
    expect(laterTries(report)).toBe(2);
  });

  it("are refused when the report has none", () => {
    expect(() => vitestCounts({})).toThrow(ReportError);
    expect(() => playwrightCounts(null)).toThrow();
  });
});
