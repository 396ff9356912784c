import { describe, expect, it } from "vitest";
import { checkProcedureText } from "../../../src/core/check/index.ts";
import type { Finding, ProcedureFile } from "../../../src/core/procedure/index.ts";
import { FORMAT } from "../../../src/core/procedure/index.ts";
import { fileWith, step } from "../procedure-builder.ts";
import { said } from "../said.ts";

type FileStep = ProcedureFile["tasks"][number]["steps"][number];

const OUTSIDE: Partial<ProcedureFile> = {
  format: FORMAT,
  crew: [
    { id: "ev1", call: "EV1", station: "outside", start: "hatch" },
    { id: "ev2", call: "EV2", station: "outside", start: "hatch" },
    { id: "iv", call: "IV", station: "inside" },
    { id: "ground", call: "Ground", station: "ground" },
  ],
  places: [
    { id: "lock", label: "Airlock", refuge: true },
    { id: "hatch", label: "Hatch", refuge: true },
    { id: "boom", label: "Boom" },
  ],
  routes: [
    { between: ["lock", "hatch"], length: 2, time: "PT1M", needs: { hatch: "open" } },
    { between: ["hatch", "boom"], length: 15, time: "PT10M" },
  ],
  states: [{ id: "hatch", label: "Outer hatch", values: ["closed", "open"], start: "closed" }],
};

const errorsIn = (steps: FileStep[], more: Partial<ProcedureFile> = {}): Finding[] =>
  checkProcedureText(JSON.stringify(fileWith(steps, { ...OUTSIDE, ...more }), null, 1)).findings.filter(
    ({ level }) => level === "error",
  );
const brief = ({ code, pointer }: Finding) => `${code} ${pointer}`;

describe("routes that need a state", () => {
  const out = (id: string, more: Partial<FileStep> = {}) => step(id, "ev1", null, { to: "hatch", ...more });
  const crew: ProcedureFile["crew"] = [
    { id: "ev1", call: "EV1", station: "outside", start: "lock" },
    { id: "iv", call: "IV", station: "inside" },
  ];

  it("[PRO13] [PRO6] are a way once the state is set, whoever sets it", () => {
    const open = step("open", "iv", 1, { sets: { hatch: "open" } });
    expect(errorsIn([open, out("go", { after: ["open"] })], { crew })).toEqual([]);
    const found = errorsIn([open, out("go")], { crew });
    expect(found.map(brief)).toEqual(["place/way-closed /tasks/0/steps/1/to"]);
    expect(said(found[0])).toBe(
      'In "go" EV1 goes from Airlock to Hatch, which is a way only while Outer hatch is open: "open" sets Outer hatch to open, but nothing says that it comes first; until then it is closed. Let "go" come after "open", or set it in a step before.',
    );
    expect(found[0]?.mend).toBeNull();
  });

  it("[PRO13] are no way for a translation with a time of its own either", () => {
    const found = errorsIn([step("go", "ev1", 5, { to: "hatch" })], { crew });
    expect(found.map(brief)).toEqual(["place/way-closed /tasks/0/steps/0/to"]);
  });

  it("[PRO13] are left for another way where there is one", () => {
    const routes = [
      ...(OUTSIDE.routes ?? []),
      { between: ["lock", "boom"] as [string, string], length: 9, time: "PT9M" },
    ];
    const read = checkProcedureText(JSON.stringify(fileWith([out("go")], { ...OUTSIDE, crew, routes })));
    expect(read.findings.filter(({ level }) => level === "error")).toEqual([]);
  });
});

describe("a hand-over", () => {
  const items = [{ id: "lamp", label: "Lamp", start: { crew: "ev1" }, end: { crew: "ev2" } }];
  const give = (more: Partial<FileStep> = {}) =>
    step("give", ["ev1", "ev2"], 1, { moves: [{ item: "lamp", to: { crew: "ev2" } }], ...more });

  it("[PRO15] is an error where the two are at different places, and fine where they are at one", () => {
    expect(errorsIn([give()], { items })).toEqual([]);
    const found = errorsIn([step("go", "ev1", null, { to: "boom" }), give()], { items });
    expect(found.map(brief)).toEqual(["custody/hand-over-apart /tasks/0/steps/1/moves/0"]);
    expect(said(found[0])).toBe(
      'In "give" Lamp cannot pass from EV1 (at Boom) to EV2 (at Hatch). Let both be at one place first, or say with "at" where it is done.',
    );
  });

  it("[PRO15] is an error between somebody inside and somebody at a place outside, and fine at a refuge", () => {
    const toInside = step("give", ["ev1", "iv"], 1, { moves: [{ item: "lamp", to: { crew: "iv" } }] });
    const end = [{ ...items[0], id: "lamp", start: { crew: "ev1" }, end: { crew: "iv" } }];
    expect(errorsIn([toInside], { items: end })).toEqual([]);
    const found = errorsIn([step("go", "ev1", null, { to: "boom" }), toInside], { items: end });
    expect(found.map(brief)).toEqual(["custody/hand-over-apart /tasks/0/steps/1/moves/0"]);
    expect(said(found[0])).toContain("from EV1 (at Boom) to IV (inside)");
  });

  it("[PRO15] only a step in which something passes needs both at one place", () => {
    const talk = step("talk", ["ev1", "ev2"], 1);
    expect(errorsIn([step("go", "ev1", null, { to: "boom" }), talk])).toEqual([]);
  });
});

describe("people inside or on the ground", () => {
  it.each(["iv", "ground"])("[PRO15] %s does nothing at a place outside", (who) => {
    const found = errorsIn([step("loosen", who, 1, { at: "boom" })]);
    expect(found.map(brief)).toEqual(["place/inside-works-outside /tasks/0/steps/0/at"]);
    expect(said(found[0])).toContain('"loosen" is done at Boom, which is outside');
  });

  it("[PRO15] take part by voice where somebody outside does it, and work at a refuge", () => {
    expect(
      errorsIn([
        step("close", "iv", 1, { at: "lock" }),
        step("go", "ev1", null, { to: "boom" }),
        step("count", ["ev1", "iv"], 1, { at: "boom" }),
      ]),
    ).toEqual([]);
  });
});

describe("hands", () => {
  const items = [
    { id: "bar", label: "Bar", hands: 2 as const, start: { place: "hatch" }, end: { place: "hatch" } },
    { id: "lamp", label: "Lamp", hands: 1 as const, start: { crew: "ev1" } },
    { id: "cap", label: "Cap", start: { crew: "ev1" } },
  ];
  const take = step("take", "ev1", 2, { moves: [{ item: "bar", to: { crew: "ev1" } }] });
  const back = step("back", "ev1", 1, { moves: [{ item: "bar", to: { place: "hatch" } }] });

  it("[PRO14] more in hand than two hands hold is an error, with the moment and all that is in hand", () => {
    const found = errorsIn([step("wait", "ev1", 3), take, back], { items });
    expect(found.map(brief)).toEqual(["custody/hands-full /tasks/0/steps/1/moves/0"]);
    expect(said(found[0])).toBe(
      'After "take", at PET 0:05:00, EV1 has Bar and Lamp in hand, which takes 3 hands. Put something away first, or hand it over.',
    );
  });

  it("[PRO14] what is put away first, lies in a bag or is stowed on the suit needs no hand", () => {
    const away = step("away", "ev1", 1, { moves: [{ item: "lamp", to: { item: "cap" } }] });
    expect(errorsIn([away, take, back], { items })).toEqual([]);
    const swap = step("swap", "ev1", 1, {
      moves: [
        { item: "bar", to: { crew: "ev1" } },
        { item: "lamp", to: { place: "hatch" } },
      ],
    });
    expect(errorsIn([swap, back], { items })).toEqual([]);
  });

  it("[PRO14] what several hold is held by each of them until a step says otherwise", () => {
    const both = step("both", ["ev1", "ev2"], 1, { moves: [{ item: "bar", to: { crews: ["ev1", "ev2"] } }] });
    const found = errorsIn([both, back], { items });
    expect(found.map(brief)).toEqual(["custody/hands-full /tasks/0/steps/0/moves/0"]);
    expect(errorsIn([both, back], { items: items.filter(({ id }) => id !== "lamp") })).toEqual([]);
    const absent = step("absent", "ev1", 1, { moves: [{ item: "bar", to: { crews: ["ev1", "ev2"] } }] });
    expect(errorsIn([absent], { items: items.slice(0, 1) }).map(({ code }) => code)).toContain(
      "custody/receiver-absent",
    );
  });

  it("[PRO14] too much in hand at PET 0 is found at the item", () => {
    const found = errorsIn([step("a", "ev1", 1)], {
      items: [
        items[1] as (typeof items)[1],
        { ...(items[0] as (typeof items)[0]), start: { crew: "ev1" } },
      ].map((one) => ({ ...one, end: one.start })),
    });
    expect(found.map(brief)).toEqual(["custody/hands-full /items/0"]);
    expect(said(found[0])).toMatch(/^At PET 0:00:00 EV1 has Lamp and Bar in hand/);
  });
});
