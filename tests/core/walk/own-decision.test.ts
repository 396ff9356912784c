import { expect, it } from "vitest";
import { walkStateAt } from "../../../src/core/walk/index.ts";
import { LogWriter, minute } from "../log-writer.ts";
import { fileWith, step } from "../procedure-builder.ts";

it("[WLK3] a lane whose next step hangs on a decision of its own lists itself with the deciding step", () => {
  const file = fileWith([
    step("try", "ev1", 5, { decide: { id: "bolt", ask: "?", outcomes: ["free", "stuck"], expect: "free" } }),
    step("turn", "ev1", 5, { when: { bolt: "free" } }),
  ]);
  const log = LogWriter.started(file).done(["try", 5]);
  const [lane] = walkStateAt(log.ledger, minute(6)).lanes;
  expect(lane).toMatchObject({ status: "waiting", waitingOn: [{ kind: "crew", crew: "ev1", step: "try" }] });
});
