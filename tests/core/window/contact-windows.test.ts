import { describe, expect, it } from "vitest";
import { contactSpansOf, lightFor, orbitOf, readOrbit } from "../../../src/core/light/index.ts";
import { lightFrom, planOf } from "../../../src/core/plan/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import type { Instant, WindowId } from "../../../src/core/units/index.ts";
import { between } from "../../../src/core/units/index.ts";
import { contactMessage, contactWindowsOf, HORIZON, windowSpansOf } from "../../../src/core/window/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { fileWith, outlineFrom, procedureOf, step } from "../procedure-builder.ts";

const ORBIT =
  "1 25544U 98067A   24127.82853009  .00015698  00000+0  27310-3 0  9995\n" +
  "2 25544  51.6393 160.4574 0003580 140.6673 205.7250 15.50957674452123";
const START = Date.UTC(2024, 4, 8, 6) as Instant;
const SITE = { latitude: 48.1, longitude: 11.6, height: 520, mask: 5 };
const FAR = { latitude: -33, longitude: 151, height: 0, mask: 0 };
const { elements } = readOrbit(ORBIT);
if (!elements) throw new Error("the orbit is refused");
const source = { kind: "orbit" as const, elements };

const listed = (id: string, label?: string) => ({
  id,
  ...(label ? { label } : {}),
  kind: "listed" as const,
  spans: [{ from: "PT0M", to: "PT1M" }],
});
const MORE: Partial<ProcedureFile> = {
  crew: [
    { id: "ev1", call: "EV1", station: "inside" },
    { id: "ground", call: "Ground", station: "ground" },
  ],
  windows: [listed("link"), listed("aos"), listed("quiet"), { id: "day", kind: "daylight" }],
};
const STEPS = [
  step("call", ["ev1", "ground"], 3, { within: ["link"] }),
  step("drill", "ev1", 5, { within: ["quiet"] }),
];
const procedure = procedureOf(fileWith(STEPS, MORE));

describe("windows of contact from an orbit and ground sites", () => {
  it("[LGT3] [CHK5] are the listed ones that a step of the ground lies in, or that are called so", () => {
    expect(contactWindowsOf(procedure)).toEqual(["link", "aos"]);
  });

  it("[LGT3] are the passes over all the sites, in place of what the file lists; others stay as they are", () => {
    const light = lightFor({ ...source, sites: [SITE, FAR] }, START, HORIZON);
    const spans = windowSpansOf(procedure, START, light);
    const end = (START + HORIZON) as Instant;
    const passes = [SITE, FAR].flatMap((site) => contactSpansOf(orbitOf(elements), site, START, end) ?? []);
    expect(passes.length).toBeGreaterThan(4);
    expect(spans.get("link" as WindowId)).toEqual(
      passes
        .toSorted((a, b) => a.start - b.start)
        .map((one) => ({ from: between(START, one.start), to: between(START, one.end) })),
    );
    expect(spans.get("aos" as WindowId)).toEqual(spans.get("link" as WindowId));
    expect(spans.get("quiet" as WindowId)).toEqual([{ from: 0, to: 60_000 }]);
    const without = windowSpansOf(procedure, START, lightFor(source, START, HORIZON));
    expect(without.get("link" as WindowId)).toEqual([{ from: 0, to: 60_000 }]);
  });

  it("[LGT3] [PLN1] are what a plan waits for, also by what a walk was opened with", () => {
    const outline = outlineFrom(STEPS.slice(0, 1), MORE);
    const record = { orbit: ORBIT, sites: [SITE] };
    const { timeline, windows } = planOf(outline, { start: START, light: lightFrom(record, START) });
    const [first] = windows.get("link" as WindowId) ?? [];
    expect(timeline?.course.steps.get("call" as never)?.start).toBe(first?.from);
    expect(first?.from).toBeGreaterThan(60_000);
  });

  it("[LGT3] says which windows, sites and masks it is from, or that nothing changes", () => {
    const light = lightFor({ ...source, sites: [SITE] }, START, HORIZON);
    const said = contactMessage(procedure, light);
    expect(said && inWords(said)).toBe(
      "link and aos: the passes over 48.1°, 11.6°, 520 m, above a mask of 5°, worked out from the orbit, without refraction; times in the file do not count.",
    );
    const none = contactMessage(procedureOf(fileWith([step("a", "ev1", 1)])), light);
    expect(none && inWords(none)).toMatch(/^No window of this procedure is one of contact/);
    expect(contactMessage(procedure, lightFor(source, START, HORIZON))).toBeNull();
  });
});
