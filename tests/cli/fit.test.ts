import { afterAll, describe, expect, it } from "vitest";
import { fileWith, step, task } from "../core/procedure-builder.ts";
import { Scratch, tetherline } from "./run-tetherline.ts";

const scratch = new Scratch();
afterAll(() => scratch.remove());

const FILE = fileWith(
  [
    task("main", [step("a", "ev1", 10), step("b", "ev2", 25)]),
    task("photos", [step("photo", "ev1", 12)], { priority: "get-ahead", title: "Take photos", worth: 3 }),
    task("wipe", [step("wiping", "ev1", 10)], { priority: "get-ahead", title: "Wipe the lens" }),
    task("last", [step("end", ["ev1", "ev2"], 5)]),
  ],
  { format: "tetherline.procedure/2", limits: { elapsed: "PT30M" } },
);

const file = scratch.write("walk.procedure.json", JSON.stringify(FILE));

const asked = async (...args: string[]) => {
  const { status, out } = await tetherline("fit", file, ...args, "--json");
  return { status, document: JSON.parse(out) };
};

describe("fit", () => {
  it("[FIT1] prints the sets, best first, in seconds", async () => {
    const { status, document } = await asked();
    expect(status).toBe(0);
    expect(document).toMatchObject({ verdict: "proven", bound: 3, tried: 4 });
    expect(document.sets[0]).toEqual({
      keep: ["photos"],
      drop: ["wipe"],
      worth: 3,
      finish: 1800,
      margin: 0,
      withinLimit: 1,
      error: 0,
      windows: [],
      left: [],
      changes: [
        { change: "photos", list: "tasks", unset: ["priority"] },
        { drop: "wipe", list: "tasks" },
      ],
    });
  });

  it("[FIT1] ends with 1 where the essential work does not fit, and says by how much", async () => {
    const { status, document } = await asked("--limit", "PT28M30S");
    expect(status).toBe(1);
    expect(document).toMatchObject({ verdict: "does not fit", shortBy: 90, sets: [] });
    const { out } = await tetherline("fit", file, "--limit", "PT28M30S");
    expect(out).toContain("the essential work alone is short by 90 s.");
    expect((await asked("--limit", "PT28M30S", "--leave-out", "main")).document.verdict).toBe("proven");
  });

  it("[FIT2] says in a sentence how good the answer is", async () => {
    expect((await tetherline("fit", file)).out).toContain(
      "Proven best: no set that fits is worth more than 3",
    );
    const early = await tetherline("fit", file, "--tries", "1");
    expect(early.out).toContain("Best found: worth 0; no set that fits is worth more than");
    expect(early.status).toBe(0);
  });

  it("[FIT1] asks from the state of a walk at an instant", async () => {
    const log = scratch.path("walk.walk.jsonl");
    await tetherline("rehearse", file, "--seed", "3", "--start", "2031-04-02T09:00:00Z", "--out", log);
    const { out, status } = await tetherline("fit", log, "--at", "2031-04-02T09:05:00Z", "--json");
    expect(status).toBe(0);
    expect(JSON.parse(out).sets[0]).toMatchObject({ keep: ["photos"], finish: 1800 });
  });

  it.each([
    [["--chance", "1.5"], 'Option "--chance": a chance is above 0 and at most 1, such as 0.9.'],
    [["--limit", "6 h"], "a length of time in ISO 8601 is needed, such as PT6H30M."],
    [["--leave-out", "man"], 'There is no task "man". Is "main" meant?'],
    [["--at", "2031-04-02T09:00:00Z"], "--at is for the log of a walk; a procedure is asked from PET 0."],
  ])("refuses %j in one sentence", async (args, sentence) => {
    const { status, out, err } = await tetherline("fit", file, ...args);
    expect([status, out]).toEqual([2, ""]);
    expect(err).toContain(sentence.replace(/^Option "--chance": /, ""));
  });

  it("refuses a chance where there is no limit to be in time for", async () => {
    const free = scratch.write("free.procedure.json", JSON.stringify({ ...FILE, limits: {} }));
    const { status, err } = await tetherline("fit", free, "--chance", "0.9");
    expect(status).toBe(2);
    expect(err).toBe("--chance needs a limit: the procedure has none, so --limit must say it.\n");
  });

  it("refuses what is neither a procedure nor a log", async () => {
    const { status, err } = await tetherline("fit", scratch.write("x.json", "[1]"));
    expect(status).toBeGreaterThan(0);
    expect(err).not.toBe("");
  });
});
