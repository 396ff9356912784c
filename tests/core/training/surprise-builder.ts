import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import type { Surprise } from "../../../src/core/training/index.ts";
import { readSurprises } from "../../../src/core/training/index.ts";
import { fileWith, procedureOf, step } from "../procedure-builder.ts";

/** EV1 fetches a bag and reads a gauge, then both go on; EV2 works for itself and decides. */
export const FILE: ProcedureFile = fileWith(
  [
    step("fetch", "ev1", 10, { moves: [{ item: "bag", to: { crew: "ev1" } }], to: "mast" }),
    step("read", "ev1", 5, {
      records: [
        { id: "turns", min: 8, max: 10 },
        { id: "oxygen", unit: "kPa", supply: "oxygen" },
      ],
    }),
    step("work", "ev2", 20, {}),
    step("try", "ev2", 4, {
      decide: { id: "bolt", ask: "Does it turn?", outcomes: ["turns", "stuck"], expect: "turns" },
    }),
    step("meet", ["ev1", "ev2"], 10, {}),
    step("watch", "iv", 60, {}),
  ],
  {
    format: "tetherline.procedure/2",
    limits: { elapsed: "PT2H" },
    crew: [
      { id: "ev1", call: "EV1", station: "outside", start: "lock" },
      { id: "ev2", call: "EV2", station: "outside" },
      { id: "iv", call: "IV", station: "inside" },
    ],
    places: [{ id: "lock", refuge: true }, { id: "mast" }],
    routes: [{ between: ["lock", "mast"], length: 5 }],
    items: [{ id: "bag", label: "Tool bag", start: { place: "lock" } }],
    supplies: [
      { crew: "ev1", id: "oxygen", label: "Oxygen", unit: "kPa", full: 1000, redline: 100, perHour: 100 },
    ],
  },
);

/** A surprise as it stands in a file. */
export function surprise(id: string, does: object, more: object = {}): Record<string, unknown> {
  return {
    id,
    title: `Surprise ${id}`,
    when: { pet: "PT5M" },
    does,
    expect: { who: ["iv"], notice: "that it is so", within: "PT5M", act: "call a hold" },
    ...more,
  };
}

/** The text of a file of surprises for {@link FILE}. */
export function surprisesText(surprises: readonly object[], more: object = {}): string {
  const file = { format: "tetherline.surprises/1", procedure: "trial", title: "Trial", surprises, ...more };
  return JSON.stringify(file, null, 2);
}

/** The surprises of a file that must be sound. */
export function surprisesFrom(...surprises: readonly object[]): readonly Surprise[] {
  const { surprises: read, findings } = readSurprises(surprisesText(surprises), procedureOf(FILE));
  if (!read) throw new Error(`not sound: ${findings.map(({ code }) => code).join(" ")}`);
  return read.surprises;
}
