import { fc, test } from "@fast-check/vitest";
import { describe, expect } from "vitest";
import type { Entry, FactName } from "../../../src/core/log/index.ts";
import { compareEntries, readLines, typeOf, writeLines } from "../../../src/core/log/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { reviewDocument, reviewOf } from "../../../src/core/review/index.ts";
import type { Instant } from "../../../src/core/units/index.ts";
import { formatInstant } from "../../../src/core/units/index.ts";
import type { Folded } from "../../../src/core/walk/index.ts";
import { foldLog, stateDocument, WalkFold } from "../../../src/core/walk/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { copyOf, entryFrom, ZERO } from "../log-writer.ts";
import { fileWith, step, task } from "../procedure-builder.ts";

/** More runs when hunting: `PROPERTY_RUNS=5000 npx vitest run tests/core/walk/same-state.test.ts`. */
const RUNS = Number(process.env["PROPERTY_RUNS"] ?? 200);

const FILE: ProcedureFile = fileWith(
  [
    task("first", [
      step("a1", "ev1", 5, { records: [{ id: "turns", min: 6, max: 7 }] }),
      step("a2", "ev2", 3, { confirm: { by: "iv", text: "Closed" } }),
      step("meet", ["ev1", "ev2"], 2, { moves: [{ item: "bag", to: { crew: "ev2" } }] }),
      step("b1", "ev1", 4, {
        decide: { id: "bolt", ask: "Does it turn?", outcomes: ["free", "stuck"], expect: "free" },
      }),
      step("b1-free", "ev1", 2, { when: { bolt: "free" }, moves: [{ item: "wrench", to: { crew: "ev1" } }] }),
      step("b1-stuck", ["ev1", "iv"], 6, { when: { bolt: "stuck" } }),
      step("b2", "ev2", 4, { after: [{ step: "a1", lag: "PT5M" }], within: ["contact"] }),
    ]),
    task("spare", [step("extra", "ev2", 3)], { priority: "get-ahead" }),
    task("last", [
      step("end", ["ev1", "ev2", "iv"], 1, {
        after: ["b2"],
        moves: [{ item: "bag", to: { place: "hatch" } }],
      }),
    ]),
  ],
  {
    limits: { elapsed: "PT40M" },
    places: [{ id: "hatch", refuge: true }],
    items: [
      { id: "bag", start: { crew: "ev1" } },
      { id: "wrench", start: { item: "bag" } },
    ],
    supplies: [{ crew: "ev1", id: "oxygen", unit: "kPa", full: 6000, redline: 600, perHour: 700 }],
    windows: [
      {
        id: "contact",
        kind: "listed",
        spans: [
          { from: "PT8M", to: "PT14M" },
          { from: "PT20M", to: "PT50M" },
        ],
      },
    ],
  },
);

const STEPS = ["a1", "a2", "meet", "b1", "b1-free", "b1-stuck", "b2", "extra", "end", "unknown"];
const anyStep = fc.constantFrom(...STEPS);
const reason = fc.constantFrom("slip", "");

/** What somebody may tap; most of it makes sense at some time, some of it never. */
const action: fc.Arbitrary<readonly [name: FactName | "plan.amended", data: object]> = fc.oneof(
  {
    weight: 8,
    arbitrary: fc
      .record({ step: anyStep, outOfOrder: fc.boolean() })
      .map((data) => ["step.done", data] as const),
  },
  { weight: 5, arbitrary: anyStep.map((id) => ["step.done", { step: id }] as const) },
  { weight: 1, arbitrary: anyStep.map((id) => ["step.started", { step: id }] as const) },
  {
    weight: 2,
    arbitrary: fc.record({ step: anyStep, reason }).map((data) => ["step.skipped", data] as const),
  },
  {
    weight: 2,
    arbitrary: fc.record({ step: anyStep, reason }).map((data) => ["step.reopened", data] as const),
  },
  {
    weight: 2,
    arbitrary: fc
      .record({
        step: anyStep,
        record: fc.constantFrom("turns", "torque"),
        value: fc.integer({ min: 4, max: 9 }),
      })
      .map((data) => ["record.taken", data] as const),
  },
  { weight: 1, arbitrary: anyStep.map((id) => ["confirm.given", { step: id }] as const) },
  {
    weight: 3,
    arbitrary: fc
      .record({ decision: fc.constantFrom("bolt", "nut"), outcome: fc.constantFrom("free", "stuck", "lost") })
      .map((data) => ["decision.taken", data] as const),
  },
  {
    weight: 1,
    arbitrary: fc
      .record({
        item: fc.constantFrom("bag", "wrench"),
        to: fc.constantFrom({ crew: "ev1" }, { item: "wrench" }, { item: "bag" }, { place: "hatch" }),
      })
      .map((data) => ["item.moved", data] as const),
  },
  {
    weight: 1,
    arbitrary: fc.constant(["supply.read", { crew: "ev1", supply: "oxygen", value: 5000 }] as const),
  },
  { weight: 1, arbitrary: fc.constant(["note.made", { text: "Seen.", step: "a1" }] as const) },
  {
    weight: 1,
    arbitrary: fc
      .constantFrom("hold.called" as const, "hold.lifted" as const)
      .map((name) => [name, {}] as const),
  },
  { weight: 1, arbitrary: fc.constant(["clock.started", {}] as const) },
  { weight: 1, arbitrary: fc.constant(["walk.closed", { end: "complete" }] as const) },
  { weight: 1, arbitrary: fc.constant(["plan.amended", { changes: [] }] as const) },
  { weight: 1, arbitrary: fc.constant(["step.done", { step: 7 }] as const) },
);

/** What a walk that goes well consists of, so that the taps reach all of it. */
const GOING_WELL: readonly (readonly [name: FactName, data: object])[] = [
  ["step.done", { step: "a1" }],
  ["record.taken", { step: "a1", record: "turns", value: 6 }],
  ["step.done", { step: "a2" }],
  ["confirm.given", { step: "a2" }],
  ["step.done", { step: "meet" }],
  ["step.done", { step: "b1" }],
  ["decision.taken", { decision: "bolt", outcome: "free" }],
  ["step.done", { step: "b1-free" }],
  ["decision.taken", { decision: "bolt", outcome: "stuck" }],
  ["step.done", { step: "b1-stuck" }],
  ["step.done", { step: "b2" }],
  ["step.done", { step: "extra" }],
  ["step.done", { step: "end" }],
];

interface Tap {
  readonly device: number;
  /** Milliseconds since the tap before it, by the device's own clock; zero makes ties. */
  readonly pause: number;
  /** How much later it was entered than it happened. */
  readonly late: number;
  /** `null` is the next thing of {@link GOING_WELL}. */
  readonly what: readonly [name: string, data: object] | null;
  /** Strikes the entry so many back (or ahead, below zero) instead, of whatever device. */
  readonly strikes: number | null;
  /** A second, different entry under the same source and id, of this tap or of the opening of the walk. */
  readonly clashes: "tap" | "opening" | null;
}

const tap: fc.Arbitrary<Tap> = fc.record({
  device: fc.nat({ max: 4 }),
  pause: fc.oneof(fc.constant(0), fc.integer({ min: 1, max: 240_000 })),
  late: fc.oneof(
    { weight: 4, arbitrary: fc.constant(0) },
    { weight: 1, arbitrary: fc.nat({ max: 600_000 }) },
  ),
  what: fc.oneof({ weight: 1, arbitrary: fc.constant(null) }, { weight: 1, arbitrary: action }),
  strikes: fc.oneof(
    { weight: 6, arbitrary: fc.constant(null) },
    { weight: 1, arbitrary: fc.integer({ min: -3, max: 8 }) },
  ),
  clashes: fc.oneof(
    { weight: 40, arbitrary: fc.constant(null) },
    { weight: 2, arbitrary: fc.constant("tap" as const) },
    { weight: 1, arbitrary: fc.constant("opening" as const) },
  ),
});

/** The log that some taps on up to five devices, not always linked, amount to. */
function logOf(taps: readonly Tap[], skews: readonly number[]): Entry[] {
  let now = ZERO;
  const made = [0, 0, 0, 0, 0];
  const well = [...GOING_WELL];
  const next = (device: number) => {
    made[device] = (made[device] ?? 0) + 1;
    return String(made[device]).padStart(10, "0");
  };
  const wires: Record<string, unknown>[] = [];
  const write = (device: number, name: string, data: object, late = 0) => {
    const sequence = next(device);
    const clock = now + (skews[device] ?? 0);
    wires.push({
      specversion: "1.0",
      id: sequence,
      source: `/devices/${device}`,
      type: name === "plan.amended" ? "tetherline.plan.amended" : typeOf(name as FactName),
      subject: "walk-1",
      time: formatInstant((clock - late) as Instant),
      sequence,
      hlc: `${String(clock).padStart(15, "0")}-0000`,
      actor: "iv",
      data,
    });
  };
  write(0, "walk.opened", { procedure: FILE, mode: "live" });
  write(0, "clock.started", {});
  for (const { device, pause, late, what, strikes, clashes } of taps) {
    now = (now + pause) as Instant;
    if (strikes === null) {
      const [name, data] = what ?? well.shift() ?? (["note.made", { text: "Well." }] as const);
      write(device, name, data, late);
    } else {
      const index = wires.length - 1 - strikes;
      const target = wires[index];
      const [source, id] = target
        ? [target["source"], target["id"]]
        : [`/devices/${device}`, String((made[device] ?? 0) + 2).padStart(10, "0")];
      write(device, "entry.struck", { source, id });
    }
    const clashing = clashes && wires.at(clashes === "tap" ? -1 : 0);
    if (!clashing) continue;
    const hlc = `${String(now).padStart(15, "0")}-0001`;
    wires.push({
      ...clashing,
      actor: "ev2",
      ...(late > 0 ? { hlc } : { time: formatInstant((now + 1000) as Instant) }),
    });
  }
  return wires.map(entryFrom);
}

/** Everything that is shown of a log, as text: the state in the middle and at the end, and the review. */
function shown(folded: Folded): string {
  const middle = (ZERO + 7 * 60_000) as Instant;
  const end = folded.lastAt ?? middle;
  const review = reviewOf(folded, end);
  return JSON.stringify([
    stateDocument(folded, middle, inWords),
    stateDocument(folded, end, inWords),
    review && reviewDocument(review, inWords),
  ]);
}

const skews = fc.array(
  fc.oneof(fc.constant(0), fc.constant(0), fc.integer({ min: -200_000, max: 200_000 })),
  { minLength: 5, maxLength: 5 },
);
const taps = fc.array(tap, { minLength: 1, maxLength: 45, size: "max" });

describe("the state of a walk", { timeout: 600_000 }, () => {
  test.prop([taps, skews, fc.infiniteStream(fc.double({ min: 0, max: 1, noNaN: true, maxExcluded: true }))], {
    numRuns: RUNS,
  })(
    "[LOG3] is the same for any order of arrival, duplication and division into batches",
    (tapped, skewed, chances) => {
      const chance = () => Number(chances.next().value);
      const entries = logOf(tapped, skewed);
      const whole = foldLog([...entries].sort(compareEntries));

      const arriving = entries.flatMap((entry) =>
        chance() < 0.3 ? [entry, chance() < 0.5 ? copyOf(entry) : entry] : [entry],
      );
      for (let index = arriving.length - 1; index > 0; index -= 1) {
        const other = Math.floor(chance() * (index + 1));
        const [a, b] = [arriving[index], arriving[other]];
        if (a && b) [arriving[index], arriving[other]] = [b, a];
      }
      const fold = new WalkFold();
      for (let from = 0; from < arriving.length; ) {
        const size = 1 + Math.floor(chance() * 6);
        fold.add(arriving.slice(from, from + size));
        // Reading in between must leave no trace.
        if (chance() < 0.03) shown(fold.folded);
        from += size;
      }
      expect(fold.folded.ignored).toEqual(whole.ignored);
      expect(shown(fold.folded)).toBe(shown(whole));
    },
  );

  test.prop([taps, skews], { numRuns: RUNS })(
    "[LOG3] [REV2] is the same after export and import of the log",
    (tapped, skewed) => {
      const { entries, ...folded } = foldLog(logOf(tapped, skewed));
      const { entries: imported, problems } = readLines(writeLines(entries));
      expect(problems).toEqual([]);
      // Of entries that clash only the one that counts is exported, so the other is no longer listed.
      const kept = folded.ignored.filter(({ reason: why }) => why.key !== "walk/same-key");
      expect(shown({ ...foldLog(imported) })).toBe(shown({ ...folded, entries, ignored: kept }));
    },
  );

  test.prop([taps, skews], { numRuns: RUNS })(
    "[LOG4] lists every entry that has no effect once, and never one that is not in the log",
    (tapped, skewed) => {
      const entries = logOf(tapped, skewed);
      const { ignored, entries: ordered } = foldLog(entries);
      const keys = ordered.map(({ wire }) => `${wire.source} ${wire.id}`);
      expect(ignored.every(({ reason: why }) => inWords(why).length > 0)).toBe(true);
      expect(ignored.every(({ source, id }) => keys.includes(`${source} ${id}`))).toBe(true);
    },
  );
});
