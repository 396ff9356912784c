import { describe, expect, it } from "vitest";
import { checkProcedureText } from "../../../../src/core/check/index.ts";
import type { Finding, ProcedureFile } from "../../../../src/core/procedure/index.ts";
import { said } from "../../said.ts";
import { SOUND_WALK } from "./sound-walk.ts";

type FileStep = ProcedureFile["tasks"][number]["steps"][number];

/** One mistake: how it gets into the file, what it is found as, at which step, and what the sentence says to do. */
interface Planted {
  readonly plant: (file: ProcedureFile, step: (id: string) => FileStep) => void;
  readonly code: string;
  /** The step at whose line it is found; `null` for what belongs to no step. */
  readonly at: string | null;
  readonly says: RegExp;
  readonly level?: Finding["level"];
}

const remove = (step: FileStep, ...keys: (keyof FileStep)[]) => {
  for (const key of keys) delete step[key];
};
/** Puts the step `id` at the end of the task of `behind`, right behind that step. */
function moveBehind(file: ProcedureFile, id: string, behind: string): void {
  const [step] = file.tasks.flatMap(({ steps }) => steps.filter((one) => one.id === id));
  for (const task of file.tasks) task.steps = task.steps.filter((one) => one.id !== id);
  const home = file.tasks.find(({ steps }) => steps.some((one) => one.id === behind));
  if (!step || !home) throw new Error("no such step");
  home.steps.splice(home.steps.findIndex((one) => one.id === behind) + 1, 0, step);
}

const PLANTED: readonly (readonly [string, Planted])[] = [
  [
    "a lamp is left outside",
    {
      plant: (_, step) => {
        step("old-lamp").moves = [{ item: "lamp-old", to: { place: "boom" } }];
      },
      code: "custody/left-outside",
      at: "old-lamp",
      says: /Bring it in, or give it an end/,
    },
  ],
  [
    "the wrong person does it",
    {
      plant: (_, step) => {
        step("hand-lamp").by = ["ev1", "iv"];
        step("hand-lamp").at = "boom";
        remove(step("hand-lamp"), "confirm");
        step("hand-lamp").confirm = { by: "iv", text: "EV2 has the lamp" };
      },
      code: "custody/receiver-absent",
      at: "hand-lamp",
      says: /EV2, who does not take part/,
    },
  ],
  [
    "more is in hand than two hands hold",
    {
      plant: (file) => {
        Object.assign(file.items?.[1] ?? {}, { hands: 2 });
        Object.assign(file.items?.[2] ?? {}, { hands: 1 });
      },
      code: "custody/hands-full",
      at: "old-lamp",
      says: /Put something away first, or hand it over/,
    },
  ],
  [
    "a deadlock",
    {
      plant: (_, step) => {
        step("unplug").after = ["power-off", "power-on"];
      },
      code: "order/deadlock",
      at: "unplug",
      says: /wait on each other/,
    },
  ],
  [
    "an order across lanes is missing",
    {
      plant: (_, step) => remove(step("unplug"), "after"),
      code: "state/not-set",
      at: "unplug",
      says: /Let "unplug" come after "power-off"/,
    },
  ],
  [
    "lines cross",
    {
      plant: (file) => {
        Object.assign(file.crew[1] ?? {}, { tether: { anchor: "lock", length: 60 } });
      },
      code: "tether/shared-route",
      at: "ev2-out",
      says: /Keep them clear of each other/,
      level: "advice",
    },
  ],
  [
    "it runs over the limit",
    {
      plant: (file) => {
        file.limits = { elapsed: "PT30M" };
      },
      code: "time/over-limit",
      at: null,
      says: /over the elapsed limit/,
    },
  ],
  [
    "a window is too short",
    {
      plant: (file) => {
        Object.assign(file.windows?.[1] ?? {}, { spans: [{ from: "PT5M", to: "PT6M" }] });
      },
      code: "window/no-fit",
      at: "report",
      says: /would fit|long enough/,
    },
  ],
  [
    "a unit is wrong",
    {
      plant: (_, step) => {
        step("mate").records = [{ id: "press", label: "Pressure", unit: "Kpa", min: 28, max: 31 }];
      },
      code: "unit/not-valid",
      at: "mate",
      says: /nearest code is "kPa"/,
    },
  ],
  [
    "an outcome is not known",
    {
      plant: (_, step) => {
        step("turn-bolt").when = { bolt: "loose" };
      },
      code: "decision/no-such-outcome",
      at: "turn-bolt",
      says: /"loose" is not an outcome/,
    },
  ],
  [
    "a branch forgets an item",
    {
      plant: (_, step) => remove(step("bar-in"), "moves"),
      code: "custody/not-at-its-end",
      at: "bar-out",
      says: /\(When "bolt" comes out "stuck"\.\)/,
    },
  ],
  [
    "somebody goes out before the hatch is open",
    {
      plant: (file) => moveBehind(file, "open-hatch", "ev1-to-boom"),
      code: "place/way-closed",
      at: "ev1-out",
      says: /Put "ev1-out" behind "open-hatch"/,
    },
  ],
  [
    "work for daylight comes in darkness",
    {
      plant: (file) => {
        Object.assign(file.windows?.[0] ?? {}, { spans: [{ from: "PT0S", to: "PT20M" }] });
      },
      code: "window/no-fit",
      at: "look",
      says: /would fit/,
    },
  ],
  [
    "a hand-over is not confirmed",
    {
      plant: (_, step) => remove(step("hand-lamp"), "confirm"),
      code: "text/not-confirmed",
      at: "hand-lamp",
      says: /Add a confirmation/,
      level: "advice",
    },
  ],
  [
    "a mate is not confirmed",
    {
      plant: (_, step) => remove(step("mate"), "confirm"),
      code: "text/not-confirmed",
      at: "mate",
      says: /Add a confirmation/,
      level: "advice",
    },
  ],
  [
    "a bag is put into itself",
    {
      plant: (_, step) => {
        step("look").moves = [{ item: "bag", to: { item: "bar" } }];
      },
      code: "custody/inside-itself",
      at: "look",
      says: /inside itself/,
    },
  ],
  [
    "a call is out of contact",
    {
      plant: (_, step) => {
        remove(step("report"), "within");
        step("report").after = ["close-hatch"];
        step("unplug").time = "PT70M";
        remove(step("look"), "within");
      },
      code: "window/call-out-of-contact",
      at: "report",
      says: /Name a window of contact/,
      level: "caution",
    },
  ],
  [
    "a get-ahead strands somebody",
    {
      plant: (_, step) => {
        Object.assign(step("photos"), { to: "tip" });
        remove(step("photos"), "at", "time");
        step("ev1-home").at = "boom";
      },
      code: "place/not-there",
      at: "ev1-home",
      says: /\(When get-ahead tasks are done\.\)/,
    },
  ],
  [
    "work takes no time",
    {
      plant: (_, step) => {
        step("fit-lamp").time = "PT0S";
      },
      code: "time/zero",
      at: "fit-lamp",
      says: /Say how long it takes/,
      level: "advice",
    },
  ],
  [
    "a step takes twelve hours",
    {
      plant: (file, step) => {
        step("old-lamp").time = "PT12H";
        file.limits = {};
        file.windows = [];
        file.supplies = [];
        remove(step("look"), "within");
        remove(step("report"), "within");
      },
      code: "time/long",
      at: "old-lamp",
      says: /See whether the time is right/,
      level: "advice",
    },
  ],
  [
    "seconds stand for minutes",
    {
      plant: (_, step) => {
        step("fit-lamp").time = "PT4S";
      },
      code: "time/far-off",
      at: "fit-lamp",
      says: /See whether minutes are meant/,
      level: "advice",
    },
  ],
  [
    "an id is used twice",
    {
      plant: (_, step) => {
        step("old-lamp").id = "fit-lamp";
      },
      code: "file/doubled-id",
      at: "fit-lamp",
      says: /is used twice/,
    },
  ],
  [
    "a step is at the wrong place",
    {
      plant: (_, step) => {
        step("old-lamp").at = "tip";
      },
      code: "place/not-there",
      at: "old-lamp",
      says: /EV2 is at Boom, but "old-lamp" is done at Tip/,
    },
  ],
  [
    "somebody inside works outside",
    {
      plant: (_, step) => {
        step("turn-bolt").by = ["iv"];
      },
      code: "place/inside-works-outside",
      at: "turn-bolt",
      says: /Name somebody who is outside/,
    },
  ],
  [
    "a hand-over goes between two places",
    {
      plant: (file, step) => {
        remove(step("hand-lamp"), "at");
        moveBehind(file, "hand-lamp", "ev1-to-boom");
      },
      code: "custody/hand-over-apart",
      at: "hand-lamp",
      says: /Let both be at one place first/,
    },
  ],
];

const textOf = (file: ProcedureFile) => JSON.stringify(file, null, 1);
const stepAt = (file: ProcedureFile, pointer: string) => {
  const [, tasks, task, , index] = pointer.split("/");
  return tasks === "tasks" ? (file.tasks[Number(task)]?.steps[Number(index)]?.id ?? null) : null;
};

describe("mistakes as they are made", () => {
  it("[CHK1] the walk they are planted in has no finding", () => {
    expect(checkProcedureText(textOf(SOUND_WALK)).findings.map(({ code }) => code)).toEqual([]);
  });

  it.each(PLANTED)(
    "[CHK1] [PRO10] %s: found at the line of the step, with what follows under it",
    (_, planted) => {
      const { plant, code, at, says, level = "error" } = planted;
      const file = structuredClone(SOUND_WALK);
      plant(file, (id) => {
        const step = file.tasks.flatMap(({ steps }) => steps).find((one) => one.id === id);
        if (!step) throw new Error(`no step ${id}`);
        return step;
      });
      const { findings } = checkProcedureText(textOf(file));
      const roots = findings.filter(({ follows }) => follows === null);
      const listed = roots.map((one) => [one.level, one.code, stepAt(file, one.pointer)]);
      expect(listed[0], JSON.stringify(findings.map(said))).toEqual([level, code, at]);
      expect(
        roots.filter((one) => one.level === "error").length,
        JSON.stringify(findings.map((one) => [said(one), one.follows])),
      ).toBe(level === "error" ? 1 : 0);
      const [found] = roots;
      expect(said(found as Finding)).toMatch(says);
      const line = textOf(file).split("\n")[(found?.position?.line ?? 0) - 1] ?? "";
      expect(line).toContain(`"${found?.pointer.split("/").at(-1)}"`.replace(/^"\d+"$/, "{"));
      if (findings.length > 1) expect(findings[0]).toBe(found);
    },
  );
});
