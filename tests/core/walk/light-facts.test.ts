import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { roleRefusal } from "../../../src/core/log/index.ts";
import { foldLog, lightInForce, WalkFold, walkStateAt } from "../../../src/core/walk/index.ts";
import { LogWriter, minute, ZERO } from "../log-writer.ts";
import { fileWith, step } from "../procedure-builder.ts";

/** An orbit of the day of these walks. */
const ORBIT = readFileSync("procedures/osier-ranging-head.orbit.txt", "utf8");

const FILE = fileWith([step("a", "ev1", 10), step("weld", "ev1", 10, { within: ["dark"] })], {
  windows: [{ id: "dark", label: "Darkness", kind: "darkness" }],
});

const chosen = LogWriter.started(FILE)
  .done(["a", 12])
  .enter("light.chosen", { light: { orbit: ORBIT } }, 13);

describe("a source of day and night that is chosen in mid-walk", () => {
  it("[LOG2] gives the windows of the walk from then on, and leaves the plan of record", () => {
    const before = LogWriter.started(FILE).ledger;
    const { ledger } = chosen;
    expect(before.windows.get("dark" as never)).toBeNull();
    expect(ledger.windows.get("dark" as never)?.length).toBeGreaterThan(0);
    expect(ledger.opened.light).toBeNull();
    expect(ledger.light).toEqual({ orbit: ORBIT });
    const { forecast } = walkStateAt(ledger, minute(6));
    const spans = ledger.windows.get("dark" as never) ?? [];
    const weld = forecast?.steps.get("weld" as never);
    expect(spans.some(({ from, to }) => weld && weld.start >= from && weld.finish <= to)).toBe(true);
  });

  it("[LOG2] leaves what has begun its start", () => {
    const log = LogWriter.started(FILE).done(["a", 12]);
    log.enter("light.chosen", { light: { orbit: ORBIT } }, 13);
    const { lanes } = walkStateAt(log.ledger, minute(14));
    expect(lanes[0]).toMatchObject({ step: "weld", status: "working" });
  });

  it("[LOG2] has no effect when it is the same again, or cannot be read", () => {
    const again = LogWriter.started(FILE)
      .enter("light.chosen", { light: { orbit: ORBIT } }, 1)
      .enter("light.chosen", { light: { orbit: ORBIT } }, 2)
      .enter("light.chosen", { light: { orbit: "no orbit" } }, 3);
    expect(again.folded.ignored.map(({ id }) => Number(id))).toEqual([4, 5]);
    expect(again.ledger.light).toEqual({ orbit: ORBIT });
  });

  it("[LOG2] struck, it was never chosen", () => {
    const log = LogWriter.started(FILE).done(["a", 12]);
    log.enter("light.chosen", { light: { orbit: ORBIT } }, 13).strike(0, 14);
    expect(log.ledger.light).toBeNull();
    expect(log.ledger.windows.get("dark" as never)).toBeNull();
  });

  it("[LOG3] in whatever order its entries arrive, the walk is the same", () => {
    const fold = new WalkFold();
    fold.add([...chosen.entries].reverse());
    expect(fold.folded.ledger?.windows).toEqual(foldLog(chosen.entries).ledger?.windows);
    expect(fold.folded.ledger?.lanes).toEqual(chosen.ledger.lanes);
  });

  it("[LINK] is a lead's to choose", () => {
    const entry = chosen.entries.at(-1);
    if (!entry) throw new Error("no entry");
    expect(roleRefusal(entry, "marker", "/devices/iv-tablet")?.reason).toBe("role");
    expect(roleRefusal(entry, "lead", "/devices/iv-tablet")).toBeNull();
  });
});

describe("the light by which what is in force is checked", () => {
  it("[AMD3] is the one that is followed, and that of the plan of record is its own", () => {
    expect(lightInForce(chosen.ledger)).toMatchObject({ start: ZERO, light: { source: { kind: "orbit" } } });
    expect(lightInForce(LogWriter.started(FILE).ledger)).toEqual({ start: ZERO, light: null });
    expect(lightInForce(LogWriter.opened(FILE).ledger).start).toBeNull();
  });
});
