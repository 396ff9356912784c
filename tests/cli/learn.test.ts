import { readdirSync } from "node:fs";
import { afterAll, describe, expect, it } from "vitest";
import { writeLines } from "../../src/core/log/index.ts";
import { flownIn, timeOf, twoSteps } from "../core/learn/observed-walks.ts";
import { fileWith, step } from "../core/procedure-builder.ts";
import { Scratch, tetherline } from "./run-tetherline.ts";

const scratch = new Scratch();
afterAll(() => scratch.remove());

const logOf = (
  id: string,
  ...parts: Parameters<typeof flownIn> extends [string, ...infer Rest] ? Rest : never
) => scratch.write(`${id}.walk.jsonl`, writeLines(flownIn(id, ...parts)));

describe("learn", () => {
  it("[LRN2] [LRN3] prints the model in JSON, and `change` takes what is offered", async () => {
    const logs = [logOf("w1", [4.5, 10]), logOf("w2", [4.6, 11])];
    const { status, out } = await tetherline("learn", ...logs, "--json");
    expect(status).toBe(0);
    const { steps, learning, forecasts } = JSON.parse(out);
    const [turn, stow] = steps;
    expect(turn).toMatchObject({ step: "turn", n: 2, weight: 2, kappa: 3, alpha: 3, offer: "offered" });
    expect(turn.p50).toBeCloseTo(60 * Math.exp(turn.mu), 9);
    expect(turn.proposal.likely).toBeGreaterThan(180);
    expect(turn.why).toBe("2 walks tell of it.");
    expect(stow.proposal).toBeNull();
    expect(learning).toBeNull();
    expect(forecasts).toMatchObject({ n: 0, verdict: null });
    const file = scratch.write("two.procedure.json", JSON.stringify(twoSteps()));
    const changes = scratch.write("offered.json", JSON.stringify([turn.change]));
    const changed = JSON.parse((await tetherline("change", file, changes)).out);
    const seconds = (text: string) => /^PT(?:(\d+)M)?(?:(\d+)S)?$/.exec(text)?.slice(1).map(Number);
    const [minutes = 0, rest = 0] = seconds(changed.tasks[0].steps[0].time.likely) ?? [];
    expect((minutes || 0) * 60 + (rest || 0)).toBe(Math.ceil(turn.proposal.likely));
  });

  it("[LRN4] says in a table what is thin, what is offered, and why not", async () => {
    const logs = [logOf("w1", [4.5, 10]), logOf("w2", [4.6, 11]), logOf("r", [4, 9], { mode: "rehearsal" })];
    const { out } = await tetherline("learn", ...logs);
    expect(out).toContain("From 2 live walks and 1 rehearsal.");
    expect(out).toMatch(/^1\.1 {2}turn .*0:02:00\/0:03:00\/0:06:00/m);
    expect(out).toContain("Repeats of the rehearsal: no learning is shown.");
    expect(out).toMatch(/^1\.1 {2}turn .* a$/m);
    const reasons = out.match(/^[a-z] {2}.*\.$/gm) ?? [];
    expect(reasons.map((line) => line[0])).toEqual(["a", "b"].slice(0, reasons.length));
    for (const reason of reasons) expect(out.split(reason.slice(3))).toHaveLength(2);
    expect(out).toContain("Nothing is changed");
  });

  it("[LRN6] a log of another procedure is refused by name", async () => {
    const other = logOf("o", [4], { file: fileWith([step("turn", "ev1", 3)], { id: "other" }) });
    const { status, err, out } = await tetherline("learn", other, logOf("w1", [4, 10]));
    expect(status).toBe(2);
    expect(out).toBe("");
    expect(err).toContain("o.walk.jsonl");
    expect(err).toContain('"other"');
  });

  it("[LRN6] a step that was renamed is told by its author, and to a step that is there", async () => {
    const old = fileWith([step("twist", "ev1", null, timeOf(2, 3, 6))]);
    const log = logOf("old", [4], { file: old });
    const file = scratch.write("new.procedure.json", JSON.stringify(twoSteps()));
    const count = async (...more: string[]) =>
      JSON.parse((await tetherline("learn", log, "--procedure", file, "--json", ...more)).out);
    expect(await count()).toMatchObject({ steps: [{ n: 0 }, { n: 0 }], unmatched: [{ step: "twist" }] });
    expect(await count("--renamed", "twist=turn")).toMatchObject({
      steps: [{ n: 1 }, { n: 0 }],
      unmatched: [],
    });
    const wrong = await tetherline("learn", log, "--procedure", file, "--renamed", "twist=spin");
    expect(wrong).toMatchObject({ status: 2, out: "" });
    expect((await tetherline("learn", log, "--renamed", "twist")).status).toBe(2);
  });

  it("[LRN1] a log given twice counts once, and one that does not fold cleanly gives status 1", async () => {
    const log = logOf("w1", [4.5, 10]);
    expect(JSON.parse((await tetherline("learn", log, log, "--json")).out).steps[0].n).toBe(1);
    const unclean = scratch.write(
      "unclean.walk.jsonl",
      `${scratch.read("w1.walk.jsonl")}{"not": "an entry"}\n`,
    );
    expect((await tetherline("learn", unclean)).status).toBe(1);
  });
});

describe("walks", () => {
  it("[CMP1] lays walks side by side, and compares two groups", async () => {
    const fast = [3, 3.1, 2.9].map((time, at) => logOf(`f${at}`, [time, 10]));
    const slow = [6, 6.1, 5.9].map((time, at) => logOf(`s${at}`, [time, 10]));
    const { status, out } = await tetherline("walks", ...fast, "--versus", ...slow, "--json");
    expect(status).toBe(0);
    const { walks, steps, groups, finish } = JSON.parse(out);
    expect(walks).toHaveLength(6);
    expect(walks[0]).toMatchObject({ walk: "f0", end: "complete", finish: 780, orderKept: 1 });
    expect(steps[0]).toMatchObject({ step: "turn", n: 6 });
    expect(steps[0].quantiles.p50).toBeCloseTo(270, 6);
    expect(finish).toMatchObject({ n: 6 });
    expect(groups).toMatchObject({ first: ["f0", "f1", "f2"], second: ["s0", "s1", "s2"] });
    expect(groups.steps[0]).toMatchObject({ step: "turn", n: [3, 3], shown: true });
    const text = await tetherline("walks", ...fast, "--versus", ...slow);
    expect(text.out).toContain("a difference is shown");
    expect(text.out).toMatch(/^f0 .* 100 % {2}EV1 100 %/m);
    expect(text.out).toContain("a difference does not tell its cause");
  });

  it("[CMP1] one walk alone has no groups and no points", async () => {
    const { out } = await tetherline("walks", logOf("w1", [4, 10]), "--json");
    expect(JSON.parse(out)).toMatchObject({ groups: null, finish: { n: 1, quantiles: null } });
  });
});

describe("rehearse", () => {
  it("[CMP2] writes many rehearsals at once, from which forecasts can be judged", async () => {
    const file = scratch.write("two.procedure.json", JSON.stringify(twoSteps()));
    const folder = scratch.path("many/rehearsals");
    const ran = await tetherline("rehearse", file, "--count", "3", "--seed", "5", "--out", folder);
    expect(ran).toMatchObject({ status: 0, out: "" });
    const logs = readdirSync(folder).sort();
    expect(logs).toEqual(["trial-5.walk.jsonl", "trial-6.walk.jsonl", "trial-7.walk.jsonl"]);
    const { out } = await tetherline("learn", ...logs.map((name) => `${folder}/${name}`), "--json");
    const { walks, steps } = JSON.parse(out);
    expect(walks).toHaveLength(3);
    expect(steps[0]).toMatchObject({ n: 3, weight: 0.75, thin: true, rehearsedOnly: true });
  });

  it("[CMP2] many need a folder and have no pace", async () => {
    const file = scratch.write("two.procedure.json", JSON.stringify(twoSteps()));
    expect((await tetherline("rehearse", file, "--count", "3")).status).toBe(2);
    const paced = await tetherline(
      "rehearse",
      file,
      "--count",
      "2",
      "--pace",
      "60",
      "--out",
      scratch.path("p"),
    );
    expect(paced.status).toBe(2);
  });
});
