import { spawn } from "node:child_process";
import { writeFileSync } from "node:fs";
import jsonPatch from "fast-json-patch";
import { afterAll, describe, expect, it } from "vitest";
import { fileWith, step, task } from "../core/procedure-builder.ts";
import { Scratch, tetherline } from "./run-tetherline.ts";

const scratch = new Scratch();
afterAll(() => scratch.remove());

const SOUND = fileWith([step("a", "ev1", 5), step("b", "ev2", 3)]);
const SPOILED = fileWith([
  task("t", [
    step("loosen-bolt", "ev9", 5),
    step("hold-plate", "ev2", 3, { after: ["losen-bolt"] }),
    step("turn-handle", "ev2", 3, { after: ["hold-plat"] }),
  ]),
]);
const text = (value: unknown) => JSON.stringify(value, null, 2);
const spoiled = scratch.write("spoiled.procedure.json", text(SPOILED));

interface Found {
  readonly code: string;
  readonly mend?: readonly unknown[];
}
async function findingsIn(file: string): Promise<readonly Found[]> {
  const { out } = await tetherline("check", file, "--json");
  return (JSON.parse(out) as { files: { findings: Found[] }[] }).files[0]?.findings ?? [];
}

describe("check --mend", () => {
  it("[CHK1] prints a patch that applies and takes the finding away; the file stays as it was", async () => {
    const findings = await findingsIn(spoiled);
    const mended = findings.flatMap(({ mend }, index) => (mend ? [index] : []));
    expect(mended.length).toBeGreaterThan(1);
    for (const index of mended) {
      const { status, out, err } = await tetherline("check", spoiled, "--mend", String(index + 1));
      expect([status, err]).toEqual([0, ""]);
      const patch = JSON.parse(out) as Parameters<typeof jsonPatch.applyPatch>[1];
      expect(patch).toEqual(findings[index]?.mend);
      const { newDocument } = jsonPatch.applyPatch(structuredClone(SPOILED), patch, true);
      const left = await findingsIn(scratch.write("mended.procedure.json", text(newDocument)));
      expect(left.length).toBeLessThan(findings.length);
    }
    expect(scratch.read("spoiled.procedure.json")).toBe(text(SPOILED));
  });

  it.each([
    ["a finding that is not there", ["--mend", "99"], /There is no finding 99: the file has \d+ findings\./],
    ["no number", ["--mend", "x"], /--mend/],
    ["zero", ["--mend", "0"], /--mend/],
    ["two files", [spoiled, "--mend", "1"], /--mend goes with one file\./],
  ])("[CHK1] %s cannot be used", async (_, args, sentence) => {
    const { status, out, err } = await tetherline("check", spoiled, ...args);
    expect([status, out]).toEqual([2, ""]);
    expect(err).toMatch(sentence);
    expect(err).toMatch(/^[^\n]+\n$/);
  });

  it("[CHK1] a finding that needs a judgement has no mend, and says so", async () => {
    const over = scratch.write("over.procedure.json", text({ ...SOUND, limits: { elapsed: "PT1M" } }));
    const findings = await findingsIn(over);
    const index = findings.findIndex(({ mend }) => !mend);
    expect(index).toBeGreaterThanOrEqual(0);
    const { status, err } = await tetherline("check", over, "--mend", String(index + 1));
    expect(status).toBe(2);
    expect(err).toContain(`(${findings[index]?.code}) no mend is proposed`);
  });
});

describe("check --watch", () => {
  it("[CHK1] checks again when the file is written, until it is stopped", async () => {
    const file = scratch.write("watched.procedure.json", text(SPOILED));
    const child = spawn("node", ["src/tetherline.mjs", "check", file, "--watch"], {
      stdio: ["ignore", "pipe", "pipe"],
    });
    let printed = "";
    child.stdout.on("data", (chunk: Buffer) => {
      printed += chunk.toString();
    });
    const until = async (wanted: RegExp) => {
      for (let waited = 0; waited < 15_000 && !wanted.test(printed); waited += 50)
        await new Promise((resolve) => setTimeout(resolve, 50));
      expect(printed).toMatch(wanted);
    };
    try {
      await until(/There is no crew member "ev9"/);
      printed = "";
      // The watch on the folder begins after the first check has been printed.
      await new Promise((resolve) => setTimeout(resolve, 500));
      writeFileSync(file, text(SOUND));
      await until(/no findings/);
      printed = "";
      // A file that cannot be read for a while does not end the watch.
      writeFileSync(file, "{");
      await until(/ERROR/);
      writeFileSync(file, text(SOUND));
      await until(/no findings/);
      expect(child.exitCode).toBeNull();
    } finally {
      child.kill();
    }
    const [code, signal] = await new Promise<[number | null, string | null]>((resolve) => {
      if (child.exitCode !== null || child.signalCode !== null) resolve([child.exitCode, child.signalCode]);
      else child.once("exit", (...ended) => resolve(ended));
    });
    expect(code === 0 || signal === "SIGTERM").toBe(true);
  }, 40_000);
});

describe("check in lines", () => {
  it("[CHK1] sets in what follows from another finding, and says what a mend does", async () => {
    const file = scratch.write(
      "astray.procedure.json",
      text(
        fileWith(
          [
            step("work", "ev1", 5, { at: "boom" }),
            step("more", "ev1", 5, { at: "boom" }),
            step("back", "ev1", 5, { at: "hatch" }),
          ],
          {
            crew: [{ id: "ev1", call: "EV1", station: "outside", start: "hatch" }],
            places: [{ id: "hatch", refuge: true }, { id: "boom" }],
            routes: [{ between: ["hatch", "boom"], length: 5, time: "PT1M" }],
          },
        ),
      ),
    );
    const { out } = await tetherline("check", file);
    const lines = out.split("\n");
    expect(lines.filter((line) => line.includes("place/not-there")).map((line) => line.search(/\S/))).toEqual(
      [2, 6],
    );
    const { out: json } = await tetherline("check", file, "--json");
    const [first, second] =
      (JSON.parse(json) as { files: { findings: object[] }[] }).files[0]?.findings ?? [];
    expect(first).not.toHaveProperty("follows");
    expect(second).toMatchObject({ follows: { code: "place/not-there", pointer: "/tasks/0/steps/0/at" } });
  });
});
