import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { planOf } from "../../../src/core/plan/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import type { Duration } from "../../../src/core/units/index.ts";
import { earliestFit } from "../../../src/core/window/index.ts";
import { outlineFrom, step } from "../procedure-builder.ts";
import { said } from "../said.ts";

type Spans = readonly (readonly [from: number, to: number])[];

const windowsOf = (lists: readonly Spans[]): ProcedureFile["windows"] =>
  lists.map((spans, index) => ({
    id: `w${index}`,
    label: `Window ${index}`,
    kind: "listed" as const,
    spans: spans.map(([from, to]) => ({ from: `PT${from}M`, to: `PT${to}M` })),
  }));

const planWith = (ready: number, length: number, lists: readonly Spans[]) =>
  planOf(
    outlineFrom(
      [step("a", "ev1", ready), step("b", "ev1", length, { within: lists.map((_, index) => `w${index}`) })],
      { windows: windowsOf(lists) },
    ),
  );
const messageOf = (...of: Parameters<typeof planWith>) =>
  said(planWith(...of).findings.find(({ code }) => code === "window/no-fit")) ?? null;

describe("a step that fits no window", () => {
  it("[PLN4] says by how much it misses and what would make it fit", () => {
    expect(messageOf(30, 45, [[[20, 70]]])).toBe(
      '"b" takes 45 min and can start at PET 0:30:00 at the earliest. After that Window 0 is open for 40 min at the longest, 5 min too short. It would fit if it could start 5 min earlier, by PET 0:25:00, or if it took 5 min less.',
    );
    expect(messageOf(80, 45, [[[20, 70]]])).toBe(
      '"b" takes 45 min and can start at PET 1:20:00 at the earliest. After that Window 0 is not open. It would fit if it could start 55 min earlier, by PET 0:25:00.',
    );
  });

  it("[PLN4] looks at the time its windows are open together", () => {
    expect(messageOf(0, 20, [[[0, 30]], [[15, 60]]])).toContain(
      "Window 0 and Window 1 are open together for 15 min at the longest, 5 min too short. It would fit if it took 5 min less.",
    );
    expect(messageOf(0, 20, [[[0, 30]], [[30, 60]]])).toContain(
      "After that Window 0 and Window 1 are not open together. No span of Window 0 and Window 1 is ever long enough.",
    );
  });

  it("[CHK4] does not keep the steps behind it from being looked at", () => {
    const outline = outlineFrom(
      [
        step("a", "ev1", 20, { within: ["w0"] }),
        step("b", "ev1", 20, { within: ["w1"] }),
        step("c", "ev1", 5, { within: ["w0"] }),
      ],
      {
        windows: windowsOf([
          [
            [0, 10],
            [200, 210],
          ],
          [[0, 30]],
        ]),
      },
    );
    const { timeline, findings } = planOf(outline);
    expect(timeline).toBeNull();
    expect(findings.map(({ code, steps }) => [code, ...steps])).toEqual([
      ["window/no-fit", "a"],
      ["window/no-fit", "b"],
    ]);
  });

  const drawnSpans = fc
    .uniqueArray(fc.integer({ min: 0, max: 90 }), { minLength: 2, maxLength: 8 })
    .map((times) => {
      const sorted = [...times].sort((a, b) => a - b);
      return sorted.flatMap((from, at): [number, number][] => {
        const to = sorted[at + 1];
        return at % 2 === 0 && to !== undefined ? [[from, to]] : [];
      });
    });
  test.prop([
    fc.integer({ min: 0, max: 90 }),
    fc.integer({ min: 1, max: 60 }),
    fc.array(drawnSpans, { minLength: 1, maxLength: 2 }),
  ])("[PLN4] names the least change that makes it fit", (ready, length, lists) => {
    const message = messageOf(ready, length, lists);
    if (message === null) return;
    const { windows } = planWith(ready, length, lists);
    const fits = (from: number, long: number) =>
      earliestFit(from as Duration, long as Duration, [...windows.keys()], windows)?.start;
    const MINUTE = 60_000;
    const earlier = /start (\d+) min earlier/.exec(message)?.[1];
    const starts = Array.from({ length: ready + 1 }, (_, minute) => ready - minute).filter(
      (minute) => fits(minute * MINUTE, length * MINUTE) === minute * MINUTE,
    );
    expect(earlier === undefined ? undefined : ready - Number(earlier)).toBe(starts[0]);
    const shorter = /it took (\d+) min less/.exec(message)?.[1];
    const lengths = Array.from({ length }, (_, minute) => length - minute).filter(
      (minute) => fits(ready * MINUTE, minute * MINUTE) !== undefined,
    );
    expect(shorter === undefined ? undefined : length - Number(shorter)).toBe(lengths[0]);
  });
});
