import { readFileSync } from "node:fs";
import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { checkProcedureText } from "../../../src/core/check/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { fileWith, step, task } from "../procedure-builder.ts";
import { said } from "../said.ts";

const check = (...file: Parameters<typeof fileWith>) =>
  checkProcedureText(JSON.stringify(fileWith(...file), null, 1)).findings;
const codes = (...file: Parameters<typeof fileWith>) =>
  check(...file).map(({ level, code }) => `${level} ${code}`);

const OUTSIDE: Partial<ProcedureFile> = {
  crew: [
    { id: "ev1", call: "EV1", station: "outside", start: "hatch" },
    { id: "ev2", call: "EV2", station: "outside", start: "boom" },
    { id: "iv", call: "IV", station: "inside" },
  ],
  places: [
    { id: "hatch", label: "Hatch", refuge: true },
    { id: "boom", label: "Boom" },
  ],
  routes: [{ between: ["hatch", "boom"], length: 5, time: "PT1M" }],
};
const withItems = (items: ProcedureFile["items"]): Partial<ProcedureFile> => ({ ...OUTSIDE, items });

describe("custody findings", () => {
  it("[CHK2] let a crew member move what it holds, what is where it is, and what is inside such an item", () => {
    const steps = [
      step("take", "ev1", 1, { do: "Take the lamp", moves: [{ item: "lamp", to: { crew: "ev1" } }] }),
      step("open", "ev1", 1, { do: "Take the wrench", moves: [{ item: "wrench", to: { crew: "ev1" } }] }),
      step("pack", "ev1", 1, { do: "Pack the lamp", moves: [{ item: "lamp", to: { item: "bag" } }] }),
      step("leave", "ev1", 1, { do: "Leave the bag", moves: [{ item: "bag", to: { place: "hatch" } }] }),
    ];
    const items: ProcedureFile["items"] = [
      { id: "lamp", start: { place: "hatch" } },
      { id: "bag", start: { crew: "ev1" } },
      { id: "wrench", start: { item: "bag" } },
    ];
    expect(codes(steps, withItems(items))).toEqual([]);
  });

  it("[CHK2] refuse to move what another holds or what is elsewhere", () => {
    const move = step("take", "ev1", 1, {
      do: "Take the saw",
      moves: [{ item: "saw", to: { crew: "ev1" } }],
    });
    const held = check([move], withItems([{ id: "saw", label: "Saw", start: { crew: "ev2" } }]));
    expect(held).toMatchObject([
      {
        level: "error",
        code: "custody/not-held",
        pointer: "/tasks/0/steps/0/moves/0",
        steps: ["take"],
        things: ["saw"],
      },
    ]);
    expect(said(held[0])).toBe('In "take" EV1 cannot move Saw, which is elsewhere: with EV2.');
    expect(codes([move], withItems([{ id: "saw", start: { place: "boom" } }]))).toEqual([
      "error custody/not-held",
    ]);
  });

  it("[CHK2] need the receiver among the performers, and somebody where an item is left", () => {
    const items: ProcedureFile["items"] = [{ id: "saw", start: { crew: "ev1" }, end: { crew: "ev2" } }];
    const hand = (by: string[]) =>
      step("hand", by, 1, {
        do: "Hand the saw to EV2",
        moves: [{ item: "saw", to: { crew: "ev2" } }],
        confirm: { by: "ev2", text: "EV2 has it" },
      });
    expect(codes([hand(["ev1"])], withItems(items))).toEqual(["error custody/receiver-absent"]);
    const go = step("go", "ev1", null, { do: "Go to the boom", to: "boom" });
    expect(codes([go, hand(["ev1", "ev2"])], withItems(items))).toEqual([]);
    const leave = step("leave", "ev1", 1, {
      do: "Leave the saw",
      moves: [{ item: "saw", to: { place: "boom" } }],
    });
    expect(
      codes([leave], withItems([{ id: "saw", start: { crew: "ev1" }, end: { place: "boom" } }])),
    ).toEqual(["error custody/place-not-there"]);
  });

  it("[CHK2] let an item be put where a translation ends", () => {
    const go = step("go", "ev1", null, {
      do: "Carry the saw to the boom",
      to: "boom",
      moves: [{ item: "saw", to: { place: "boom" } }],
    });
    expect(codes([go], withItems([{ id: "saw", start: { crew: "ev1" }, end: { place: "boom" } }]))).toEqual(
      [],
    );
  });

  it("[CHK2] say what is not at its end, and what is left outside", () => {
    const wait = [step("wait", "ev2", 1, { do: "Wait" })];
    expect(codes(wait, withItems([{ id: "saw", start: { crew: "ev1" }, end: { place: "hatch" } }]))).toEqual([
      "error custody/not-at-its-end",
    ]);
    expect(codes(wait, withItems([{ id: "saw", start: { crew: "ev2" } }]))).toEqual([
      "error custody/left-outside",
    ]);
    expect(codes(wait, withItems([{ id: "saw", start: { place: "boom" } }]))).toEqual([
      "error custody/left-outside",
    ]);
    // At a refuge, with a crew member who is at one, or with one inside.
    expect(
      codes(
        wait,
        withItems([
          { id: "a", start: { place: "hatch" } },
          { id: "b", start: { crew: "ev1" } },
          { id: "c", start: { crew: "iv" } },
        ]),
      ),
    ).toEqual([]);
    // In a bag that comes in.
    expect(
      codes(
        wait,
        withItems([
          { id: "bag", start: { crew: "ev1" } },
          { id: "b", start: { item: "bag" } },
        ]),
      ),
    ).toEqual([]);
  });

  it("[CHK2] [PRO8] refuse to put an item inside itself", () => {
    const items: ProcedureFile["items"] = [
      { id: "bag", start: { crew: "ev1" } },
      { id: "pouch", start: { item: "bag" } },
    ];
    const pack = step("pack", "ev1", 1, {
      do: "Pack the bag",
      moves: [{ item: "bag", to: { item: "pouch" } }],
    });
    expect(codes([pack], withItems(items))).toEqual(["error custody/inside-itself"]);
  });

  it("[ORD4] [CHK2] are looked for in every scenario, and name the one they are in", () => {
    const steps = [
      step("ask", "ev1", 1, {
        do: "Ask",
        decide: { id: "bolt", ask: "?", outcomes: ["free", "stuck"], expect: "free" },
      }),
      step("leave", "ev1", 1, {
        do: "Leave the saw",
        when: { bolt: "stuck" },
        moves: [{ item: "saw", to: { crew: "ev2" } }],
      }),
    ];
    const found = check(steps, withItems([{ id: "saw", start: { crew: "ev1" } }]));
    expect(found.map(({ code }) => code)).toEqual(["custody/receiver-absent", "custody/left-outside"]);
    expect(said(found[0])).toMatch(/\(When "bolt" comes out "stuck"\.\)$/);
  });

  it("[PRO9] [PRO18] are looked for with get-aheads done and left out; over the limit only with them is a caution", () => {
    const tasks = [
      task("main", [step("a", "ev1", 9, { do: "Work" })]),
      task(
        "spare",
        [step("x", "ev1", 9, { do: "Take the saw", moves: [{ item: "saw", to: { crew: "ev1" } }] })],
        { priority: "get-ahead" },
      ),
    ];
    const file = {
      ...withItems([{ id: "saw", start: { crew: "ev2" }, end: { crew: "ev2" } }]),
      limits: { elapsed: "PT10M" },
    };
    expect(codes(tasks, file)).toEqual([
      "error custody/not-held",
      "error custody/not-at-its-end",
      "caution time/over-limit",
    ]);
  });
});

describe("findings on wording", () => {
  const advice = (text: string) => codes([step("a", "ev1", 1, { do: text })]);

  it.each([
    "Open the hatch; close the cover",
    "Open the hatch. Close the cover",
    "Open the hatch, then close the cover",
  ])("[CHK3] advise one action a step: %s", (text) => {
    expect(advice(text)).toEqual(["advice text/many-actions"]);
  });

  it.each([
    "Open the valve and close the hatch",
    "Remove the cover and inspect the seal",
    "Turn the bolt, and stow the wrench",
    "Take the cap off and tighten both bolts",
  ])("[CHK3] advise one action a step where a second verb follows: %s", (text) => {
    expect(advice(text)).toEqual(["advice text/many-actions"]);
  });

  it.each(["Turning the bolt", "Removal of the cover", "You open the hatch"])(
    "[CHK3] advise an imperative first, not a noun: %s",
    (text) => {
      expect(advice(text)).toEqual(["advice text/no-verb"]);
    },
  );

  it.each(["The hatch is open", "When ready, open the hatch", "EV1 opens the hatch"])(
    "[CHK3] advise an imperative first: %s",
    (text) => {
      expect(advice(text)).toEqual(["advice text/no-verb"]);
    },
  );

  it.each([
    "Open the hatch: handle half a turn, door inward",
    "Check gloves, helmet lock, tether hooks",
    "Turn 6.5 turns",
    "Check the bolt and washer",
    "Check that the door is shut and locked",
    "Bring the bag",
    "Swing the boom and arm",
    "Dispose of the wipe",
  ])("[CHK3] have nothing to say of: %s", (text) => {
    expect(advice(text)).toEqual([]);
  });

  it("[CHK3] advise to name the receiver of a handover", () => {
    const hand = (text: string) =>
      codes(
        [
          step("a", ["ev1", "ev2"], 1, {
            do: text,
            moves: [{ item: "bag", to: { crew: "ev2" } }],
            confirm: { by: "ev2", text: "EV2 has it" },
          }),
        ],
        { items: [{ id: "bag", start: { crew: "ev1" } }] },
      );
    expect(hand("Hand the bag over")).toEqual(["advice text/receiver-not-named"]);
    expect(hand("Hand the bag to EV2")).toEqual([]);
  });
});

describe("the checker", () => {
  it("[CHK1] gives each finding its place in the file, errors first", () => {
    const found = check(
      [
        step("a", "ev1", 9, { do: "The hatch" }),
        step("b", "ev2", 1, { do: "Take the bag", moves: [{ item: "bag", to: { crew: "ev2" } }] }),
      ],
      { items: [{ id: "bag", start: { crew: "ev1" } }], limits: { elapsed: "PT5M" } },
    );
    expect(found.map(({ level }) => level)).toEqual(["error", "error", "advice"]);
    for (const one of found) {
      const { position } = one;
      expect(position?.line).toBeGreaterThan(1);
      expect(said(one)).toMatch(/[.)]$/);
    }
  });

  it("[CHK4] does not stop at a deadlock, nor at the first finding", () => {
    const found = codes([
      step("a", "ev1", 1, { after: ["b"], do: "The hatch" }),
      step("b", "ev1", 1, { do: "Do" }),
    ]);
    expect(found).toEqual(["error order/deadlock", "advice text/no-verb"]);
  });

  const REAL = readFileSync("procedures/osier-bring-in.procedure.json", "utf8");
  const real = JSON.parse(REAL) as ProcedureFile;
  const ids = [...REAL.matchAll(/"id":\s*"([^"]+)"/g)].map(([, id]) => id ?? "");

  test.prop([fc.nat({ max: REAL.length - 1 }), fc.nat({ max: 40 }), fc.string({ maxLength: 5 })], {
    numRuns: 150,
  })("[CHK4] never throws on a real file with a piece cut out or put in", (from, length, text) => {
    const { findings, procedure } = checkProcedureText(
      REAL.slice(0, from) + text + REAL.slice(from + length),
    );
    expect(procedure !== null || findings.length > 0).toBe(true);
  });

  test.prop([fc.nat({ max: ids.length - 1 }), fc.nat({ max: ids.length - 1 })], { numRuns: 150 })(
    "[CHK4] never throws on a real file in which one name stands for another",
    (one, other) => {
      const swapped = REAL.replaceAll(`"${ids[one]}"`, `"${ids[other]}"`);
      for (const one of checkProcedureText(swapped).findings) {
        const { pointer } = one;
        expect(pointer).toMatch(/^(\/|$)/);
        expect(said(one)).not.toMatch(/undefined|NaN|\[object/);
      }
    },
  );

  test.prop([fc.shuffledSubarray(real.tasks.flatMap(({ steps }) => steps))], { numRuns: 100 })(
    "[CHK4] never throws on a real procedure with steps left out and in another order",
    (steps) => {
      const file = { ...real, tasks: [{ id: "all", title: "All", steps }] };
      for (const one of checkProcedureText(JSON.stringify(file)).findings) {
        expect(said(one)).not.toMatch(/undefined|NaN|\[object/);
      }
    },
  );
});
