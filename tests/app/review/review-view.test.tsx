import { render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { describe, expect, it, vi } from "vitest";
import type { ReviewViewProps } from "../../../src/app/review/index.ts";
import { ReviewView } from "../../../src/app/review/index.ts";
import { reviewOf } from "../../../src/core/review/index.ts";
import { LogWriter, minute } from "../../core/log-writer.ts";
import { fileWith, step, task } from "../../core/procedure-builder.ts";
import { fire, played } from "../../core/training/played.ts";
import { surprise, surprisesFrom } from "../../core/training/surprise-builder.ts";

const FILE = fileWith(
  [
    task("out", [
      step("long", "ev1", 10, { records: [{ id: "turns", label: "Turns", min: 8, max: 10 }] }),
      step("short", "ev2", 4),
    ]),
    task("in", [step("both", ["ev1", "ev2"], 5)]),
  ],
  {
    limits: { elapsed: "PT30M" },
    places: [{ id: "lock", label: "Airlock", refuge: true }],
    items: [{ id: "bag", label: "Tool bag", start: { crew: "ev1" }, end: { place: "lock" } }],
  },
);

function show(log: LogWriter, at = 60, more: Partial<ReviewViewProps> = {}) {
  const review = reviewOf(log.folded, minute(at));
  if (!review) throw new Error("no walk");
  const onExport = vi.fn();
  return { ...render(<ReviewView review={review} clocks={null} onExport={onExport} {...more} />), onExport };
}

const part = (name: RegExp | string) =>
  screen.getByRole("heading", { level: 2, name }).parentElement as HTMLElement;

const flown = () =>
  LogWriter.started(FILE, { names: { ev1: "Ada" } })
    .enter("record.taken", { step: "long", record: "turns", value: 12 }, 13)
    .done(["short", 4], ["long", 13])
    .enter("note.made", { text: "Glare", step: "both" }, 14)
    .done(["both", 19]);

describe("the review of a walk that was flown to its end", () => {
  const closed = () => flown().enter("walk.closed", { end: "complete" }, 20);

  it("says how it ended against plan and limit", () => {
    show(closed());
    const ending = part("Complete, 4 min later than planned");
    expect(ending).toHaveTextContent(
      "3 steps done. Last step over at 0:19:00, planned finish 0:15:00. Closed at 0:20:00, 10 min inside the limit of 0:30.",
    );
  });

  it("sets every task against its plan", () => {
    show(closed());
    const [first, second] = within(part("Tasks, planned and as flown")).getAllByRole("listitem");
    expect(first).toHaveTextContent("finished 3 min later");
    expect(first).toHaveTextContent("planned 0:00–0:10 · flown 0:00–0:13 · took 3 min longer");
    expect(second).toHaveTextContent("finished 4 min later");
  });

  it("says where everybody's time went, waits with whom", () => {
    show(closed());
    const [ev1, ev2] = [...part("Where everybody’s time went").querySelectorAll(".review-lanes > li")];
    expect(ev1).toHaveTextContent("worked19 min");
    expect(ev2).toHaveTextContent("worked10 min");
    expect(ev2).toHaveTextContent("waited9 min9 min for EV1");
  });

  it("draws the drift of each lane and says it", () => {
    const { container } = show(closed());
    const [ev1, , iv] = within(part("Drift from the plan")).getAllByRole("listitem");
    expect(ev1).toHaveTextContent("at most 4 min behind, at 0:19; in the end 4 min behind");
    expect(iv).toHaveTextContent("no planned step done");
    expect(container.querySelectorAll(".review-drift-line")).toHaveLength(3);
  });

  it("lists every deviation, record, note and misplaced item", () => {
    show(closed());
    expect(part(/^Deviations 1/)).toHaveTextContent("record outside its limits");
    expect(part(/^Records 1/)).toHaveTextContent("12, outside8 to 100:13:00");
    expect(part(/^Notes 1/)).toHaveTextContent("0:14:00IVGlare2.1 Do both");
    expect(part(/^Items not at their end 1/)).toHaveTextContent("Tool bagat Airlockwith EV1");
    expect(part(/^Steps 3/)).toHaveTextContent("0:00:00–0:04:00on plan");
  });

  it("hands out each form of export", async () => {
    const { onExport } = show(closed());
    for (const name of [/^Log/, /CSV/, /Review \(JSON/, /XES/, /^Print/])
      await userEvent.click(screen.getByRole("button", { name }));
    expect(onExport.mock.calls.flat()).toEqual(["log", "csv", "json", "xes", "print"]);
  });
});

describe("what the review tells besides", () => {
  const ASKING = fileWith(
    [
      step("vent", "ev1", 10, {
        time: { low: "PT8M", likely: "PT10M", high: "PT12M" },
        confirm: { by: "iv", text: "Marks meet" },
      }),
      step("look", "ev2", 4, {
        confirm: { by: "iv", text: "Seen" },
        decide: { id: "bolt", ask: "Does it turn?", outcomes: ["free", "stuck"], expect: "free" },
      }),
      step("both", ["ev1", "ev2"], 5),
    ],
    {
      items: [{ id: "key", label: "Key", start: { crew: "ev1" } }],
      supplies: [
        { crew: "ev1", id: "gas", label: "Gas", unit: "kPa", full: 900, redline: 100, perHour: 100 },
      ],
      watches: [{ id: "gloves", by: ["ev1"], do: "Check gloves", every: "PT10M" }],
    },
  );
  const eventful = () =>
    LogWriter.started(ASKING)
      .enter("supply.read", { crew: "ev1", supply: "gas", value: 880 }, 1)
      .enter("supply.read", { crew: "ev1", supply: "gas", value: -3 }, 2)
      .enter("decision.taken", { decision: "bolt", outcome: "stuck" }, 3)
      .done(["look", 4])
      .enter("decision.taken", { decision: "bolt", outcome: "free" }, 5)
      .enter("confirm.given", { step: "look" }, 5)
      .enter("item.moved", { item: "key", to: { crew: "ev2" }, reason: "handed over" }, 6)
      .enter("watch.kept", { watch: "gloves", due: 600 }, 11)
      .enter("alert.raised", { alert: "hold 60", level: "look-soon" }, 12)
      .enter("alert.seen", { alert: "hold 60" }, 12.5, { actor: "ev2" })
      .done(["vent", 14])
      .enter("step.reopened", { step: "vent", reason: "looked again" }, 14.5)
      .done(["vent", 15], ["both", 21])
      .enter("walk.closed", { end: "complete" }, 22);

  it("[REV6] lists confirmations, missing ones too, and each round of a watch", () => {
    show(eventful());
    expect(part(/^Confirmations 2/)).toHaveTextContent("1.1 Do ventMarks meetIVmissing–");
    expect(part(/^Confirmations 2/)).toHaveTextContent("1.2 Do lookSeenIVIV0:05:00");
    expect(part(/^Watches 2/)).toHaveTextContent("0:10:00EV1Check gloveskept0:20:00EV1Check glovesmissed");
  });

  it("[REV6] lists readings and whether they count, reopenings, and corrected items with the reason", () => {
    show(eventful());
    expect(part(/^Supplies over time 2/)).toHaveTextContent("EV1Gas0:01:00880 kPayes");
    expect(part(/^Supplies over time 2/)).toHaveTextContent("0:02:00-3 kPano: -3 kPa is below zero");
    expect(part(/^Opened again 1/)).toHaveTextContent("0:14:301.1 Do ventlooked again");
    expect(part(/^Items found elsewhere 1/)).toHaveTextContent("0:06:00Keywith EV2IVhanded over");
  });

  it("[AMD2] lists amendments: who, when, why, each change, finish and margin, and who has seen them", () => {
    const log = LogWriter.started(ASKING);
    const changes = [
      { change: "both", set: { time: "PT9M" } },
      { add: step("n", "ev1", 2), behind: "vent" },
    ];
    log.enter("plan.amended", { changes, reason: "slow today", needs: 2 }, 2);
    const amendment = { source: "/devices/iv-tablet", id: "0000000003" };
    log.enter("amendment.seen", { amendment }, 3, { source: "/devices/ground", actor: "ev2" });
    show(log);
    expect(part(/^Amendments of the plan 1/)).toHaveTextContent(
      "0:02:00IVslow todaystep both: time PT5M → PT9Mstep n: added behind vent; Do n0:15:00 → 0:21:00– → –EV2 at 0:03:00",
    );
  });

  it("[REV6] lists every outcome of a decision with the one before it, and alerts with who saw them", () => {
    show(eventful());
    expect(part(/^Decisions 2/)).toHaveTextContent("0:05:00IVDoes it turn?freeas expectedstuck");
    expect(part(/^Alerts 1/)).toHaveTextContent("0:12:00Look soonholdEV2 at 0:12:30");
  });

  it("[REV6] tells what made the delay, each step against its low and high", () => {
    show(eventful());
    expect(part(/^What made the delay 2/)).toHaveTextContent(
      "1.1 Do vent5 min later15 min, over its high10 min8 min to 12 min",
    );
  });

  it("[REV6] takes a comment where entries may be made, and nowhere else", async () => {
    const onComment = vi.fn(async () => {});
    show(eventful(), 60, { onComment });
    const field = screen.getByLabelText("A comment on the walk, kept in its log");
    await userEvent.type(field, " Too dark. ");
    await userEvent.click(screen.getByRole("button", { name: "Keep the comment" }));
    expect(onComment).toHaveBeenCalledWith("Too dark.");
    expect(field).toHaveValue("");
    expect(screen.getByText("The comment is kept among the notes.")).toBeVisible();
  });

  it("[REV6] keeps the text of a comment that could not be kept, and says why", async () => {
    const onComment = vi.fn(async () => {
      throw new Error("disk full");
    });
    show(eventful(), 60, { onComment });
    const field = screen.getByLabelText("A comment on the walk, kept in its log");
    await userEvent.type(field, "Too dark.");
    await userEvent.click(screen.getByRole("button", { name: "Keep the comment" }));
    expect(field).toHaveValue("Too dark.");
    expect(screen.getByText(/could not be kept/)).toBeVisible();
  });

  it("[REV6] has no field for comments where nothing may be entered", () => {
    show(eventful());
    expect(screen.queryByLabelText("A comment on the walk, kept in its log")).toBeNull();
  });
});

describe("the review of a walk with little in it", () => {
  it("says what was left when it was terminated early", () => {
    const log = LogWriter.started(FILE)
      .done(["short", 4])
      .enter("walk.closed", { end: "terminated", reason: "Cooling alarm" }, 6);
    show(log);
    const ending = part("Terminated at 0:06");
    expect(ending).toHaveTextContent("1 step done, 2 of the plan not done.");
    expect(ending).toHaveTextContent("Reason given: Cooling alarm");
    expect(within(part("Tasks, planned and as flown")).getAllByRole("listitem")[1]).toHaveTextContent(
      "not done",
    );
  });

  it("has words for every table that would be empty", () => {
    show(LogWriter.started(fileWith([step("a", "ev1", 1)])).done(["a", 1]));
    expect(screen.getByText(/Nothing was done otherwise than planned/)).toBeVisible();
    expect(screen.getByText("Nobody made a note.")).toBeVisible();
    expect(screen.getByText("The walk was never held.")).toBeVisible();
    expect(screen.getByText("Every entry of the log had its effect.")).toBeVisible();
    expect(screen.getByText("The procedure lists no items.")).toBeVisible();
  });

  it("does not compare what never began", () => {
    show(LogWriter.opened(FILE));
    expect(part("The clock was never started")).toHaveTextContent("nothing to compare");
    expect(screen.queryByRole("heading", { name: "Drift from the plan" })).toBeNull();
  });

  it("lists entries without effect with the reason", () => {
    show(LogWriter.started(FILE).done(["unknown", 2]));
    expect(part(/^Entries without effect 1/)).toHaveTextContent("/devices/iv-tablet");
  });
});

describe("[TRN3] the surprises of a rehearsal", () => {
  const [slow] = surprisesFrom(
    surprise("slow", { kind: "stretch", step: "watch", factor: 1.5 }, { when: { pet: "PT30M" } }),
  );
  const noticed = () =>
    played(slow ? [slow] : [], [
      [34, (log) => log.enter("hold.called", { reason: "to ask IV" }, 34)],
      [35, (log) => log.enter("hold.lifted", {}, 35)],
    ]);

  it("stand beside what was expected: when, who noticed it how soon, what was done, what it cost", () => {
    show(noticed(), 200);
    const list = part(/^Surprises of this rehearsal/);
    expect(list).toHaveTextContent("Came at PET 0:30:00. 1.6 Do watch takes 1.5 times as long.");
    const [expected, happened] = within(list)
      .getAllByRole("heading", { level: 4 })
      .map(({ parentElement }) => parentElement);
    expect(expected).toHaveTextContent("IV, within 5 min: that it is so");
    expect(happened).toHaveTextContent("First noticed by IV, 4 min after it came.");
    expect(happened).toHaveTextContent("0:34:00 IV: called a hold; to ask IV");
    expect(happened).toHaveTextContent(/Finish as forecast3\d min/);
    expect(happened).toHaveTextContent(/Margin1 h 00 min → \d\d min/);
  });

  it("say that nothing shows that one was noticed, without a word of blame", () => {
    const log = played([], [[30, fire(slow, 30)]]);
    show(log, 200);
    expect(part(/^Surprises of this rehearsal/)).toHaveTextContent("Fired by hand at PET 0:30:00.");
    expect(part(/^Surprises of this rehearsal/)).toHaveTextContent("No entry shows that it was noticed.");
    expect(document.body.textContent).not.toMatch(/failed|too late|wrong|score/i);
  });

  it("are not there while the walk is not closed, nor for a walk without any", () => {
    show(played(slow ? [slow] : [], [], { closes: false }), 200);
    expect(screen.queryByText(/Surprises of this rehearsal/)).toBeNull();
    show(flown().enter("walk.closed", { end: "complete" }, 20));
    expect(screen.queryByText(/Surprises of this rehearsal/)).toBeNull();
  });
});
