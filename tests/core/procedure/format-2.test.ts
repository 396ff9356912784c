import { describe, expect, it } from "vitest";
import type { Finding, ProcedureFile } from "../../../src/core/procedure/index.ts";
import { FORMAT, FORMATS, parseProcedure } from "../../../src/core/procedure/index.ts";
import { fileWith, step, task } from "../procedure-builder.ts";
import { said } from "../said.ts";

const brief = ({ level, code, pointer }: Finding) => `${level} ${code} ${pointer}`;

/** A file that uses every key of format 2. */
const whole = (): ProcedureFile =>
  fileWith(
    [
      task(
        "out",
        [
          step("open", "ev1", 2, { sets: { hatch: "open", rest: "ev1" }, check: ["Clamp 1", "Clamp 2"] }),
          step("go", "ev1", null, {
            to: "boom",
            after: [{ step: "open", lag: "PT1M", within: "PT20M" }],
            needs: { hatch: "open" },
            notBefore: "PT1M",
            doneBy: "PT1H",
            or: [["ev2"], { by: ["ev2"], time: "PT4M" }],
            pictures: ["p1"],
            refs: ["Tool sheet 4"],
            brief: "Slowly",
            scene: true,
            from: {
              fragment: "way-out",
              revision: "A",
              use: "way-out",
              part: "go",
              blanks: { who: { crew: "ev1" } },
            },
            moves: [{ item: "bar", to: { crews: ["ev1", "ev2"] } }],
          }),
        ],
        { worth: 3, order: "free", brief: "The way out" },
      ),
    ],
    {
      format: FORMAT,
      limits: { elapsed: "PT6H30M", apart: 15 },
      crew: [
        { id: "ev1", call: "EV1", station: "outside", start: "hatch" },
        { id: "ev2", call: "EV2", station: "outside", start: "hatch" },
      ],
      places: [{ id: "hatch", refuge: true }, { id: "boom" }],
      routes: [{ between: ["hatch", "boom"], length: 2, time: "PT2M", needs: { hatch: "open" } }],
      items: [{ id: "bar", start: { crews: ["ev1", "ev2"] }, hands: 2, mass: 14, size: "1.2 x 0.1 x 0.1 m" }],
      states: [
        { id: "hatch", label: "Outer hatch", values: ["closed", "open"], start: "closed", end: "closed" },
        { id: "rest", label: "Foot restraint 1", values: "crew", start: "free" },
      ],
      pictures: [{ id: "p1", label: "The boom", type: "image/png", data: "iVBORw0KGgo=" }],
      contingencies: [{ id: "silent", title: "Silence", when: "EV2 does not answer", tasks: [] }],
      watches: [{ id: "gloves", by: ["ev1"], do: "Check gloves", every: "PT30M", time: "PT1M" }],
    },
  );

type Spoil = (file: ReturnType<typeof whole> & Record<string, never>) => void;
const spoiled = (spoil: (file: never) => void): ProcedureFile => {
  const file = structuredClone(whole());
  spoil(file as never);
  return file;
};

describe("a procedure of format 2", () => {
  it("[PRO11] is read with every key, and refused when it says that it is of format 1, each key at its place", () => {
    expect(parseProcedure(whole()).findings).toEqual([]);
    const { findings, file } = parseProcedure({ ...whole(), format: FORMATS[0] });
    expect(file).toBeNull();
    expect(new Set(findings.map(({ code }) => code))).toEqual(new Set(["file/key-of-newer-format"]));
    expect(findings.map(({ pointer }) => pointer).toSorted()).toEqual(
      [
        "/states",
        "/pictures",
        "/limits/apart",
        "/routes/0/needs",
        "/items/0/hands",
        "/items/0/mass",
        "/items/0/size",
        "/items/0/start/crews",
        "/watches/0/time",
        "/contingencies/0/when",
        "/tasks/0/worth",
        "/tasks/0/order",
        "/tasks/0/brief",
        "/tasks/0/steps/0/sets",
        "/tasks/0/steps/0/check",
        ...["needs", "notBefore", "doneBy", "or", "pictures", "refs", "brief", "scene", "from"].map(
          (key) => `/tasks/0/steps/1/${key}`,
        ),
        "/tasks/0/steps/1/after/0/within",
        "/tasks/0/steps/1/moves/0/to/crews",
      ].toSorted(),
    );
    expect(said(findings[0] as Finding)).toBe(
      'The key "states" belongs to "tetherline.procedure/2", and the file says that it is "tetherline.procedure/1". Change the format line to "tetherline.procedure/2".',
    );
    expect(findings[0]?.repair).toEqual([{ op: "replace", path: "/format", value: FORMAT }]);
  });

  it("[PRO11] reads what the keys say, and a file of format 1 has the least of each", () => {
    const read = parseProcedure(whole()).procedure;
    expect(read?.tasks[0]?.steps[1]).toMatchObject({
      after: [{ step: "open", lag: 60_000, within: 1_200_000 }],
      or: [
        { by: ["ev2"], time: null },
        { by: ["ev2"], time: { likely: 240_000 } },
      ],
      needs: { hatch: "open" },
      notBefore: 60_000,
      doneBy: 3_600_000,
      scene: true,
    });
    const older = parseProcedure(fileWith([step("a", "ev1", 1)])).procedure;
    expect(older).toMatchObject({ format: FORMATS[0], states: [], pictures: [], limits: {} });
    expect(older?.tasks[0]?.steps[0]).toMatchObject({
      or: [],
      check: [],
      pictures: [],
      refs: [],
      scene: false,
    });
  });

  it.each<[string, Spoil, string]>([
    [
      "a state that needs name",
      (file) => Object.assign(file.tasks[0]?.steps[1] ?? {}, { needs: { hatsch: "open" } }),
      "error file/no-such-reference /tasks/0/steps/1/needs/hatsch",
    ],
    [
      "a state that a route names",
      (file) => Object.assign(file.routes?.[0] ?? {}, { needs: { door: "open" } }),
      "error file/no-such-reference /routes/0/needs/door",
    ],
    [
      "a value that the state does not have",
      (file) => Object.assign(file.tasks[0]?.steps[0] ?? {}, { sets: { hatch: "opened" } }),
      "error state/no-such-value /tasks/0/steps/0/sets/hatch",
    ],
    [
      "a crew member who cannot have a state",
      (file) => Object.assign(file.tasks[0]?.steps[0] ?? {}, { sets: { rest: "ev9" } }),
      "error state/no-such-value /tasks/0/steps/0/sets/rest",
    ],
    [
      "a start of a state",
      (file) => Object.assign(file.states?.[0] ?? {}, { start: "ajar" }),
      "error state/no-such-value /states/0/start",
    ],
    [
      "a value that stands twice",
      (file) => Object.assign(file.states?.[0] ?? {}, { values: ["closed", "open", "open"] }),
      "error file/doubled-id /states/0/values",
    ],
    [
      "an id of a state that is used twice",
      (file) => file.states?.push({ id: "hatch", values: ["closed"], start: "closed" }),
      "error file/doubled-id /states/2/id",
    ],
    [
      "a crew member among several who hold an item",
      (file) => Object.assign(file.items?.[0] ?? {}, { start: { crews: ["ev1", "ev9"] } }),
      "error file/no-such-reference /items/0/start/crews/1",
    ],
    [
      "somebody who could do a step instead",
      (file) => Object.assign(file.tasks[0]?.steps[1] ?? {}, { or: [{ by: ["ev2", "ev9"] }] }),
      "error file/no-such-reference /tasks/0/steps/1/or/0/by/1",
    ],
    [
      "a picture",
      (file) => Object.assign(file.tasks[0]?.steps[1] ?? {}, { pictures: ["p2"] }),
      "error file/no-such-reference /tasks/0/steps/1/pictures/0",
    ],
    [
      "hands of an item",
      (file) => Object.assign(file.items?.[0] ?? {}, { hands: 3 }),
      "error file/wrong-value /items/0/hands",
    ],
    [
      "a picture that is no Base64",
      (file) => Object.assign(file.pictures?.[0] ?? {}, { data: "?" }),
      "error file/wrong-value /pictures/0/data",
    ],
  ])("[PRO10] [PRO13] has its errors found at their place: %s", (_, spoil, expected) => {
    const { findings } = parseProcedure(spoiled(spoil as never));
    expect(findings.map(brief)).toEqual([expected]);
    for (const one of findings) expect(said(one)?.length).toBeGreaterThan(10);
  });
});
