import { describe, expect, it } from "vitest";
import type { Light } from "../../../src/core/light/index.ts";
import { lightFor } from "../../../src/core/light/index.ts";
import {
  planOf,
  riskModelOf,
  sampleRisk,
  scanStarts,
  startChances,
  startMatters,
  windowMargins,
} from "../../../src/core/plan/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import type { Instant } from "../../../src/core/units/index.ts";
import { minutes } from "../log-writer.ts";
import { outlineFrom, step } from "../procedure-builder.ts";

const START = Date.UTC(2031, 3, 2, 9) as Instant;
const outline = outlineFrom(
  [
    step("a", "ev1", null, { time: { low: "PT9M", likely: "PT10M", high: "PT19M" } }),
    step("b", "ev1", 5, { within: ["pass"] }),
    step("c", "ev2", 4, { within: ["pass"] }),
  ],
  {
    limits: { elapsed: "PT30M" },
    windows: [
      { id: "pass", kind: "listed", spans: [{ from: "2031-04-02T09:00:00Z", to: "2031-04-02T09:16:00Z" }] },
    ],
  },
);

describe("the chance of a start", () => {
  it("[PLN5] is that of the plan from there, and the margins are those of its windows", () => {
    const scan = scanStarts(outline, null, START, 3, minutes(1));
    for (const { start, finish, windows } of scan?.tried ?? []) {
      const plan = planOf(outline, { start });
      const { network, whereabouts } = plan;
      const risk = sampleRisk(riskModelOf({ network, whereabouts, windows: plan.windows }), 500, 1);
      expect(startChances(outline)?.(null, start, 500)).toEqual({
        fits: 1 - risk.unfit,
        withinLimit: risk.withinLimit,
      });
      const { course } = plan.timeline ?? {};
      expect(finish).toBe(course?.finish ?? null);
      expect(windows).toEqual(
        course
          ? windowMargins(outline, plan.windows, ({ step: { id } }) => course.steps.get(id) ?? null)
          : [],
      );
    }
    expect(scan?.tried.map(({ windows }) => windows[0]?.margin)).toEqual([minutes(1), minutes(0), undefined]);
    const [first = 0, second = 0, third] = [0, 1, 2].map(
      (late) => startChances(outline)?.(null, (START + minutes(late)) as Instant, 500)?.fits,
    );
    expect(first).toBeLessThan(1);
    expect(second).toBeLessThan(first);
    expect(third).toBeLessThan(second);
  });

  it("[PLN5] is none of a procedure that cannot be planned", () => {
    const ring = outlineFrom([step("a", "ev1", 1, { after: ["b"] }), step("b", "ev1", 1)]);
    expect(startChances(ring)).toBeNull();
  });
});

describe("whether the start matters", () => {
  const mattersWith = (windows: ProcedureFile["windows"], light: Light | null = null, within = ["w"]) =>
    startMatters(outlineFrom([step("a", "ev1", 5, { within })], { windows: windows ?? [] }), light);
  const site = { latitude: 10, longitude: 0, height: 0, mask: 0 };
  const light = lightFor({ kind: "site", site }, START, minutes(60));

  it("[LGT2] is so where a step lies in a window of instants, or in day and night that are known", () => {
    const spans = [{ from: "2031-04-02T09:00:00Z", to: "2031-04-02T09:16:00Z" }];
    expect(mattersWith([{ id: "w", kind: "listed", spans }])).toBe("yes");
    expect(mattersWith([{ id: "w", kind: "daylight", spans }])).toBe("yes");
    expect(mattersWith([{ id: "w", kind: "daylight" }], light)).toBe("yes");
  });

  it("[LGT2] is not known while day and night are not, and is not so for the rest", () => {
    expect(mattersWith([{ id: "w", kind: "darkness" }])).toBe("unknown");
    expect(mattersWith([{ id: "w", kind: "darkness" }], { ...light, spans: null })).toBe("unknown");
    expect(mattersWith([{ id: "w", kind: "listed", spans: [{ from: "PT1M", to: "PT9M" }] }], light)).toBe(
      "no",
    );
    expect(mattersWith([{ id: "w", kind: "daylight" }], light, [])).toBe("no");
    expect(mattersWith([], light, [])).toBe("no");
  });
});
