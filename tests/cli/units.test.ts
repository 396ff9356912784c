import { afterAll, expect, it } from "vitest";
import { fileWith, step } from "../core/procedure-builder.ts";
import { surprise, surprisesText } from "../core/training/surprise-builder.ts";
import { Scratch, tetherline } from "./run-tetherline.ts";

const scratch = new Scratch();
afterAll(() => scratch.remove());

/** A line that is two metres short, and a pressure in pounds by square inch. */
const procedure = scratch.write(
  "units.procedure.json",
  JSON.stringify(
    fileWith(
      [
        step("go", "ev1", 5, { to: "mast" }),
        step("read", "ev1", 2, {
          records: [{ id: "suit", label: "Suit", unit: "[psi]", min: 4.1, max: 4.4 }],
        }),
      ],
      {
        crew: [
          {
            id: "ev1",
            call: "EV1",
            station: "outside",
            start: "lock",
            tether: { anchor: "lock", length: 3 },
          },
          { id: "iv", call: "IV", station: "inside" },
        ],
        places: [{ id: "lock", refuge: true }, { id: "mast" }],
        routes: [{ between: ["lock", "mast"], length: 5 }],
      },
    ),
  ),
);
const TETHER = "5 m by the shortest way";

it("[WRD5] are as written where --units is missing, and those of a system beside them where it asks for one", async () => {
  expect((await tetherline("check", procedure)).out).toContain(TETHER);
  for (const args of [
    ["check", procedure, "--units", "us"],
    ["--units=us", "check", procedure],
  ]) {
    const { out } = await tetherline(...args);
    expect(out.replaceAll(/\s+/g, " ")).toContain("5 m (16 ft) by the shortest way");
    expect(out.replaceAll(/\s+/g, " ")).toContain("2 m (7 ft) too short");
  }
  expect((await tetherline("check", procedure)).out).toContain(TETHER);
});

it("[WRD5] a value outside its limits is told in both, and a document for machines has what was written alone", async () => {
  const low = surprise("low", { kind: "record", step: "read", record: "suit", value: 3.9 });
  const surprises = scratch.write("units.surprises.json", surprisesText([low]));
  const start = "2031-01-01T00:00:00Z";
  const played = await tetherline("rehearse", procedure, "--start", start, "--surprises", surprises);
  const log = scratch.write("units.walk.jsonl", played.out);
  const state = await tetherline("state", log, "--units", "si");
  expect(state.out).toContain("Suit: 3.9 psi (26.9 kPa) is below 4.1 psi (28.3 kPa)");
  for (const form of ["--json", "--csv"]) {
    const plain = await tetherline("review", log, form);
    expect(plain.out).toContain("3.9");
    expect((await tetherline("review", log, form, "--units", "si")).out).toBe(plain.out);
  }
  expect((await tetherline("state", log, "--json", "--units", "si")).out).toBe(
    (await tetherline("state", log, "--json")).out,
  );
});

it("[WRD5] that are none are refused, with those that there are", async () => {
  expect(await tetherline("check", procedure, "--units", "cubits")).toMatchObject({
    status: 2,
    err: expect.stringContaining("si and us"),
  });
  expect((await tetherline("check", procedure, "--units")).status).toBe(2);
});
