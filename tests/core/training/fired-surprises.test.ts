import { describe, expect, it } from "vitest";
import { surprisesOf, surprisesReviewed } from "../../../src/core/training/index.ts";
import { lastUndoable } from "../../../src/core/walk/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { LogWriter, minute } from "../log-writer.ts";
import { fire, played } from "./played.ts";
import { FILE, surprise, surprisesFrom } from "./surprise-builder.ts";

const [slow] = surprisesFrom(surprise("slow", { kind: "stretch", step: "read", factor: 3 }));
const running = () => LogWriter.started(FILE, { mode: "rehearsal" }).done(["fetch", 10]);
const firedAt = (at: number) => (log: LogWriter) => {
  fire(slow, at)(log);
  return log;
};

describe("[TRN2] surprises fired on the tablet that plays the crew", () => {
  it("count once when they are fired twice, as by two tabs, at the earlier time", () => {
    const log = firedAt(13)(firedAt(12)(running()));
    expect(surprisesOf(log.ledger)).toMatchObject([{ surprise: { id: "slow" }, began: minute(12) }]);
  });

  it("are passed over by the undo of that tablet, which takes back what was entered before", () => {
    const { folded } = firedAt(12)(running());
    expect(lastUndoable(folded, "/devices/iv-tablet")?.map(({ read }) => read.fact?.name)).toEqual([
      "step.done",
    ]);
  });

  it("have no effect once the walk is closed, and have it again when the closing is taken back", () => {
    const closed = firedAt(12)(running().enter("walk.closed", { end: "aborted", reason: "rain" }, 11));
    expect(surprisesOf(closed.ledger)).toEqual([]);
    expect(surprisesReviewed(closed.folded)).toEqual([]);
    expect(closed.folded.ignored.map(({ reason }) => inWords(reason))).toEqual(["the walk is closed"]);
    const again = firedAt(13)(closed.enter("walk.reopened", { reason: "it stopped" }, 12.5));
    expect(surprisesOf(again.ledger)).toMatchObject([{ began: minute(13) }]);
  });

  it("come in what the crew plays from their time on", () => {
    const plain = played([], [], { closes: false });
    const log = played([], [[12, fire(slow, 12)]], { closes: false });
    const finishOf = ({ ledger }: LogWriter) => ledger.steps.get("read" as never)?.finish ?? 0;
    expect(finishOf(log) - finishOf(plain)).toBe(10 * 60_000);
  });
});
