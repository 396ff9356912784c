import { existsSync, readdirSync, readFileSync } from "node:fs";
import { afterAll, describe, expect, it } from "vitest";
import { writeLines } from "../../src/core/log/index.ts";
import { procedureJsonSchema } from "../../src/core/procedure/index.ts";
import { LogWriter } from "../core/log-writer.ts";
import { fileWith, step, task } from "../core/procedure-builder.ts";
import { FORM, HUB_KEY, wires } from "../core/seal/sealed-log.ts";
import { openedWorkbook } from "../core/workbook/opened-workbook.ts";
import { NOW, Scratch, tetherline } from "./run-tetherline.ts";

const scratch = new Scratch();
afterAll(() => scratch.remove());

const PROCEDURES = readdirSync("procedures")
  .filter((name) => name.endsWith(".procedure.json"))
  .map((name) => `procedures/${name}`);
const START = "2031-01-01T00:00:00Z";

const json = (text: string) => JSON.parse(text) as Record<string, never>;

const TRIAL = fileWith(
  [
    task("main", [
      step("a", "ev1", 5, { decide: { id: "bolt", ask: "?", outcomes: ["free", "stuck"], expect: "free" } }),
      step("b", "ev2", 3),
      step("meet", ["ev1", "ev2"], 2),
      step("long", "ev1", 20, { when: { bolt: "stuck" } }),
    ]),
    task("spare", [step("extra", "iv", 4)], { priority: "get-ahead" }),
  ],
  { limits: { elapsed: "PT30M" } },
);
const trial = scratch.write("trial.procedure.json", JSON.stringify(TRIAL));
const trialLog = LogWriter.started(TRIAL).done(["a", 6], ["b", 3], ["meet", 9]);
const log = scratch.write("trial.walk.jsonl", writeLines(trialLog.entries));

describe("check", () => {
  it("[CHK1] has one JSON document with the findings of every file, and ends 1 when one is an error", async () => {
    const spoiled = scratch.write(
      "spoiled.procedure.json",
      JSON.stringify({ ...TRIAL, tasks: [task("t", [step("a", "ev9", 1)])] }, null, 2),
    );
    const { status, out, err } = await tetherline("check", trial, spoiled, "--json");
    expect([status, err]).toEqual([1, ""]);
    expect(json(out)).toEqual({
      files: [
        { file: trial, findings: [] },
        {
          file: spoiled,
          findings: [
            {
              level: "error",
              code: "file/no-such-reference",
              message: 'There is no crew member "ev9". Did you mean "ev1"?',
              pointer: "/tasks/0/steps/0/by/0",
              steps: ["a"],
              things: ["ev9"],
              line: expect.any(Number),
              column: expect.any(Number),
            },
          ],
        },
      ],
    });
  });

  it("says the same in words, with place and count", async () => {
    const { status, out } = await tetherline("check", scratch.path("spoiled.procedure.json"));
    expect(status).toBe(1);
    expect(out).toMatch(/ERROR\s+\d+:\d+\s+file\/no-such-reference\n\s+There is no crew member/);
    expect(out).toContain("1 error\n");
    expect((await tetherline("check", trial)).out).toContain("no findings");
  });

  it("checks the files it can read although one cannot be read, and ends 2", async () => {
    const { status, out, err } = await tetherline("check", scratch.path("none"), trial, "--json");
    expect(status).toBe(2);
    expect(json(out)).toMatchObject({ files: [{ file: trial }] });
    expect(err).toMatch(/there is no such file\.\n$/);
  });
});

describe("plan", () => {
  it("[PLN1] [PLN2] [PLN3] has the document of the specification, in seconds", async () => {
    const { status, out, err } = await tetherline("plan", trial, "--json");
    expect([status, err]).toEqual([0, ""]);
    expect(json(out)).toEqual({
      procedure: "trial",
      start: null,
      finish: 420,
      steps: [
        {
          id: "a",
          by: ["ev1"],
          start: 0,
          finish: 300,
          latestStart: 0,
          latestFinish: 300,
          slack: 0,
          freeSlack: 0,
          critical: true,
          return: null,
          waits: [],
        },
        {
          id: "b",
          by: ["ev2"],
          start: 0,
          finish: 180,
          latestStart: 120,
          latestFinish: 300,
          slack: 120,
          freeSlack: 120,
          critical: false,
          return: null,
          waits: [],
        },
        {
          id: "meet",
          by: ["ev1", "ev2"],
          start: 300,
          finish: 420,
          latestStart: 300,
          latestFinish: 420,
          slack: 0,
          freeSlack: 0,
          critical: true,
          return: null,
          waits: [{ crew: "ev2", seconds: 120, on: { crew: ["ev1"] } }],
        },
      ],
      criticalPath: ["a", "meet"],
      windows: [],
      risk: expect.objectContaining({
        mean: 420,
        sd: 0,
        withinLimit: 1,
        criticality: { a: 1, b: 0, meet: 1 },
      }),
    });
  });

  it("[PRO5] [PRO9] takes outcomes, get-aheads and a start", async () => {
    const { out } = await tetherline(
      "plan",
      trial,
      "--json",
      "--decide",
      "bolt=stuck",
      "--get-aheads",
      "--start",
      "2031-04-02T11:00:00+02:00",
    );
    const document = json(out) as unknown as { start: string; finish: number; steps: { id: string }[] };
    expect(document.start).toBe("2031-04-02T09:00:00.000Z");
    expect(document.finish).toBe(27 * 60);
    expect(document.steps.map(({ id }) => id)).toEqual(["a", "b", "meet", "long", "extra"]);
  });

  it("[PLN3] [PRO17] names the PET before which a step does not start as what a wait is for", async () => {
    const set = fileWith([step("a", "ev1", 5), step("call", "ev1", 1, { notBefore: "PT20M" })], {
      format: "tetherline.procedure/2",
    });
    const file = scratch.write("set.procedure.json", JSON.stringify(set));
    const { steps } = json((await tetherline("plan", file, "--json")).out) as unknown as {
      steps: { waits: unknown }[];
    };
    expect(steps[1]?.waits).toEqual([{ crew: "ev1", seconds: 900, on: { notBefore: 1200 } }]);
    expect((await tetherline("plan", file)).out).toContain(
      "EV1 15 min until PET 0:20:00, before which it does not start",
    );
  });

  it("[PLN5] [PRO17] has the share of samples that break each bound, in words and as a document", async () => {
    const bound = fileWith(
      [
        step("a", "ev1", 5, { doneBy: "PT4M" }),
        step("b", "ev2", 1, { after: [{ step: "c", within: "PT2M" }] }),
        step("c", "iv", 1),
        step("d", "ev2", 9),
      ],
      { format: "tetherline.procedure/2" },
    );
    bound.tasks[0]?.steps.reverse();
    const file = scratch.write("bound.procedure.json", JSON.stringify(bound));
    const { risk } = json((await tetherline("plan", file, "--samples", "50", "--json")).out) as unknown as {
      risk: { broken: unknown };
    };
    expect(risk.broken).toEqual([
      { step: "b", after: "c", within: 120, share: 1 },
      { step: "a", doneBy: 240, share: 1 },
    ]);
    const { out } = await tetherline("plan", file, "--samples", "50");
    expect(out).toContain("a is done later than 0:04 in > 99 % of the samples");
    expect(out).toContain("b starts more than 2 min after c in > 99 % of the samples");
  });

  it("[PLN5] has the risk when asked for samples, the same for the same seed", async () => {
    const spread = fileWith(
      [
        step("a", "ev1", null, { time: { low: "PT4M", likely: "PT5M", high: "PT12M" } }),
        step("b", "ev2", 1),
        step("meet", ["ev1", "ev2"], 2),
      ],
      { limits: { elapsed: "PT9M" } },
    );
    const file = scratch.write("spread.procedure.json", JSON.stringify(spread));
    const sampled = async (seed: string) =>
      json((await tetherline("plan", file, "--samples", "4000", "--seed", seed, "--json")).out)[
        "risk"
      ] as unknown as {
        mean: number;
        p10: number;
        p50: number;
        p90: number;
        withinLimit: number;
      };
    const risk = await sampled("7");
    expect(risk).toMatchObject({ samples: 4000, seed: 7, criticality: { a: 1, b: 0, meet: 1 }, unfit: 0 });
    // (4 + 4·5 + 12)/6 + 2 minutes, within four standard errors.
    expect(Math.abs(risk.mean - 480)).toBeLessThan(6);
    expect(risk.p10).toBeLessThan(risk.p50);
    expect(risk.p50).toBeLessThan(risk.p90);
    expect(risk.withinLimit).toBeGreaterThan(0.5);
    expect(await sampled("7")).toEqual(risk);
    expect(await sampled("8")).not.toEqual(risk);
    const words = await tetherline("plan", file, "--samples", "100");
    expect(words.out).toMatch(
      /Finish in 100 samples \(seed 1\): mean 0:0\d:\d\d, .* within the limit in [\d.]+ %/,
    );
  });

  it("ends 1 over the limit and in a deadlock, with the finding on standard error", async () => {
    const over = scratch.write(
      "over.procedure.json",
      JSON.stringify({ ...TRIAL, limits: { elapsed: "PT6M" } }),
    );
    const long = await tetherline("plan", over, "--json");
    expect([long.status, json(long.out)["finish"]]).toEqual([1, 420]);
    expect(long.err).toMatch(/error at line 1, column \d+: The plan runs 1 min over the elapsed limit\.\n$/);
    const ring = fileWith([step("a", "ev1", 1, { after: ["b"] }), step("b", "ev1", 1)]);
    const stuck = await tetherline(
      "plan",
      scratch.write("ring.procedure.json", JSON.stringify(ring)),
      "--json",
    );
    expect([stuck.status, json(stuck.out)]).toEqual([
      1,
      {
        procedure: "trial",
        start: null,
        finish: null,
        steps: [],
        criticalPath: [],
        windows: [],
        findings: [expect.objectContaining({ level: "error", code: "order/deadlock", steps: ["a", "b"] })],
        risk: null,
      },
    ]);
    expect(stuck.err).toContain("Deadlock");
  });

  it("shows an aligned table that defers to flight rules", async () => {
    const { out } = await tetherline("plan", trial);
    expect(out).toContain("1.3  0:05:00  0:07:00  critical  EV1 + EV2  meet  Do meet  EV2 2 min for EV1\n");
    expect(out).toMatch(/Advice only: the flight rules in force/);
  });

  it("keeps control characters of a file away from the terminal", async () => {
    const hostile = fileWith([step("a", "ev1", 1, { do: "Go \u001b[2J\u0007 home\n\nnow" })], {
      title: "T\u001b]0;x\u0007",
    });
    const file = scratch.write("hostile.procedure.json", JSON.stringify(hostile));
    for (const command of [
      ["plan", file],
      ["check", file],
    ]) {
      expect((await tetherline(...command)).out.replaceAll("\n", "")).not.toMatch(/\p{Cc}/u);
    }
  });
});

describe("verify", () => {
  const write = (name: string, all: readonly object[]) =>
    scratch.write(name, all.map((wire) => `${JSON.stringify(wire)}\n`).join(""));
  const sealed = write("sealed.walk.jsonl", wires());

  it("[SEL7] has one JSON document, and ends 0 for a log that is whole", async () => {
    const { status, out } = await tetherline("verify", sealed, "--trust", HUB_KEY, "--json");
    expect(status).toBe(0);
    expect(json(out)).toMatchObject({
      verdict: "whole",
      checkpoints: [{ code: FORM.code, trusted: true, state: "fits" }],
      findings: [],
    });
  });

  it("[SEL7] [SEL9] ends 1 for one that is broken, says where and what, and what no verdict proves", async () => {
    const spoiled = wires();
    Object.assign(spoiled[7] ?? {}, { actor: "somebody" });
    const { status, out } = await tetherline("verify", write("spoiled.walk.jsonl", spoiled));
    expect(status).toBe(1);
    expect(out).toContain("/devices/t4c8zh2prn, number 2: the seal does not fit the entry.");
    expect(out).toContain("This does not prove that an entry is true");
  });

  it("[SEL6] says whether a code that was read out is of this log, and of how much", async () => {
    const heard = (code: string) => tetherline("verify", sealed, "--code", code);
    expect((await heard(FORM.code.toLowerCase())).out).toContain("it is of 11 entries.");
    expect((await heard("AAA-AAA-AAA-AAA")).out).toContain("it differs in group 1, 2, 3 and 4");
    expect(await heard("AAA")).toMatchObject({ status: 2, out: "" });
  });

  it("[SEL6] prints root, order and the key of the hub, and the code with its words", async () => {
    const { out } = await tetherline("verify", sealed);
    const { root, order } = json((await tetherline("verify", sealed, "--json")).out);
    expect(out).toContain(`root ${String(root)}, order ${String(order)}.`);
    expect(out).toContain(`/hubs/vehicle has the key ${HUB_KEY}.`);
    expect(out).toMatch(/Read aloud: (\S+ \S+ \S+, ){3}\S+ \S+ \S+\.\n/);
  });

  it("[SEL7] says that a quick look was one", async () => {
    const { status, out } = await tetherline("verify", sealed, "--trust", HUB_KEY, "--quick");
    expect([status, out]).toEqual([0, expect.stringContaining("This was a quick look")]);
    expect((await tetherline("verify", sealed, "--trust", HUB_KEY)).out).not.toContain("quick look");
  });

  it("[SEL7] takes an extract, and says what it holds and what was left out", async () => {
    const file = scratch.path("public.extract.jsonl");
    const made = await tetherline("extract", sealed, "--kind", "record.taken", "--out", file);
    expect(made).toMatchObject({
      status: 0,
      err: "",
      out: expect.stringMatching(/: 1 entry in full, \d+ left out/),
    });
    const { status, out } = await tetherline("verify", file, "--trust", HUB_KEY, "--code", FORM.code);
    expect(status).toBe(0);
    expect(out).toContain("Whole: every entry in this extract");
    expect(out).toContain("Left out of /devices/a7k2mq9xwe: ");
    expect(out).toContain("This does not prove what the entries that were left out say");
    expect(out).toContain("it is of 11 entries.");
    expect(json((await tetherline("verify", file, "--json")).out)).toMatchObject({ verdict: "partly" });
    const changed = scratch.write(
      "changed.extract.jsonl",
      scratch.read("public.extract.jsonl").replaceAll('"step":', '"leap":'),
    );
    expect((await tetherline("verify", changed, "--trust", HUB_KEY)).status).toBe(1);
  });

  it("[SEL7] writes no extract of nothing, of everything, or without a checkpoint", async () => {
    const out = scratch.path("none.extract.jsonl");
    expect((await tetherline("extract", sealed, "--out", out)).status).toBe(2);
    expect((await tetherline("extract", sealed, "--step", "nothing", "--out", out)).status).toBe(1);
    expect(await tetherline("extract", log, "--kind", "step.done", "--out", out)).toMatchObject({
      status: 1,
      err: expect.stringContaining("no checkpoint"),
    });
    expect(() => scratch.read("none.extract.jsonl")).toThrow();
  });

  it("[SEL7] stands in the review as JSON and as an event log", async () => {
    const { out } = await tetherline("review", log, "--json");
    expect(json(out)["record"]).toMatchObject({
      verified: true,
      verdict: "partly",
      quick: false,
      trusted: [],
    });
    const { root } = json(out)["record"] as unknown as { root: string };
    expect((await tetherline("review", log, "--xes")).out).toContain(`key="record.root" value="${root}"`);
    expect(await tetherline("review", log, "--json", "--trust", "key")).toMatchObject({ status: 2, out: "" });
  });

  it("[SEL7] takes an old log as unsealed, and refuses what is no key", async () => {
    expect((await tetherline("verify", log)).status).toBe(0);
    expect(await tetherline("verify", log, "--trust", "key")).toMatchObject({ status: 2, out: "" });
  });
});

describe("plan with get-aheads", () => {
  const stepsOf = async (...more: string[]) =>
    (
      json((await tetherline("plan", trial, "--json", ...more)).out)["steps"] as unknown as { id: string }[]
    ).map(({ id }) => id);

  it("[PRO16] plans all, none, or those named", async () => {
    expect(await stepsOf()).not.toContain("extra");
    expect(await stepsOf("--get-ahead", "spare")).toContain("extra");
    expect(await stepsOf("--get-aheads")).toContain("extra");
  });

  it("[PRO16] refuses one that there is not, one that is none, and both ways of asking", async () => {
    expect(await tetherline("plan", trial, "--get-ahead", "nothing")).toMatchObject({ status: 2, out: "" });
    const { status, err } = await tetherline("plan", trial, "--get-ahead", "main");
    expect([status, err]).toEqual([2, expect.stringContaining("is no get-ahead")]);
    expect((await tetherline("plan", trial, "--get-aheads", "--get-ahead", "spare")).status).toBe(2);
  });
});

describe("plan as a table and as a workbook", () => {
  it("[WRT11] prints CSV, writes the workbook beside it, and says what was written", async () => {
    const xlsx = scratch.path("trial.xlsx");
    const { status, out, err } = await tetherline("plan", trial, "--csv", "--xlsx", xlsx, "--start", START);
    expect(status).toBe(0);
    expect(out.split("\r\n")[1]).toBe(
      "1.1,a,main,ev1,Do a,0,300,2031-01-01T00:00:00.000Z,2031-01-01T00:05:00.000Z,300,300,300,,,,0,yes,",
    );
    const [grid] = await openedWorkbook(new Blob([readFileSync(xlsx)]));
    expect(grid?.cells.get("C6")).toBe("EV1");
    expect(err).toContain(`${xlsx}: written, `);
  });

  it("[WRT11] asks for one form, and writes nothing where there is no plan", async () => {
    expect(await tetherline("plan", trial, "--csv", "--json")).toMatchObject({ status: 2, out: "" });
    const ring = scratch.write(
      "ring.procedure.json",
      JSON.stringify(
        fileWith([task("t", [step("a", "ev1", 1, { after: ["b"] }), step("b", "ev2", 1, { after: ["a"] })])]),
      ),
    );
    const xlsx = scratch.path("ring.xlsx");
    const { status, out, err } = await tetherline("plan", ring, "--csv", "--xlsx", xlsx);
    expect([status, out]).toEqual([1, ""]);
    expect(err).toContain("No plan can be made.");
    expect(existsSync(xlsx)).toBe(false);
  });
});

describe("rehearse", () => {
  it.each(PROCEDURES)("%s is played to its end, and folds with nothing ignored", async (file) => {
    const name = `${file.replaceAll("/", "-")}.walk.jsonl`;
    const played = await tetherline(
      "rehearse",
      file,
      "--seed",
      "11",
      "--start",
      START,
      "--out",
      scratch.path(name),
    );
    expect([played.status, played.out]).toEqual([0, ""]);
    expect(played.err).toMatch(/: \d+ entries, complete at PET /);
    const state = await tetherline("state", scratch.path(name), "--json");
    expect([state.status, state.err]).toEqual([0, ""]);
    const document = json(state.out) as unknown as {
      phase: string;
      ignored: [];
      lanes: { status: string; done: number; of: number }[];
    };
    expect(document).toMatchObject({ phase: "closed", ignored: [] });
    for (const lane of document.lanes) expect(lane).toMatchObject({ status: "finished", done: lane.of });
  });

  it("writes the same log byte for byte for the same seed and start, and another for another seed", async () => {
    const [file = ""] = PROCEDURES;
    const play = async (seed: string, start: string) =>
      (await tetherline("rehearse", file, "--seed", seed, "--start", start)).out;
    const first = await play("3", START);
    expect(await play("3", START)).toBe(first);
    expect(await play("4", START)).not.toBe(first);
    expect(await play("3", "2031-01-02T00:00:00Z")).not.toBe(first);
  });

  it("starts now unless told otherwise, and writes a whole log to standard output", async () => {
    const { out } = await tetherline("rehearse", trial);
    const entries = out
      .trimEnd()
      .split("\n")
      .map((line) => JSON.parse(line) as { type: string; time: string; data: object });
    expect(entries[0]).toMatchObject({
      type: "tetherline.walk.opened",
      time: new Date(NOW).toISOString(),
      data: { mode: "rehearsal", procedure: TRIAL },
    });
    expect(entries.at(-1)).toMatchObject({ type: "tetherline.walk.closed", data: { end: "complete" } });
  });

  it("[PRO9] skips a get-ahead, with a reason, when less than 15 min would be left", async () => {
    const skipped = async (elapsed: string) => {
      const file = scratch.write(
        `limit-${elapsed}.procedure.json`,
        JSON.stringify({ ...TRIAL, limits: { elapsed } }),
      );
      return (await tetherline("rehearse", file, "--seed", "1")).out.includes("tetherline.step.skipped");
    };
    expect(await skipped("PT30M")).toBe(false);
    expect(await skipped("PT20M")).toBe(true);
  });

  it("[ORD1] ends 1 when the walk comes to a stop, with the log up to there", async () => {
    const ring = fileWith([step("go", "ev2", 1), step("a", "ev1", 1, { after: ["b"] }), step("b", "ev1", 1)]);
    const file = scratch.write("stops.procedure.json", JSON.stringify(ring));
    const { status, out, err } = await tetherline("rehearse", file, "--start", START);
    expect([status, err]).toEqual([
      1,
      expect.stringMatching(/came to a stop before all was done; check says why\.\n$/),
    ]);
    expect(out).toContain('"end":"terminated"');
  });

  it("with a pace writes entries as time passes, that many times faster", async () => {
    const began = performance.now();
    const { out } = await tetherline("rehearse", trial, "--start", START, "--pace", "2000");
    // Seven minutes at 2,000 times their speed.
    expect(performance.now() - began).toBeGreaterThan(150);
    expect(out).toBe((await tetherline("rehearse", trial, "--start", START)).out);
  });

  it("replaces the log of a rehearsal, and leaves any other file alone", async () => {
    const to = (name: string) => tetherline("rehearse", trial, "--start", START, "--out", scratch.path(name));
    expect((await to("again.walk.jsonl")).status).toBe(0);
    const first = scratch.read("again.walk.jsonl");
    expect((await to("again.walk.jsonl")).status).toBe(0);
    expect(scratch.read("again.walk.jsonl")).toBe(first);
    const live = scratch.read("trial.walk.jsonl");
    const refused = await to("trial.walk.jsonl");
    expect([refused.status, refused.err]).toEqual([2, expect.stringMatching(/was left alone\.\n$/)]);
    expect(scratch.read("trial.walk.jsonl")).toBe(live);
  });
});

describe("state", () => {
  it("takes the state at the latest entry, with everything in seconds", async () => {
    const { status, out } = await tetherline("state", log, "--json");
    expect(status).toBe(0);
    expect(json(out)).toMatchObject({
      walk: "walk-1",
      phase: "running",
      pet: 540,
      ignored: [],
      deviations: [],
      outstanding: [],
      alerts: [],
    });
  });

  it("at an instant folds only the entries up to it", async () => {
    const { out } = await tetherline("state", log, "--at", "2031-04-02T09:05:00Z", "--json");
    expect(json(out)).toMatchObject({
      pet: 300,
      lanes: [
        { crew: "ev1", status: "working", step: "a", done: 0 },
        { crew: "ev2", status: "waiting", step: "meet", done: 1, waitingOn: [{ crew: "ev1", step: "a" }] },
        { crew: "iv", status: "working", step: "extra" },
      ],
    });
  });

  it("[LOG3] is the same document for the log shuffled and doubled", async () => {
    const lines = scratch.read("trial.walk.jsonl").trimEnd().split("\n");
    const doubled = scratch.write("doubled.walk.jsonl", [...lines, ...[...lines].reverse()].join("\n"));
    expect((await tetherline("state", doubled, "--json")).out).toBe(
      (await tetherline("state", log, "--json")).out,
    );
  });

  it("[LOG4] ends 1 when an entry had no effect or a line could not be read, and still shows the state", async () => {
    const ignored = scratch.write(
      "ignored.walk.jsonl",
      writeLines(LogWriter.started(TRIAL).done(["a", 6], ["a", 7]).entries),
    );
    const { status, out, err } = await tetherline("state", ignored, "--json");
    expect(status).toBe(1);
    expect(json(out)).toMatchObject({
      ignored: [{ source: "/devices/iv-tablet", id: "0000000004", reason: '"a" is already done' }],
    });
    expect(err).toMatch(/1 entry had no effect, first .*"a" is already done\.\n$/);
    const cut = scratch.write(
      "cut.walk.jsonl",
      `${scratch.read("trial.walk.jsonl")}{"specversion":"1.0","id":`,
    );
    const half = await tetherline("state", cut, "--json");
    expect([half.status, half.err]).toEqual([
      1,
      expect.stringMatching(/1 line could not be read, first line 6: it is not JSON\.\n$/),
    ]);
    expect(json(half.out)).toMatchObject({ pet: 540 });
  });

  it("shows lanes and waits in words", async () => {
    const { out } = await tetherline("state", log, "--at", "2031-04-02T09:05:00Z");
    expect(out).toMatch(/EV2\s+waiting\s+1\/2\s+\+0:00:00\s+meet\s+Do meet\s+EV1 \(a\)/);
  });
});

describe("review", () => {
  it("[REV1] is printed in words, JSON, CSV and XES", async () => {
    const words = await tetherline("review", log);
    expect(words.out).toContain("Last step complete at PET 0:09:00, planned 0:07:00, difference +0:02:00.");
    expect(json((await tetherline("review", log, "--json")).out)).toMatchObject({
      finish: { planned: 420, actual: 540, difference: 120 },
    });
    expect((await tetherline("review", log, "--csv")).out).toMatch(/^number,step,task,/);
    expect((await tetherline("review", log, "--xes")).out).toMatch(
      /^<\?xml version="1.0" encoding="UTF-8"\?>\n<log /,
    );
  });

  it("is asked for in one form at a time", async () => {
    expect(await tetherline("review", log, "--csv", "--xes")).toMatchObject({ status: 2, out: "" });
  });
});

describe("schema", () => {
  it("prints the JSON Schema of the procedure file", async () => {
    const { status, out } = await tetherline("schema");
    expect([status, json(out)]).toEqual([0, procedureJsonSchema()]);
    expect(out).toBe(readFileSync("procedures/procedure.schema.json", "utf8"));
  });
});
