/** How many tests of a stage passed and how many did not. */
export interface Counts {
  readonly passed: number;
  readonly failed: number;
}

/** The runner's report is not what it is documented to be. */
export class ReportError extends Error {
  override readonly name = "ReportError";
}

function count(report: unknown, ...path: readonly string[]): number {
  const value = path.reduce<unknown>(
    (at, key) => (typeof at === "object" && at !== null ? (at as Record<string, unknown>)[key] : undefined),
    report,
  );
  if (typeof value === "number" && Number.isInteger(value)) return value;
  throw new ReportError(`The report has no whole number at ${path.join(".")}.`);
}

/**
 * The counts of Vitest's JSON report. A file that could not even be loaded has no tests to fail:
 * a report without success counts one failure at least.
 */
export function vitestCounts(report: unknown): Counts {
  const failed = count(report, "numFailedTests");
  const success = (report as { success?: unknown }).success === true;
  return { passed: count(report, "numPassedTests"), failed: success ? failed : Math.max(failed, 1) };
}

/** The counts of Playwright's JSON report; a test that passed at another try has passed, and is told of by `laterTries`. */
export function playwrightCounts(report: unknown): Counts {
  const errors = (report as { errors?: unknown }).errors;
  const unloaded = Array.isArray(errors) && errors.length > 0 ? 1 : 0;
  return {
    passed: count(report, "stats", "expected") + laterTries(report),
    failed: Math.max(count(report, "stats", "unexpected"), unloaded),
  };
}

/** How many tests of Playwright's JSON report failed at first and passed at another try. */
export function laterTries(report: unknown): number {
  return count(report, "stats", "flaky");
}
