import { afterAll, describe, expect, it } from "vitest";
import { fileWith, step, task } from "../core/procedure-builder.ts";
import { Scratch, tetherline } from "./run-tetherline.ts";

const scratch = new Scratch();
afterAll(() => scratch.remove());

const FILE = fileWith(
  [
    task("wash", [step("washing", "ev1", 20, { or: [{ by: ["ev2"], time: "PT25M" }] })], {
      title: "Wash",
      order: "free",
    }),
    task("wire", [step("wiring", "ev1", 30, { or: [["ev2"]] })], { title: "Wire", order: "free" }),
    task("last", [step("end", ["ev1", "ev2"], 5)], { closeout: true }),
  ],
  { format: "tetherline.procedure/2" },
);

const file = scratch.write("walk.procedure.json", JSON.stringify(FILE));

describe("split", () => {
  it("[FIT3] prints finish, bound and changes in seconds, and `change` makes them", async () => {
    const { status, out } = await tetherline("split", file, "--json");
    expect(status).toBe(0);
    const document = JSON.parse(out);
    expect(document).toMatchObject({
      before: 3_300,
      finish: 2_100,
      bound: 2_100,
      proven: true,
      status: "proven",
      changes: [{ change: "wiring", set: { by: ["ev2"], or: [["ev1"]] } }],
      moved: [
        { step: "wiring", from: ["ev1"], to: ["ev2"], before: 1_200, start: 0, wasCritical: true },
        { step: "end", from: ["ev1", "ev2"], to: ["ev1", "ev2"], before: 3_000, start: 1_800 },
      ],
      cost: { changedHands: 1 },
    });
    const changes = scratch.write("changes.json", JSON.stringify(document.changes));
    const changed = await tetherline("change", file, changes);
    const plan = await tetherline("plan", scratch.write("changed.procedure.json", changed.out), "--json");
    expect(JSON.parse(plan.out).finish).toBe(2_100);
  });

  it("[FIT4] says in a sentence each what changes, why, and what it costs", async () => {
    const { status, out } = await tetherline("split", file);
    expect(status).toBe(0);
    expect(out).toContain("The plan as it is: finish 0:55.");
    expect(out).toContain("Proven best: finish 0:35, 20 min earlier.");
    expect(out).toContain(
      "Step 2.1 “Do wiring” is done by EV2 instead of EV1. Without this one the plan would be complete 20 min later.",
    );
    expect(out).toContain("1 step changes hands.");
    expect(out).toContain("Nothing is changed");
  });

  it("[FIT3] keeps a plan in which there is nothing to choose", async () => {
    const fixed = scratch.write("fixed.procedure.json", JSON.stringify(fileWith([step("a", "ev1", 10)])));
    const { status, out } = await tetherline("split", fixed);
    expect(status).toBe(0);
    expect(out).toContain("There is nothing to choose");
  });

  it("[FIT3] ends with 1 where the file has no plan that could be made better", async () => {
    const ring = scratch.write(
      "ring.procedure.json",
      JSON.stringify(
        fileWith([step("a", "ev1", 10, { after: ["b"] }), step("b", "ev2", 10, { after: ["a"] })]),
      ),
    );
    const { status, out } = await tetherline("split", ring);
    expect(status).toBe(1);
    expect(out).toContain("mend first what keeps it from being made");
  });

  it("[FIT3] asks for the rest of a walk at an instant, and leaves what is in work where it is", async () => {
    const log = scratch.path("walk.walk.jsonl");
    await tetherline("rehearse", file, "--seed", "3", "--start", "2031-04-02T09:00:00Z", "--out", log);
    const at = ["--at", "2031-04-02T09:05:00Z"];
    const { status, out } = await tetherline("split", log, ...at, "--json");
    expect(status).toBe(0);
    // Washing is in work and stays, although another could do it.
    expect(JSON.parse(out)).toMatchObject({
      before: 3_300,
      finish: 2_400,
      bound: 2_400,
      proven: true,
      changes: [{ change: "wiring", set: { by: ["ev2"], or: [["ev1"]] } }],
      moved: [
        { step: "wiring", from: ["ev1"], to: ["ev2"], before: 1_200, start: 300 },
        { step: "end", before: 3_000, start: 2_100 },
      ],
    });
    const told = await tetherline("split", log, ...at);
    expect(told.out).toContain("The walk as it was at PET 0:05:00.");
    expect(told.out).toContain("Proven best: finish 0:40, 15 min earlier.");
  });

  it.each([
    [["--at", "2031-04-02T09:00:00Z"], "--at is for the log of a walk; a procedure is asked from PET 0."],
    [["--at", "soon"], "an instant"],
  ])("refuses %j of a procedure in one sentence", async (args, sentence) => {
    const { status, out, err } = await tetherline("split", file, ...args);
    expect([status, out]).toEqual([2, ""]);
    expect(err).toContain(sentence);
  });

  it("refuses a start for a log, which has its own", async () => {
    const log = scratch.path("again.walk.jsonl");
    await tetherline("rehearse", file, "--seed", "3", "--start", "2031-04-02T09:00:00Z", "--out", log);
    const { status, err } = await tetherline("split", log, "--start", "2031-04-02T09:00:00Z");
    expect(status).toBe(2);
    expect(err).toBe("--start and --orbit are for a procedure; a log has its own.\n");
  });

  it("[FIT3] proves a second time what the first proof leaves open, and says so", async () => {
    // Ten pieces of work in three lanes, any of them in any, and each a task of its own that is free in its place.
    const times = [41, 37, 33, 29, 27, 23, 19, 17, 13, 11];
    const crew = ["ev1", "ev2", "iv"];
    const open = fileWith(
      times.map((time, number) =>
        task(
          `task-${number}`,
          [step(`work-${number}`, "ev1", time, { or: crew.slice(1).map((one) => [one]) })],
          { order: "free" },
        ),
      ),
      { format: "tetherline.procedure/2" },
    );
    const path = scratch.write("open.procedure.json", JSON.stringify(open));
    const { status, out } = await tetherline("split", path, "--proof", "--json");
    expect(status).toBe(0);
    expect(JSON.parse(out)).toMatchObject({
      finish: 84 * 60,
      bound: 84 * 60,
      proven: true,
      second: { status: "proven" },
    });
    expect(JSON.parse((await tetherline("split", path, "--json")).out)).toMatchObject({
      finish: 84 * 60,
      proven: false,
      second: null,
    });
  });
});
