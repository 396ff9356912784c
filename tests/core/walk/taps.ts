import { fc } from "@fast-check/vitest";
import type { FactName } from "../../../src/core/log/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { fileWith, step, task } from "../procedure-builder.ts";

/** A procedure with everything a tap can be about. */
export const FILE: ProcedureFile = fileWith(
  [
    task("first", [
      step("a1", "ev1", 5, { records: [{ id: "turns", min: 6, max: 7 }] }),
      step("a2", "ev2", 3, { check: ["Left", "Right"], confirm: { by: "iv", text: "Closed" } }),
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
    format: "tetherline.procedure/2",
    limits: { elapsed: "PT40M" },
    places: [{ id: "hatch", refuge: true }],
    items: [
      { id: "bag", start: { crew: "ev1" } },
      { id: "wrench", start: { item: "bag" } },
    ],
    states: [{ id: "hatch", values: ["open", "closed"], start: "closed" }],
    supplies: [{ crew: "ev1", id: "oxygen", unit: "kPa", full: 6000, redline: 600, perHour: 700 }],
    watches: [{ id: "glove", by: ["ev1"], do: "Look at the gloves", every: "PT10M" }],
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
  {
    weight: 1,
    arbitrary: fc
      .record({ step: fc.constantFrom("a1", "a2"), check: fc.integer({ min: 0, max: 2 }) })
      .map((data) => ["check.counted", data] as const),
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
  {
    weight: 1,
    arbitrary: fc
      .constantFrom("open", "closed", "ajar")
      .map((value) => ["state.set", { state: "hatch", value }] as const),
  },
  { weight: 1, arbitrary: fc.constant(["note.made", { text: "Seen.", step: "a1" }] as const) },
  {
    weight: 4,
    arbitrary: fc
      .constantFrom("hold.called" as const, "hold.lifted" as const)
      .map((name) => [name, {}] as const),
  },
  { weight: 1, arbitrary: fc.constant(["clock.started", {}] as const) },
  { weight: 1, arbitrary: fc.constant(["walk.closed", { end: "complete" }] as const) },
  { weight: 1, arbitrary: reason.map((why) => ["walk.reopened", { reason: why }] as const) },
  { weight: 1, arbitrary: fc.constant(["plan.amended", { changes: [] }] as const) },
  { weight: 1, arbitrary: fc.constant(["step.done", { step: 7 }] as const) },
  {
    weight: 1,
    arbitrary: fc.constantFrom("glove", "boot").map((watch) => ["watch.kept", { watch, due: 600 }] as const),
  },
  {
    weight: 1,
    arbitrary: fc
      .record({
        alert: fc.constantFrom("turn-back", "limit"),
        level: fc.constantFrom("act-now", "look-soon"),
        name: fc.constantFrom("alert.raised" as const, "alert.seen" as const),
      })
      .map(({ name, ...data }) => [name, data] as const),
  },
  // `null` is what the device's clock is really wrong by.
  {
    weight: 2,
    arbitrary: fc
      .constantFrom(null, null, null, 0, 0.4, 0.5, 0.501, -90)
      .map((offset) => ["clock.compared", { hub: "/hubs/one", offset, error: 0.02 }] as const),
  },
  {
    weight: 2,
    arbitrary: fc.constantFrom(-3300, 2.5, 90).map((by) => ["clock.jumped", { by }] as const),
  },
);

/** What a walk that goes well consists of, so that the taps reach all of it. */
export const GOING_WELL: readonly (readonly [name: FactName, data: object])[] = [
  ["step.done", { step: "a1" }],
  ["record.taken", { step: "a1", record: "turns", value: 6 }],
  ["hold.called", { reason: "comm" }],
  ["step.done", { step: "a2" }],
  ["hold.lifted", {}],
  ["hold.called", {}],
  ["hold.lifted", {}],
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

/** What somebody did on one of the devices. */
export interface Tap {
  readonly device: number;
  /** Milliseconds since the tap before it, by the device's own clock; zero makes ties. */
  readonly pause: number;
  /** How much later it was entered than it happened. */
  readonly late: number;
  /** `null` is the next thing of {@link GOING_WELL}. */
  readonly what: readonly [name: string, data: object] | null;
  /** Strikes the entry so many back (or ahead, below zero) instead, of whatever device. */
  readonly strikes: number | null;
  /** A second, different entry under the same source and id, of this tap or of the opening of the walk; or this tap stamped anew. */
  readonly clashes: "tap" | "opening" | "stamp" | null;
  /** That it was entered in another walk, and got into the log of this one. */
  readonly astray: boolean;
}

/** Any one tap. */
export const tap: fc.Arbitrary<Tap> = fc.record({
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
    { weight: 1, arbitrary: fc.constant("stamp" as const) },
  ),
  astray: fc.nat({ max: 60 }).map((number) => number === 60),
});
