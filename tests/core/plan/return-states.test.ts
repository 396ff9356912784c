import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { checkOutline } from "../../../src/core/check/index.ts";
import type { Course } from "../../../src/core/course/index.ts";
import { planOf, returnBarAt, returnPlanAt } from "../../../src/core/plan/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { outlineOf } from "../../../src/core/procedure/index.ts";
import type { StateId, StepId } from "../../../src/core/units/index.ts";
import { inMinutes } from "../../../src/core/units/index.ts";
import { alertsOf, turnBackState, walkStateAt } from "../../../src/core/walk/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { LogWriter, minute, minutes } from "../log-writer.ts";
import { fileWith, procedureOf, step, task } from "../procedure-builder.ts";

type FileStep = ProcedureFile["tasks"][number]["steps"][number];

const MORE: Partial<ProcedureFile> = {
  format: "tetherline.procedure/2",
  crew: [
    { id: "ev1", call: "EV1", station: "outside", start: "lock" },
    { id: "ev2", call: "EV2", station: "outside", start: "lock" },
    { id: "iv", call: "IV", station: "inside" },
  ],
  places: [{ id: "lock", refuge: true }, { id: "porch" }, { id: "mast" }, { id: "tip" }],
  routes: [
    { between: ["lock", "porch"], length: 1, time: "PT1M", needs: { hatch: "open" } },
    { between: ["porch", "mast"], length: 8, time: "PT4M" },
    { between: ["mast", "tip"], length: 3, time: "PT2M", needs: { ladder: "out" } },
    { between: ["mast", "tip"], length: 30, time: "PT9M" },
  ],
  states: [
    { id: "hatch", values: ["open", "closed"], start: "closed" },
    { id: "ladder", values: ["out", "in"], start: "out" },
    { id: "power", values: ["on", "off"], start: "off" },
  ],
  limits: { elapsed: "PT3H" },
};
const OUT = [
  step("open-hatch", "iv", 1, { sets: { hatch: "open" } }),
  step("ev1-out", "ev1", null, { to: "mast", after: ["open-hatch"] }),
  step("bolt", "ev1", 10, { at: "mast" }),
];
const fileOf = (work: FileStep[], closeout: FileStep[]) =>
  fileWith([task("work", [...OUT, ...work]), task("home", closeout, { closeout: true })], MORE);
const courseOf = (file: ProcedureFile): Course => {
  const { timeline, findings } = planOf(outlineOf(procedureOf(file)));
  if (!timeline) throw new Error(findings.map(({ code }) => code).join(" "));
  return timeline.course;
};
const endOf = (course: Course, id: string) => {
  const finish = course.steps.get(id as StepId)?.finish;
  if (finish === undefined) throw new Error(`no step ${id}`);
  return finish;
};
const backAfter = (course: Course, id: string) => {
  const plan = returnPlanAt(course, endOf(course, id));
  return plan && inMinutes(plan.total);
};
const IN = step("ev1-in", "ev1", null, { to: "lock" });
const SHUT = step("shut", "iv", 2, { after: ["ev1-out"], sets: { hatch: "closed" } });

describe("the way home with states", () => {
  it("[PLN6] cannot be told when the hatch is closed behind somebody and nothing opens it again", () => {
    const file = fileOf([SHUT], [IN]);
    const course = courseOf(file);
    expect(backAfter(course, "ev1-out")).toBe(5);
    expect(backAfter(course, "shut")).toBeNull();
    expect(returnBarAt(course, endOf(course, "shut"))).toMatchObject({
      state: "hatch",
      value: "open",
      is: "closed",
      step: "ev1-in",
      crew: "ev1",
      setBy: "open-hatch",
    });
    expect(returnBarAt(course, endOf(course, "ev1-out"))).toBeNull();
    const stuck = fileOf([SHUT, step("look", "ev1", 3, { at: "mast" })], [IN]);
    const findings = checkOutline(outlineOf(procedureOf(stuck)));
    const told = findings.filter(({ code }) => code === "time/no-return");
    expect(told.map(({ steps, message }) => [steps, message.key])).toEqual([
      [["bolt", "look"], "time/return-barred"],
    ]);
  });

  it("[PLN6] [PRO13] says which state bars it, what needs it, and which step would have to set it", () => {
    const barAfter = (work: FileStep[], closeout: FileStep[], id: string) => {
      const course = courseOf(fileOf(work, closeout));
      const bar = returnBarAt(course, endOf(course, id));
      return bar && [bar.step, bar.crew, bar.state, bar.is, bar.setBy, inWords(bar.why)];
    };
    const live = step("live", "iv", 1, { after: ["bolt"], sets: { power: "on" } });
    const stow = step("stow", "ev1", 2, { at: "mast", needs: { power: "off" } });
    expect(barAfter([live], [stow, IN], "live")).toEqual([
      "stow",
      null,
      "power",
      "on",
      null,
      '"stow" needs power to be off, and it is on. No step sets that.',
    ]);
    // What would set it is work, which is left out on the way home.
    const dark = step("dark", "iv", 1, { after: ["live", "bolt"], sets: { power: "off" } });
    expect(barAfter([live, dark], [stow, IN], "live")?.slice(4)).toEqual([
      "dark",
      '"stow" needs power to be off, and it is on. "dark" would have to set that, and is no step of closeout, so it is left out on the way home.',
    ]);
    // Somebody without a step of closeout, and no way for them to a refuge.
    expect(barAfter([SHUT], [step("seal", "iv", 1)], "shut")).toEqual([
      null,
      "ev1",
      "hatch",
      "closed",
      "open-hatch",
      'EV1’s way to a refuge needs hatch to be open, and it is closed. "open-hatch" would have to set that again: it is done, and no step of closeout does.',
    ]);
    // The step that would open the hatch is itself barred by the power: that is what has to be mended.
    const reopen = step("reopen", "iv", 1, { needs: { power: "off" }, sets: { hatch: "open" } });
    expect(barAfter([live, { ...SHUT, after: ["live"] }], [IN, reopen], "shut")?.slice(0, 5)).toEqual([
      "reopen",
      null,
      "power",
      "on",
      null,
    ]);
  });

  it("[PLN6] waits for the closeout step that opens the hatch, wherever that stands", () => {
    const again = step("reopen", "iv", 3, { sets: { hatch: "open" } });
    for (const closeout of [
      [IN, again],
      [again, IN],
    ])
      expect(backAfter(courseOf(fileOf([SHUT], closeout)), "shut")).toBe(3 + 5);
  });

  it("[PLN6] closes the hatch only behind who is on the way in, and shuts out who comes later", () => {
    const close = step("close", "iv", 1, {
      after: ["bolt"],
      needs: { hatch: "open" },
      sets: { hatch: "closed" },
    });
    // The one who has a step of closeout is through first; the hatch closes when they are.
    expect(backAfter(courseOf(fileOf([], [IN, close])), "bolt")).toBe(5);
    const both = [step("ev2-out", "ev2", null, { to: "mast", after: ["open-hatch"] })];
    // The other one has none: five minutes through a hatch that closes after five.
    expect(backAfter(courseOf(fileOf(both, [IN, close])), "bolt")).toBe(5);
    const sooner = [step("early", "iv", 1, { after: ["bolt"], sets: { hatch: "closed" } })];
    expect(backAfter(courseOf(fileOf(both, sooner)), "bolt")).toBeNull();
  });

  it("[PLN6] goes the long way while a ladder is folded in, or waits for it where that is quicker", () => {
    const work = [
      step("ev1-tip", "ev1", null, { to: "tip" }),
      step("look", "ev1", 10, { at: "tip" }),
      step("fold", "iv", 1, { after: ["ev1-tip"], sets: { ladder: "in" } }),
    ];
    const unfold = (long: number) => step("unfold", "iv", long, { sets: { ladder: "out" } });
    expect(backAfter(courseOf(fileOf(work, [IN])), "ev1-tip")).toBe(2 + 5);
    expect(backAfter(courseOf(fileOf(work, [IN])), "fold")).toBe(9 + 5);
    expect(backAfter(courseOf(fileOf(work, [unfold(4), IN])), "fold")).toBe(4 + 2 + 5);
    expect(backAfter(courseOf(fileOf(work, [unfold(8), IN])), "fold")).toBe(9 + 5);
    const stow = step("stow", "ev1", 1, { at: "mast" });
    expect(backAfter(courseOf(fileOf(work, [unfold(4), stow, IN])), "fold")).toBe(4 + 2 + 1 + 5);
  });

  it("[PLN6] a closeout step waits for the power to be off, and for good when nothing turns it off", () => {
    const live = step("live", "iv", 1, { after: ["bolt"], sets: { power: "on" } });
    const stow = step("stow", "ev1", 2, { at: "mast", needs: { power: "off" } });
    const down = step("down", "iv", 6, { sets: { power: "off" } });
    const later = step("up-again", "iv", 1, { sets: { power: "on" } });
    // Before the power is on, the crew is in by the time that it takes to see to it that it is off.
    expect(backAfter(courseOf(fileOf([live], [stow, down, IN])), "bolt")).toBe(2 + 5);
    expect(backAfter(courseOf(fileOf([live], [stow, down, later, IN])), "live")).toBe(6 + 2 + 5);
    expect(backAfter(courseOf(fileOf([live], [stow, IN])), "live")).toBeNull();
  });

  it("[PLN6] counts closeout in full while nobody has left the refuges, whatever the states", () => {
    const course = courseOf(
      fileOf([], [step("stow", "ev1", 2, { at: "mast" }), IN, step("seal", ["ev1", "iv"], 4)]),
    );
    const plan = returnPlanAt(course, minutes(0));
    expect(plan && inMinutes(plan.total)).toBe(5 + 2 + 5 + 4);
  });

  it("[PLN6] is told on the day by the states as they are, with an alert when they bar it", () => {
    const log = LogWriter.started(fileOf([], [IN])).done(["open-hatch", 1], ["ev1-out", 6]);
    const at = (pet: number) => {
      const state = walkStateAt(log.ledger, minute(pet));
      return {
        total: turnBackState(state).returnPlan?.total ?? null,
        alerts: alertsOf(state).filter(({ alert }) => alert === "return"),
      };
    };
    expect(at(7)).toEqual({ total: minutes(5), alerts: [] });
    log.enter("state.set", { state: "hatch" as StateId, value: "closed", reason: "It fell shut." }, 8);
    expect(at(9).total).toBeNull();
    expect(at(9).alerts.map(({ level, text }) => [level, inWords(text)])).toEqual([
      [
        "act-now",
        'EV1: the way back is barred. EV1’s way to lock needs hatch to be open, and it is closed. "open-hatch" would have to set that again: it is done, and no step of closeout does.',
      ],
    ]);
    log.enter("state.set", { state: "hatch" as StateId, value: "open", reason: "It is open again." }, 10);
    expect(at(11)).toEqual({ total: minutes(5), alerts: [] });
  });

  const needsOrSets = fc.option(fc.record({ power: fc.constantFrom("on", "off") }));
  const drawnStep = fc.record({
    by: fc.constantFrom("ev1", "ev2", "iv"),
    minutes: fc.integer({ min: 1, max: 9 }),
    place: fc.constantFrom("porch", "mast", "tip", "lock"),
    kind: fc.constantFrom("to", "at", "none"),
    needs: needsOrSets,
    sets: fc.option(
      fc.constantFrom(
        { power: "on" },
        { power: "off" },
        { hatch: "closed" },
        { hatch: "open" },
        { ladder: "in" },
      ),
    ),
  });
  test.prop([fc.array(drawnStep, { maxLength: 6 }), fc.array(drawnStep, { maxLength: 6 }), fc.nat()], {
    numRuns: 200,
  })("[PLN6] is never shorter with states than without", (work, closeout, pick) => {
    let made = 0;
    const written = (heeds: boolean) => (one: typeof work extends (infer One)[] ? One : never) => {
      made += 1;
      const kind = one.by === "iv" ? "none" : one.kind;
      return step(`s${made}`, one.by, one.minutes + (kind === "to" ? 20 : 0), {
        ...(kind === "to" ? { to: one.place } : kind === "at" ? { at: one.place } : {}),
        ...(heeds && one.needs ? { needs: one.needs } : {}),
        ...(heeds && one.sets ? { sets: one.sets } : {}),
      });
    };
    const course = (heeds: boolean) => {
      made = 0;
      const { states, routes, ...rest } = MORE;
      const free = (routes ?? []).map(({ needs: _, ...route }) => route);
      const outline = outlineOf(
        procedureOf(
          fileWith(
            [
              task("work", [
                step("begin", "iv", 1, heeds ? { sets: { hatch: "open" } } : {}),
                ...work.map(written(heeds)),
              ]),
              task("home", closeout.map(written(heeds)), { closeout: true }),
            ],
            { ...rest, ...(heeds ? { states, routes } : { routes: free }) } as Partial<ProcedureFile>,
          ),
        ),
      );
      return planOf(outline).timeline?.course;
    };
    const [heeding, free] = [course(true), course(false)];
    if (!heeding || !free) return;
    const ends = [...free.steps.values()].map(({ finish }) => finish);
    const pet = ends[pick % ends.length] ?? minutes(0);
    const [held, open] = [returnPlanAt(heeding, pet), returnPlanAt(free, pet)];
    if (held) expect(held.total).toBeGreaterThanOrEqual(open?.total ?? Number.POSITIVE_INFINITY);
    if (!held && open) expect(returnBarAt(heeding, pet)).not.toBeNull();
  });
});
