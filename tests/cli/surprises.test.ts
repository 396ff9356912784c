import { readFileSync } from "node:fs";
import { afterAll, describe, expect, it } from "vitest";
import { FILE, surprise, surprisesText } from "../core/training/surprise-builder.ts";
import { Scratch, tetherline } from "./run-tetherline.ts";

const scratch = new Scratch();
afterAll(() => scratch.remove());

const START = "2031-01-01T00:00:00Z";
const procedure = scratch.write("trial.procedure.json", JSON.stringify(FILE));
const stretch = { kind: "stretch", step: "read", factor: 3 };
const silent = { kind: "silent", crew: "ev2", for: "PT6M" };
const sound = scratch.write(
  "trial.surprises.json",
  surprisesText([surprise("slow", stretch), surprise("quiet", silent, { chance: 0.5 })]),
);
const wrong = scratch.write(
  "wrong.surprises.json",
  surprisesText([surprise("slow", { ...stretch, step: "gone" })]),
);

describe("[TRN1] surprises on the command line", () => {
  it("are checked beside their procedure, line by line", async () => {
    const fine = await tetherline("check", procedure, sound);
    expect(fine.out).toContain(`${sound}\n  Nothing to say`);
    expect(fine.err).toBe("");
    const { status, out } = await tetherline("check", procedure, wrong);
    expect(status).toBe(1);
    expect(out).toMatch(/ERROR +\d+:\d+ +surprises\/no-step\n +There is no step "gone"\./i);
    const document = JSON.parse((await tetherline("check", wrong, procedure, "--json")).out) as {
      files: { file: string; findings: object[] }[];
    };
    expect(document.files[0]).toMatchObject({
      file: wrong,
      findings: [{ code: "surprises/no-step", pointer: "/surprises/0/does/step", things: ["slow"] }],
    });
  });

  it("are not checked without their procedure, which is told", async () => {
    const { status, out, err } = await tetherline("check", sound);
    expect([status, out]).toEqual([2, ""]);
    expect(err).toContain('name the file of the procedure "trial" beside it');
  });

  it("of another procedure are told beside the one that is there", async () => {
    const other = scratch.write(
      "other.surprises.json",
      surprisesText([surprise("slow", stretch)], { procedure: "other" }),
    );
    expect((await tetherline("check", procedure, other)).out).toContain("surprises/other-procedure");
  });

  it("come in a rehearsal as its seed draws them, the same each time, and are not readable in its log", async () => {
    const play = (seed: string) =>
      tetherline("rehearse", procedure, "--seed", seed, "--start", START, "--surprises", sound);
    const first = await play("1");
    expect(first.status).toBe(0);
    expect(first.err).toMatch(/^[12] of 2 surprises (was|were) laid/);
    expect((await play("1")).out).toBe(first.out);
    expect(first.out).toContain("tetherline.surprise.laid");
    expect(first.out).not.toMatch(/slow|quiet|stretch/);
    const laid = await Promise.all(
      ["1", "2", "3", "4", "5", "6"].map(async (seed) => (await play(seed)).err),
    );
    expect(new Set(laid.map((err) => err[0]))).toEqual(new Set(["1", "2"]));
  });

  it("that are wrong stop a rehearsal with the first finding", async () => {
    const ran = await tetherline("rehearse", procedure, "--surprises", wrong);
    expect([ran.status, ran.out]).toEqual([1, ""]);
    expect(ran.err).toMatch(/has 1 error, first at line \d+, column \d+: There is no step "gone"\./);
  });

  it("come in each of many rehearsals by its own seed", async () => {
    const folder = scratch.path("many");
    const many = await tetherline(
      "rehearse",
      procedure,
      "--surprises",
      sound,
      "--count",
      "6",
      "--out",
      folder,
    );
    expect(many.status).toBe(0);
    const laid = [1, 2, 3, 4, 5, 6].map(
      (seed) =>
        readFileSync(`${folder}/trial-${seed}.walk.jsonl`, "utf8").match(/surprise\.laid/g)?.length ?? 0,
    );
    expect(new Set(laid)).toEqual(new Set([1, 2]));
  });

  it("have a schema", async () => {
    const { status, out } = await tetherline("schema", "--surprises");
    expect(status).toBe(0);
    expect(out).toBe(readFileSync("procedures/surprises.schema.json", "utf8"));
  });
});

describe("[TRN3] the review on the command line", () => {
  it("tells the surprises of a closed walk, in words and in JSON", async () => {
    const log = scratch.path("walk.jsonl");
    await tetherline("rehearse", procedure, "--start", START, "--surprises", sound, "--out", log);
    const document = JSON.parse((await tetherline("review", log, "--json")).out) as { surprises: object[] };
    expect(document.surprises[0]).toMatchObject({
      surprise: { id: "slow", when: { pet: "PT5M" } },
      began: 300,
      noticed: null,
      within: false,
    });
    const { out } = await tetherline("review", log);
    expect(out).toMatch(/Surprises\n\n +0:05:00 Surprise slow: .*read takes 3 times as long\./);
    expect(out).toContain("Expected of IV within 5 min: that it is so call a hold");
    expect(out).toContain("No entry shows that it was noticed.");
  });
});
