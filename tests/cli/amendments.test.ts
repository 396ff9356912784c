import { afterAll, describe, expect, it } from "vitest";
import { writeLines } from "../../src/core/log/index.ts";
import { LogWriter } from "../core/log-writer.ts";
import { fileWith, step } from "../core/procedure-builder.ts";
import { Scratch, tetherline } from "./run-tetherline.ts";

const scratch = new Scratch();
afterAll(() => scratch.remove());

const FILE = fileWith([step("a", "ev1", 10), step("b", "ev1", 10)], { limits: { elapsed: "PT60M" } });

function logOf(...more: readonly object[]): string {
  const log = LogWriter.started(FILE).done(["a", 12]);
  const changes = [{ change: "b", set: { time: "PT14M" } }];
  log.enter("plan.amended", { changes, reason: "stiff", needs: 2 }, 13);
  const [last] = log.entries.slice(-1);
  const lines = more.map((one, at) => `${JSON.stringify({ ...last?.wire, id: `n${at}`, ...one })}\n`);
  return scratch.write("amended.walk.jsonl", writeLines(log.entries) + lines.join(""));
}

describe("amendments on the command line", () => {
  it.each(["state", "review"])(
    "[AMD2] %s tells when, who, why, what changed, and finish and margin",
    async (command) => {
      const { status, out } = await tetherline(command, logOf());
      expect(status).toBe(0);
      expect(out).toMatch(
        /Amendments of the plan\n\n? {2}0:13:00 by iv: stiff\n {4}step b: time PT10M → PT14M\n {4}finish 0:22:00 → 0:26:00, margin 38 min → 34 min\n/,
      );
      expect(out).not.toContain("newer version");
    },
  );

  it("[AMD4] state says when entries need a newer version of the program", async () => {
    const { status, out } = await tetherline("state", logOf({ type: "tetherline.source.sealed", data: {} }));
    expect(status).toBe(1);
    expect(out).toContain(
      "1 entry needs a newer version of the program: what is shown may differ from other devices. Update it.",
    );
  });
});
