import { describe, expect, it } from "vitest";
import { practisedOf } from "../../../src/core/practice/index.ts";
import { BROUGHT, practiceLog, UP_TO_VOLTS } from "./practice-file.ts";

describe("what was tried on a practice walk", () => {
  it("[PRA5] counts by what is in the log", () => {
    const log = practiceLog();
    const tried = () =>
      Object.entries(practisedOf(log.ledger)).flatMap(([what, isTried]) => (isTried ? [what] : []));
    expect(tried()).toEqual([]);
    log.done(...UP_TO_VOLTS.slice(0, 1));
    expect(tried()).toEqual(["tap"]);
    log.done(...UP_TO_VOLTS.slice(1));
    expect(tried()).toEqual(["tap", "joint"]);
    log.enter("record.taken", { step: "ev1-volts", record: "volts", value: 30 }, 4.2);
    expect(tried()).toEqual(["tap", "joint"]);
    log.enter("record.taken", { step: "ev1-volts", record: "volts", value: 19 }, 4.3);
    expect(tried()).toEqual(["tap", "joint", "value"]);
    log.enter("plan.amended", { changes: BROUGHT, reason: "Too little voltage", needs: 2 }, 4.4);
    expect(tried()).toEqual(["tap", "joint", "value", "contingency"]);
    log.enter("walk.closed", { end: "aborted", reason: "enough" }, 5);
    expect(tried()).toEqual(["tap", "joint", "value", "contingency", "close"]);
  });

  it("[PRA5] does not count what was taken back", () => {
    const log = practiceLog().done(["iv-door", 0.5]).strike(0, 1);
    expect(practisedOf(log.ledger).tap).toBe(false);
    log.enter("step.skipped", { step: "iv-door", reason: "open" }, 1.2);
    expect(practisedOf(log.ledger).tap).toBe(false);
  });
});
