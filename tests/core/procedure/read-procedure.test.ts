import { readFileSync } from "node:fs";
import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { Finding, ProcedureFile } from "../../../src/core/procedure/index.ts";
import {
  parseProcedure,
  readJsonText,
  readProcedure,
  SIZE_LIMITS,
} from "../../../src/core/procedure/index.ts";
import { fileWith, step, task } from "../procedure-builder.ts";
import { said } from "../said.ts";

const REAL = readFileSync("procedures/osier-ranging-head.procedure.json", "utf8");

const brief = ({ level, code, pointer }: Finding) => `${level} ${code} ${pointer}`;
const briefs = (file: unknown) => parseProcedure(file).findings.map(brief);
const messages = (file: unknown) => parseProcedure(file).findings.map((one) => said(one) ?? "");

/** A small sound file, to be spoiled in one way or another. */
const sound = (): ProcedureFile =>
  fileWith(
    [
      task("first", [
        step("a", "ev1", 5, {
          decide: { id: "bolt", ask: "Free?", outcomes: ["free", "stuck"], expect: "free" },
        }),
        step("b", "ev2", 3, { when: { bolt: "stuck" }, within: ["contact"] }),
        step("go", "ev1", null, { to: "boom" }),
      ]),
    ],
    {
      crew: [
        { id: "ev1", call: "EV1", station: "outside", start: "hatch" },
        { id: "ev2", call: "EV2", station: "outside", start: "hatch" },
      ],
      places: [{ id: "hatch", refuge: true }, { id: "boom" }],
      routes: [{ between: ["hatch", "boom"], length: 6, time: "PT2M" }],
      items: [
        { id: "bag", start: { crew: "ev1" }, end: { place: "hatch" } },
        { id: "wrench", start: { item: "bag" }, end: { item: "bag" } },
      ],
      windows: [{ id: "contact", kind: "listed", spans: [{ from: "PT1M", to: "PT55M" }] }],
      supplies: [{ crew: "ev1", id: "oxygen", unit: "kPa", full: 6200, redline: 620, perHour: 700 }],
      watches: [{ id: "gloves", by: ["ev1"], do: "Check gloves", from: "a", until: "b", every: "PT30M" }],
      contingencies: [{ id: "stuck", title: "Stuck", tasks: [task("free-it", [step("c", "ev1", 2)])] }],
    },
  );

/** What to put where, by JSON Pointer; `undefined` takes away. */
type Spoil = Readonly<Record<string, unknown>>;

const spoiled = (spoil: Spoil): unknown => {
  const file = structuredClone(sound()) as unknown as Record<string, unknown>;
  for (const [pointer, value] of Object.entries(spoil)) {
    const path = pointer.slice(1).split("/");
    const last = path.pop() ?? "";
    const holder = path.reduce((at, key) => at[key] as Record<string, unknown>, file);
    if (value === undefined) delete holder[last];
    else holder[last] = value;
  }
  return file;
};

describe("reading a procedure", () => {
  it("takes a sound file, with durations in ms, lists present and defaults filled in", () => {
    const { procedure, findings, file } = parseProcedure(sound());
    expect(findings).toEqual([]);
    expect(file).toEqual(sound());
    expect(procedure?.tasks[0]?.steps[0]).toMatchObject({
      time: { low: 300_000, likely: 300_000, high: 300_000 },
      after: [],
      moves: [],
      records: [],
    });
    expect(procedure?.tasks[0]).toMatchObject({ priority: "essential", closeout: false });
  });

  it("sorts the alerts of a step: warnings, cautions, notes, each kind as written", () => {
    const file = spoiled({
      "/tasks/0/steps/0/alerts": ["note", "warning", "caution", "warning"].map((level, index) => ({
        level,
        text: `${index}`,
      })),
    });
    const texts = parseProcedure(file).procedure?.tasks[0]?.steps[0]?.alerts.map(({ text }) => text);
    expect(texts).toEqual(["1", "3", "2", "0"]);
  });

  const cases: readonly (readonly [rule: string, what: string, spoil: Spoil, expected: readonly string[]])[] =
    [
      [
        "PRO10",
        "an unknown crew member",
        { "/tasks/0/steps/0/by": ["ev9"] },
        ["error file/no-such-reference /tasks/0/steps/0/by/0"],
      ],
      [
        "PRO10",
        "an unknown place to be at",
        { "/tasks/0/steps/0/at": "mast" },
        ["error file/no-such-reference /tasks/0/steps/0/at"],
      ],
      [
        "PRO10",
        "an unknown place to go to",
        { "/tasks/0/steps/2/to": "mast" },
        ["error file/no-such-reference /tasks/0/steps/2/to"],
      ],
      [
        "PRO10",
        "an unknown anchor",
        { "/tasks/0/steps/0/anchor": "mast" },
        ["error file/no-such-reference /tasks/0/steps/0/anchor"],
      ],
      [
        "PRO10",
        "an unknown step",
        { "/tasks/0/steps/0/after": ["zz"] },
        ["error file/no-such-reference /tasks/0/steps/0/after/0"],
      ],
      [
        "PRO10",
        "an unknown step with a lag",
        { "/tasks/0/steps/0/after": [{ step: "zz", lag: "PT1M" }] },
        ["error file/no-such-reference /tasks/0/steps/0/after/0/step"],
      ],
      [
        "PRO10",
        "an unknown window",
        { "/tasks/0/steps/1/within": ["dark"] },
        ["error file/no-such-reference /tasks/0/steps/1/within/0"],
      ],
      [
        "PRO10",
        "an unknown item",
        { "/tasks/0/steps/0/moves": [{ item: "saw", to: { crew: "ev1" } }] },
        ["error file/no-such-reference /tasks/0/steps/0/moves/0/item"],
      ],
      [
        "PRO10",
        "an unknown receiver",
        { "/tasks/0/steps/0/moves": [{ item: "bag", to: { crew: "ev9" } }] },
        ["error file/no-such-reference /tasks/0/steps/0/moves/0/to/crew"],
      ],
      [
        "PRO10",
        "an unknown confirmer",
        { "/tasks/0/steps/0/confirm": { by: "ev9", text: "Seen" } },
        ["error file/no-such-reference /tasks/0/steps/0/confirm/by"],
      ],
      [
        "PRO10",
        "an unknown decision",
        { "/tasks/0/steps/1/when": { nut: "free" } },
        ["error file/no-such-reference /tasks/0/steps/1/when/nut"],
      ],
      [
        "PRO10",
        "an unknown start of a crew member",
        { "/crew/0/start": "mast" },
        ["error file/no-such-reference /crew/0/start"],
      ],
      [
        "PRO10",
        "an unknown anchor of a tether",
        { "/crew/0/tether": { anchor: "mast", length: 9 } },
        ["error file/no-such-reference /crew/0/tether/anchor"],
      ],
      [
        "PRO10",
        "an unknown end of a route",
        { "/routes/0/between/1": "mast" },
        ["error file/no-such-reference /routes/0/between/1"],
      ],
      [
        "PRO10",
        "an unknown holder of an item",
        { "/items/1/start": { item: "case" } },
        ["error file/no-such-reference /items/1/start/item"],
      ],
      [
        "PRO10",
        "an unknown user of a supply",
        { "/supplies/0/crew": "ev9" },
        ["error file/no-such-reference /supplies/0/crew"],
      ],
      [
        "PRO10",
        "an unknown step of a watch",
        { "/watches/0/until": "zz" },
        ["error file/no-such-reference /watches/0/until"],
      ],
      [
        "PRO10",
        "an unknown crew member in a contingency",
        { "/contingencies/0/tasks/0/steps/0/by": ["x"] },
        ["error file/no-such-reference /contingencies/0/tasks/0/steps/0/by/0"],
      ],
      [
        "PRO10",
        "a crew id used twice",
        { "/crew/1/id": "ev1" },
        ["error file/doubled-id /crew/1/id", "error file/no-such-reference /tasks/0/steps/1/by/0"],
      ],
      [
        "PRO10",
        "a step id used twice, contingencies included",
        { "/contingencies/0/tasks/0/steps/0/id": "a" },
        ["error file/doubled-id /contingencies/0/tasks/0/steps/0/id"],
      ],
      [
        "PRO10",
        "a place id used twice",
        { "/places/2": { id: "boom" } },
        ["error file/doubled-id /places/2/id"],
      ],
      [
        "PRO10",
        "a supply used twice by one crew member",
        { "/supplies/1": { crew: "ev1", id: "oxygen", unit: "kPa", full: 2, redline: 1, perHour: 1 } },
        ["error file/doubled-id /supplies/1/id"],
      ],
      [
        "PRO10",
        "a record id used twice in a step",
        { "/tasks/0/steps/0/records": [{ id: "r" }, { id: "r" }] },
        ["error file/doubled-id /tasks/0/steps/0/records/1/id"],
      ],
      [
        "PRO10",
        "a crew member named twice in a step",
        { "/tasks/0/steps/0/by": ["ev1", "ev1"] },
        ["error file/doubled-id /tasks/0/steps/0/by"],
      ],
      [
        "PRO10",
        "an outcome that stands twice",
        { "/tasks/0/steps/0/decide/outcomes": ["free", "stuck", "free"] },
        ["error file/doubled-id /tasks/0/steps/0/decide/outcomes"],
      ],
      [
        "PRO4",
        "a decision used before it is made",
        { "/tasks/0/steps/0/when": { bolt: "free" } },
        ["error decision/later /tasks/0/steps/0/when/bolt"],
      ],
      [
        "PRO4",
        "an outcome the decision does not have",
        { "/tasks/0/steps/1/when": { bolt: "bent" } },
        ["error decision/no-such-outcome /tasks/0/steps/1/when/bolt"],
      ],
      [
        "PRO5",
        "an expectation that is no outcome",
        { "/tasks/0/steps/0/decide/expect": "bent" },
        ["error decision/no-such-outcome /tasks/0/steps/0/decide/expect"],
      ],
      [
        "PRO6",
        "times that fall",
        { "/tasks/0/steps/0/time": { low: "PT5M", likely: "PT4M", high: "PT6M" } },
        ["error time/out-of-order /tasks/0/steps/0/time"],
      ],
      [
        "PRO6",
        "a step without a time",
        { "/tasks/0/steps/0/time": undefined },
        ["error time/missing /tasks/0/steps/0"],
      ],
      [
        "PRO6",
        "a duration in weeks",
        { "/tasks/0/steps/0/time": "P1W" },
        ["error file/wrong-value /tasks/0/steps/0/time"],
      ],
      [
        "PRO8",
        "an item inside itself",
        { "/items/0/start": { item: "wrench" } },
        ["error custody/inside-itself /items/0/start", "error custody/inside-itself /items/1/start"],
      ],
      [
        "PRO9",
        "a step that comes after a get-ahead",
        {
          "/tasks/1": { id: "spare", title: "Spare", priority: "get-ahead", steps: [step("x", "ev1", 1)] },
          "/tasks/0/steps/1/after": ["x"],
        },
        ["error order/get-ahead /tasks/0/steps/1/after/0"],
      ],
      [
        "PRO3",
        "a step that comes after a contingency's",
        { "/tasks/0/steps/1/after": ["c"] },
        ["error order/contingency /tasks/0/steps/1/after/0"],
      ],
      [
        "ORD1",
        "a step that comes after itself",
        { "/tasks/0/steps/1/after": ["b"] },
        ["error order/deadlock /tasks/0/steps/1/after/0"],
      ],
      [
        "PRO10",
        "a record whose lowest value is above its highest",
        { "/tasks/0/steps/0/records": [{ id: "r", min: 5, max: 4 }] },
        ["error file/wrong-value /tasks/0/steps/0/records/0/min"],
      ],
      [
        "PRO10",
        "a route from a place to itself",
        { "/routes/0/between": ["boom", "boom"] },
        ["error file/wrong-value /routes/0/between"],
      ],
      [
        "PRO10",
        "a watch that comes round at once",
        { "/watches/0/every": "PT0S" },
        ["error file/wrong-value /watches/0/every"],
      ],
      [
        "PRO10",
        "a listed window without spans",
        { "/windows/0/spans": undefined },
        ["error window/no-spans /windows/0"],
      ],
      [
        "PRO10",
        "a span that ends before it starts",
        { "/windows/0/spans/0/to": "PT0S" },
        ["error window/empty-span /windows/0/spans/0"],
      ],
      ["PRO10", "a missing key", { "/title": undefined }, ["error file/missing-key /title"]],
      [
        "PRO10",
        "a value of the wrong kind",
        { "/tasks/0/steps/0/do": 7 },
        ["error file/wrong-value /tasks/0/steps/0/do"],
      ],
      [
        "PRO10",
        "an id with a capital letter",
        { "/places/1/id": "Boom" },
        [
          "error file/wrong-value /places/1/id",
          "error file/no-such-reference /routes/0/between/1",
          "error file/no-such-reference /tasks/0/steps/2/to",
        ],
      ],
    ];
  it.each(cases)("[%s] refuses %s, with its pointer", (_rule, _what, spoil, expected) => {
    expect(briefs(spoiled(spoil))).toEqual(expected);
    expect(parseProcedure(spoiled(spoil)).procedure).toBeNull();
  });

  it("[PRO10] suggests the nearest known key and the nearest known id", () => {
    const file = spoiled({
      "/tasks/0/steps/0/whithin": [],
      "/crew/0/stasion": "outside",
      "/tasks/0/steps/1/within": ["contct"],
      "/tasks/0/steps/0/zzzzzzzzzzzz": 1,
    });
    const found = messages(file).join("\n");
    expect(found).toContain('"whithin" is not known here. Did you mean "within"?');
    expect(found).toContain('"stasion" is not known here. Did you mean "station"?');
    expect(found).toContain('There is no window "contct". Did you mean "contact"?');
    expect(found).toContain('"zzzzzzzzzzzz" is not known here.\n');
  });

  it("[PRO10] reports all errors of a file together", () => {
    const file = spoiled({
      "/extra": true,
      "/tasks/0/steps/0/by": ["ev9"],
      "/tasks/0/steps/1/time": "PT3X",
      "/items/0/end": { place: "mast" },
    });
    expect(new Set(briefs(file))).toEqual(
      new Set([
        "error file/unknown-key /extra",
        "error file/no-such-reference /tasks/0/steps/0/by/0",
        "error file/wrong-value /tasks/0/steps/1/time",
        "error file/no-such-reference /items/0/end/place",
      ]),
    );
  });

  it("[PRO10] escapes the pointer of a key (RFC 6901)", () => {
    expect(briefs({ ...sound(), "a/b~c": 1 })).toEqual(["error file/unknown-key /a~1b~0c"]);
  });

  it("[PRO11] refuses a newer version with a message that says so, and another format", () => {
    expect(briefs({ ...sound(), format: "tetherline.procedure/3" })).toEqual([
      "error file/newer-version /format",
    ]);
    expect(messages({ ...sound(), format: "tetherline.procedure/3" })[0]).toMatch(
      /version 3, newer than this program/,
    );
    expect(briefs({ ...sound(), format: "tetherline.procedure/2" })).toEqual([]);
    expect(briefs({ ...sound(), format: "other/1" })).toEqual(["error file/other-format /format"]);
  });

  const many = (count: number, make: (index: number) => object) =>
    Array.from({ length: count }, (_, index) => make(index));
  it.each([
    [
      "steps",
      (f: ProcedureFile) => ({
        ...f,
        tasks: [task("t", many(SIZE_LIMITS.steps + 1, (i) => step(`s${i}`, "ev1", 1)) as never)],
      }),
    ],
    [
      "crew",
      (f: ProcedureFile) => ({
        ...f,
        crew: many(SIZE_LIMITS.crew + 1, (i) => ({ id: `c${i}`, call: "C", station: "inside" })),
      }),
    ],
    [
      "items",
      (f: ProcedureFile) => ({
        ...f,
        items: many(SIZE_LIMITS.items + 1, (i) => ({ id: `i${i}`, start: { crew: "ev1" } })),
      }),
    ],
    [
      "decisions",
      (f: ProcedureFile) => ({
        ...f,
        tasks: [
          task(
            "t",
            many(SIZE_LIMITS.decisions + 1, (i) =>
              step(`s${i}`, "ev1", 1, { decide: { id: `d${i}`, ask: "?", outcomes: ["y"], expect: "y" } }),
            ) as never,
          ),
        ],
      }),
    ],
  ])("[PRO12] refuses too many %s clearly", (what, grow) => {
    const { findings } = parseProcedure(grow(sound()));
    expect(findings.map(brief)).toEqual(["error file/too-large "]);
    expect(said(findings[0])).toMatch(new RegExp(`has \\d+ ${what}; at most \\d+ are read`));
  });

  it("[PRO12] reads as many steps as are allowed, and refuses a file of over 10 MiB unread", () => {
    const full = {
      ...sound(),
      watches: [],
      contingencies: [],
      tasks: [task("t", many(SIZE_LIMITS.steps, (i) => step(`s${i}`, "ev1", 1)) as never)],
    };
    expect(parseProcedure(full).findings).toEqual([]);
    const { procedure, findings } = readProcedure(" ".repeat(SIZE_LIMITS.bytes + 1));
    expect(procedure).toBeNull();
    expect(findings.map(brief)).toEqual(["error file/too-large "]);
  });
});

describe("reading the text of a file", () => {
  it("[PRO10] gives the line and column of each finding", () => {
    const text =
      '{\n  "format": "tetherline.procedure/1",\n  "id": "x", "title": "X",\n  "crew": [{ "id": "ev1", "call": "EV1", "station": "inside" }],\n  "tasks": [{ "id": "t", "title": "T", "steps": [\n    { "id": "a", "by": ["ev2"], "do": "Go", "time": "PT1M" }\n  ]}]\n}';
    const { findings } = readProcedure(text);
    expect(findings.map(({ pointer, position }) => [pointer, position])).toEqual([
      ["/tasks/0/steps/0/by/0", { line: 6, column: 25 }],
    ]);
  });

  it("takes a byte order mark, and Windows line ends", () => {
    expect(readProcedure(`\uFEFF${REAL.replaceAll("\n", "\r\n")}`).findings).toEqual([]);
  });

  it.each([
    ["an empty file", "", "The file is empty."],
    ["blanks only", " \n ", "The file is empty."],
    ["a comment", '{ // no\n "a": 1 }', "JSON has no comments"],
    ["a comma too many", '{ "a": 1, }', "Not valid JSON"],
    ["a missing brace", '{ "a": 1', "closing brace"],
    ["two documents", "{} {}", "more text follows"],
    ["a list nested very deep", "[".repeat(100_000) + "]".repeat(100_000), "nested too deeply"],
  ])("says of %s what is wrong, and never throws", (_what, text, words) => {
    const { procedure, findings } = readProcedure(text);
    expect(procedure).toBeNull();
    expect(findings).toHaveLength(1);
    expect(findings[0]).toMatchObject({ level: "error", code: "file/not-json" });
    expect(said(findings[0])).toContain(words);
  });

  it("reports a key that stands twice, at the second", () => {
    const { findings } = readProcedure('{\n  "id": "x",\n  "id": "y"\n}');
    expect(findings).toContainEqual(
      expect.objectContaining({ code: "file/doubled-key", position: { line: 3, column: 3 } }),
    );
  });

  test.prop([fc.json(), fc.constantFrom("a", "\\u0061", 'b\\"', "__proto__", ""), fc.boolean()])(
    "finds a key that stands twice at any depth, and none where none does",
    (json, key, isDoubled) => {
      const again = isDoubled ? `, "${key}": [${json}]` : "";
      const text = `[{"is\\"it\\": 1": "\\"x\\": ", "in": {"${key}" : ${json}${again}}}]`;
      const { value, findings, positionOf } = readJsonText(text);
      expect(findings.map(({ code }) => code)).toEqual(isDoubled ? ["file/doubled-key"] : []);
      expect(value).toEqual(JSON.parse(text));
      expect(positionOf("/0/in")).toEqual({ line: 1, column: text.indexOf('"in"') + 1 });
    },
  );

  it("reads a picture of megabytes in a text, escaped or not", () => {
    const text = JSON.stringify({ a: "x".repeat(4e6), b: '"'.repeat(2e6), c: "\\" });
    expect(readJsonText(text).findings).toEqual([]);
  });

  test.prop([fc.string({ maxLength: 200 })])("never throws on any text", (text) => {
    expect(readProcedure(text).findings.length).toBeGreaterThan(0);
  });
});

/** Every place in a JSON value, as a path. */
function pathsOf(value: unknown, path: readonly (string | number)[] = []): (readonly (string | number)[])[] {
  if (typeof value !== "object" || value === null) return [path];
  return [path, ...Object.entries(value).flatMap(([key, part]) => pathsOf(part, [...path, key]))];
}

describe("a file of any shape", () => {
  test.prop([fc.jsonValue()])("[CHK4] is read without throwing", (value) => {
    const { procedure, findings } = parseProcedure(value);
    expect(procedure === null).toBe(findings.some(({ level }) => level === "error"));
  });

  const real = JSON.parse(REAL) as ProcedureFile;
  const paths = pathsOf(real).filter((path) => path.length > 0);
  test.prop(
    [
      fc.nat({ max: paths.length - 1 }),
      fc.oneof(fc.jsonValue(), fc.constantFrom("ev1", "PT1M", [], {}, null, "__proto__")),
    ],
    {
      numRuns: 60,
    },
  )(
    "[CHK4] is read without throwing when one part of a real procedure is replaced, and every finding points into it",
    (which, part) => {
      const file = structuredClone(real);
      const path = paths[which] ?? [];
      const holder = path
        .slice(0, -1)
        .reduce<unknown>((at, key) => (at as Record<string, unknown>)[key], file);
      (holder as Record<string, unknown>)[String(path.at(-1))] = part;
      for (const one of parseProcedure(file).findings) {
        const { pointer } = one;
        expect(pointer).toMatch(/^(\/.*)?$/);
        expect(said(one)).toMatch(/^\S.*[.?]$/s);
      }
    },
  );
});
