import { describe, expect, it } from "vitest";
import { surprisesDocument, surprisesReviewed } from "../../../src/core/training/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { LogWriter, minutes } from "../log-writer.ts";
import { fire, played } from "./played.ts";
import { FILE, surprise, surprisesFrom } from "./surprise-builder.ts";

const stretch = surprise("slow", { kind: "stretch", step: "read", factor: 3 }, { when: { step: "read" } });
const record = surprise("off", { kind: "record", step: "read", record: "turns", value: 3 });
const supply = surprise("leak", { kind: "supply", crew: "ev1", supply: "oxygen", factor: 6 });
const missing = surprise("gone", { kind: "missing", item: "bag", says: "Not here", for: "PT15M" });

describe("[TRN3] the review of surprises", () => {
  it("is empty until the walk is closed", () => {
    const laid = surprisesFrom(stretch);
    expect(surprisesReviewed(played(laid, [], { closes: false }).folded)).toEqual([]);
    expect(surprisesReviewed(played(laid).folded)).toHaveLength(1);
  });

  it("tells when it came, that nobody entered anything, and what it cost", () => {
    const [review] = surprisesReviewed(played(surprisesFrom(stretch)).folded);
    expect(review).toMatchObject({
      isFired: false,
      began: minutes(10),
      over: minutes(25),
      noticed: null,
      isWithin: false,
      done: [],
      cost: { finish: 0, margin: { before: minutes(60), after: minutes(60) } },
    });
  });

  it("tells what made the walk longer", () => {
    const does = { kind: "stretch", step: "watch", factor: 1.5 };
    const [review] = surprisesReviewed(
      played(surprisesFrom(surprise("a", does, { when: { pet: "PT30M" } }))).folded,
    );
    expect(review?.cost).toMatchObject({
      finish: minutes(30),
      margin: { before: minutes(60), after: minutes(30) },
    });
  });

  it("tells the first entry that shows that it was noticed, and what was done, by people alone", () => {
    const log = played(surprisesFrom(record), [
      [9, (entering) => entering.enter("note.made", { text: "all well", step: "work" as never }, 9)],
      [
        16,
        (entering) =>
          entering.enter(
            "alert.raised",
            { alert: "record read turns 1", level: "look-soon", about: "read" },
            16,
          ),
      ],
      [17, (entering) => entering.enter("alert.seen", { alert: "record read turns 1" }, 17)],
      [18, (entering) => entering.enter("record.taken", { step: "read", record: "turns", value: 9 }, 18)],
      [19, (entering) => entering.enter("hold.called", { reason: "to look" }, 19)],
      [20, (entering) => entering.enter("hold.lifted", {}, 20)],
      [33.5, (entering) => entering.enter("note.made", { text: "much later" }, 33.5)],
    ]);
    const [review] = surprisesReviewed(log.folded);
    expect(review?.began).toBe(minutes(5));
    expect(review?.noticed).toMatchObject({ at: minutes(17), actor: "iv" });
    expect(review?.isWithin).toBe(false);
    expect(review?.over).toBe(minutes(18));
    expect(review?.done.map(({ what, said }) => [inWords(what), inWords(said)])).toEqual([
      ["saw the alert", ""],
      ["took the record again: 9", ""],
      ["called a hold", "to look"],
    ]);
  });

  it("counts the last moment of the time expected as within it", () => {
    const noted = (at: number) =>
      played(surprisesFrom(supply), [[at, (log) => log.enter("note.made", { text: "oxygen?" }, at)]]);
    expect(surprisesReviewed(noted(10).folded)[0]?.isWithin).toBe(true);
    expect(surprisesReviewed(noted(10.1).folded)[0]?.isWithin).toBe(false);
  });

  it("takes nothing for a sign that was struck, or that the crew said itself", () => {
    const log = played(surprisesFrom(missing), [
      [12, (entering) => entering.enter("hold.called", {}, 12)],
      [13, (entering) => entering.strike(0, 13)],
    ]);
    expect(surprisesReviewed(log.folded)[0]?.done).toEqual([]);
  });

  it("counts what was left to do when the walk was broken off", () => {
    const does = { kind: "record", step: "read", record: "turns", value: 3 };
    const log = played(surprisesFrom(surprise("a", does)), [], { closes: false });
    log.enter("walk.closed", { end: "aborted", reason: "enough" }, 60);
    expect(surprisesReviewed(log.folded)[0]?.cost?.finish).toBe(0);
    const early = LogWriter.opened(FILE, { mode: "rehearsal" });
    fire(surprisesFrom(surprise("a", does))[0], 0)(early);
    early.enter("clock.started", {}, 0).enter("walk.closed", { end: "aborted", reason: "enough" }, 5);
    // Nothing was done in five minutes in which the first steps take longer anyway.
    expect(surprisesReviewed(early.folded)[0]?.cost?.finish).toBe(0);
  });

  it("tells what is left of a supply that fell faster", () => {
    const [review] = surprisesReviewed(played(surprisesFrom(supply)).folded);
    expect(review?.over).toBeNull();
    const [cost] = review?.cost?.supplies ?? [];
    expect(cost?.supply.id).toBe("oxygen");
    // EV1 is done at 34 min: 1000 less 100 an hour, as planned when it came.
    expect(cost?.before).toBe(943);
    // 8 gone in 5 min as planned, then 290 in 29 min; the line through readings of before and after lies a little higher.
    expect(cost?.after).toBeGreaterThan(690);
    expect(cost?.after).toBeLessThan(730);
  });

  it("puts what never came last, and says so", () => {
    const never = surprise("never", { kind: "contact", for: "PT5M" }, { when: { pet: "PT2H" } });
    const reviews = surprisesReviewed(played(surprisesFrom(never, stretch)).folded);
    expect(reviews.map(({ surprise: { id }, began }) => [id, began])).toEqual([
      ["slow", minutes(10)],
      ["never", null],
    ]);
    expect(reviews[1]).toMatchObject({ noticed: null, isWithin: null, cost: null });
  });

  it("is a document with the surprise as its trainer wrote it", () => {
    const [one] = surprisesFrom(stretch);
    const log = played([], [[11, fire(one, 11)]]);
    const [document] = surprisesDocument(surprisesReviewed(log.folded), inWords);
    expect(document).toMatchObject({
      surprise: { id: "slow", when: { step: "read" }, expect: { within: "PT5M" } },
      fired: true,
      began: 660,
      over: 1500,
      noticed: null,
      within: false,
    });
  });
});
