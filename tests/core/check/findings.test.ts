import { describe, expect, it } from "vitest";
import { checkProcedureText } from "../../../src/core/check/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import type { Instant } from "../../../src/core/units/index.ts";
import { parseInstant } from "../../../src/core/units/index.ts";
import { fileWith, step, task } from "../procedure-builder.ts";
import { said } from "../said.ts";

const check = (...file: Parameters<typeof fileWith>) =>
  checkProcedureText(JSON.stringify(fileWith(...file), null, 1)).findings;
const codes = (...file: Parameters<typeof fileWith>) =>
  check(...file).map(({ level, code }) => `${level} ${code}`);

const OUTSIDE: Partial<ProcedureFile> = {
  crew: [
    { id: "ev1", call: "EV1", station: "outside", start: "hatch", tether: { anchor: "hatch", length: 20 } },
    { id: "ev2", call: "EV2", station: "outside", start: "hatch", tether: { anchor: "hatch", length: 20 } },
  ],
  places: [
    { id: "hatch", label: "Hatch", refuge: true },
    { id: "boom", label: "Boom" },
    { id: "tip", label: "Tip" },
  ],
  routes: [
    { between: ["hatch", "boom"], length: 15, time: "PT10M" },
    { between: ["boom", "tip"], length: 8, time: "PT10M" },
  ],
};

describe("findings about order", () => {
  it("[ORD3] tell a race with both steps, at the later one", () => {
    const steps = [
      step("a", "ev1", 1, { moves: [{ item: "lamp", to: { crew: "ev1" } }] }),
      step("b", "ev1", 1, { moves: [{ item: "lamp", to: { crew: "ev1" } }] }),
      step("c", "ev2", 1, { after: ["a"], moves: [{ item: "lamp", to: { crew: "ev1" } }] }),
    ];
    const races = check(steps, { items: [{ id: "lamp", label: "Lamp", start: { crew: "ev1" } }] }).filter(
      ({ code }) => code === "order/race",
    );
    expect(races).toMatchObject([
      { level: "error", steps: ["b", "c"], things: ["lamp"], pointer: "/tasks/0/steps/2" },
    ]);
    expect(said(races[0])).toBe(
      '"b" (EV1) and "c" (EV2) both move Lamp, and nothing says which comes first. Let one come after the other.',
    );
    expect(races[0]?.position).not.toBeNull();
  });

  it("[ORD4] look for races in every scenario, and with get-aheads done", () => {
    const lamp = { moves: [{ item: "lamp", to: { crew: "ev1" } }] };
    const found = check(
      [
        task("t", [
          step("ask", "iv", 1, { decide: { id: "x", ask: "?", outcomes: ["y", "n"], expect: "y" } }),
          step("a", "ev1", 1, lamp),
          step("b", "iv", 1, { when: { x: "n" }, ...lamp }),
        ]),
        task("extra", [step("c", "ev2", 1, lamp)], { priority: "get-ahead" }),
      ],
      { items: [{ id: "lamp", label: "Lamp", start: { crew: "ev1" } }] },
    ).filter(({ code }) => code === "order/race");
    expect(found.map((one) => [...one.steps, /\(When .*\)$/.exec(said(one) ?? "")?.[0]])).toEqual([
      ["a", "c", "(When get-ahead tasks are done.)"],
      ["a", "b", '(When "x" comes out "n".)'],
      ["b", "c", '(When "x" comes out "n" and get-ahead tasks are done.)'],
    ]);
  });

  it("[PRO4] name steps that are never performed, and decisions that decide nothing", () => {
    const found = check([
      step("ask", "ev1", 1, { decide: { id: "x", ask: "?", outcomes: ["y", "n"], expect: "y" } }),
      step("then", "ev1", 1, {
        when: { x: "y" },
        decide: { id: "z", ask: "?", outcomes: ["p", "q"], expect: "p" },
      }),
      step("never", "ev1", 1, { when: { x: "n", z: "p" } }),
      step("one", "ev1", 1, { decide: { id: "v", ask: "?", outcomes: ["o"], expect: "o" } }),
      step("loose", "ev1", 1, { decide: { id: "w", ask: "?", outcomes: ["k", "l"], expect: "k" } }),
    ]);
    expect(found.map(({ code, steps }) => [code, ...steps])).toEqual([
      ["decision/never-performed", "never"],
      ["decision/one-outcome", "one"],
      ["decision/no-branch", "loose"],
    ]);
  });
});

describe("findings about tethers and the way home", () => {
  it("[PLN7] are there in every check", () => {
    expect(
      codes(
        [
          step("out-1", "ev1", null, { to: "tip" }),
          step("out-2", "ev2", null, { to: "boom" }),
          step("home-1", "ev1", null, { to: "hatch" }),
        ],
        OUTSIDE,
      ),
    ).toEqual(["error tether/out-of-reach", "advice tether/shared-route"]);
  });

  const walk = (minutes: number) =>
    [
      task("work", [step("out", "ev1", null, { to: "boom" }), step("work", "ev1", minutes)]),
      task("stow", [step("stow", "ev1", 5)], { closeout: true }),
      task("in", [step("in", "ev1", null, { to: "hatch" })]),
    ] as const;
  it("[PLN6] caution when the plan goes on beyond the latest turn-back, to the minute", () => {
    // Out 10 min, the work, and then 10 min of way and 5 min of closeout before the limit.
    const limited = { ...OUTSIDE, limits: { elapsed: "PT60M" } };
    expect(codes([...walk(35)], limited)).toEqual([]);
    const found = check([...walk(36)], limited);
    expect(found.map(({ level, code }) => `${level} ${code}`)).toEqual([
      "error time/over-limit",
      "caution time/beyond-turn-back",
    ]);
    expect(found[1]).toMatchObject({ steps: ["work"], things: ["ev1"] });
    expect(said(found[1])).toContain("by PET 0:45:00");
  });

  it("[PLN6] caution when there is no refuge, or no way to one", () => {
    const limited = { ...OUTSIDE, limits: { elapsed: "PT60M" } };
    const steps = [step("leap", "ev1", 5, { to: "far" }), step("back", "ev1", 5, { to: "hatch" })];
    const places = [...(OUTSIDE.places ?? []), { id: "far" }];
    const crew = (OUTSIDE.crew ?? []).map(({ tether: _, ...member }) => member);
    expect(check(steps, { ...limited, crew, places })).toMatchObject([
      { level: "caution", code: "place/no-way-home", steps: ["leap"], things: ["far"], pointer: "/places/3" },
    ]);
    const open = places.map(({ id }) => ({ id }));
    expect(codes(steps, { ...limited, crew, places: open })).toEqual(["caution place/no-refuge"]);
  });
});

describe("findings about supplies, watches and closeout", () => {
  it("[PRO18] [FOR3] error when a supply meets its redline before its crew member is done, caution when only get-aheads do", () => {
    const supply = {
      crew: "ev1",
      id: "oxygen",
      label: "oxygen",
      unit: "kPa",
      full: 100,
      redline: 10,
      perHour: 60,
    };
    expect(codes([step("a", "ev1", 90)], { supplies: [supply] })).toEqual([]);
    const found = check([step("a", "ev1", 91)], { supplies: [supply] });
    expect(found).toMatchObject([
      { level: "error", code: "supply/short", pointer: "/supplies/0", steps: ["a"] },
    ]);
    const more = [
      task("work", [step("a", "ev1", 80)]),
      task("spare", [step("x", "ev1", 20)], { priority: "get-ahead" }),
    ];
    expect(codes(more, { supplies: [supply] })).toEqual(["caution supply/short"]);
    expect(said(found[0])).toContain("PET 1:30:00");
    expect(codes([step("a", "ev1", 1)], { supplies: [{ ...supply, redline: 100 }] })).toEqual([
      "error supply/redline-above-full",
    ]);
  });

  it("[CHK1] caution about watches that come to nothing", () => {
    const steps = [step("a", "ev1", 10), step("b", "ev1", 30), step("c", "ev1", 5)];
    const watch = (every: string, more: object = {}) => ({
      watches: [{ id: "gloves", by: ["ev1"], do: "Check gloves", every, from: "a", until: "c", ...more }],
    });
    expect(codes(steps, watch("PT29M"))).toEqual([]);
    expect(codes(steps, watch("PT30M"))).toEqual(["caution watch/none-due"]);
    expect(codes(steps, watch("PT5M", { from: "c", until: "a" }))).toEqual(["caution watch/never-on"]);
  });

  it("[PRO9] caution when closeout is a get-ahead", () => {
    expect(
      codes([
        task("a", [step("x", "ev1", 1)]),
        task("b", [step("y", "ev1", 1)], { priority: "get-ahead", closeout: true }),
      ]),
    ).toEqual(["caution task/closeout-get-ahead"]);
  });

  it("[CHK3] advise when somebody confirms its own step, in contingencies too", () => {
    const alone = step("x", "ev1", 1, { confirm: { by: "ev1", text: "Marks meet" } });
    const found = check([step("a", "ev1", 1)], {
      contingencies: [{ id: "c", title: "C", tasks: [task("t", [alone])] }],
    });
    expect(found).toMatchObject([
      {
        level: "advice",
        code: "text/confirms-itself",
        pointer: "/contingencies/0/tasks/0/steps/0/confirm/by",
      },
    ]);
    expect(codes([step("x", ["ev1", "ev2"], 1, { confirm: { by: "ev1", text: "Marks meet" } })])).toEqual([]);
  });

  it("[PRO9] let get-aheads go over the limit, and only caution when they push a step out of its window", () => {
    const found = check(
      [
        task("extra", [step("x", "ev1", 40)], { priority: "get-ahead" }),
        task("t", [step("y", "ev1", 10, { within: ["day"] })]),
      ],
      {
        limits: { elapsed: "PT30M" },
        windows: [{ id: "day", kind: "listed", spans: [{ from: "PT0M", to: "PT20M" }] }],
      },
    );
    expect(found.map(({ level, code }) => `${level} ${code}`)).toEqual(["caution window/no-fit"]);
    expect(said(found[0])).toContain("(When get-ahead tasks are done.)");
  });
});

describe("a check from a known start", () => {
  it("[PLN1] knows windows that are given as instants", () => {
    const file = fileWith([step("a", "ev1", 30, { within: ["pass"] })], {
      windows: [
        {
          id: "pass",
          kind: "listed",
          spans: [{ from: "2031-04-02T09:00:00Z", to: "2031-04-02T09:20:00Z" }],
        },
      ],
    });
    const codesFrom = (start: Instant | null) =>
      checkProcedureText(JSON.stringify(file), { start }).findings.map(({ code }) => code);
    expect(codesFrom(null)).toEqual(["window/not-known"]);
    expect(codesFrom(parseInstant("2031-04-02T09:00:00Z"))).toEqual(["window/no-fit"]);
  });
});
