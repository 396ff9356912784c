import type { Briefing } from "../../../src/core/briefing/index.ts";
import { briefingOf } from "../../../src/core/briefing/index.ts";
import { planOf } from "../../../src/core/plan/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { outlineOf } from "../../../src/core/procedure/index.ts";
import { fileWith, procedureOf, step, task } from "../procedure-builder.ts";

/** Two tasks of two people outside: EV1 fetches a lamp, EV2 waits at the boom, and they fit it together. */
export const LAMP_FILE: ProcedureFile = fileWith(
  [
    task(
      "fetch",
      [
        step("take", "ev1", 2, {
          moves: [{ item: "lamp", to: { crew: "ev1" } }],
          alerts: [{ level: "caution", text: "Hot edge" }],
          brief: "The edge has been in the sun.",
        }),
        step("ready", "ev2", 1),
        step("go", "ev2", null, { to: "boom" }),
        step("out", "ev1", null, { to: "boom", alerts: [{ level: "warning", text: "Keep clear" }] }),
      ],
      { title: "Fetch the lamp", brief: "One carries, one waits." },
    ),
    task(
      "fit",
      [
        step("fit-it", ["ev1", "ev2"], 10, { at: "boom", alerts: [{ level: "note", text: "Listen" }] }),
        step("press", ["ev1", "ev2"], 2, { at: "boom" }),
        step("look", "ev2", 3, { at: "boom" }),
      ],
      { title: "Fit the lamp" },
    ),
  ],
  {
    format: "tetherline.procedure/2",
    crew: [
      { id: "ev1", call: "EV1", station: "outside", start: "hatch", tether: { anchor: "hatch", length: 12 } },
      { id: "ev2", call: "EV2", station: "outside", start: "hatch", tether: { anchor: "hatch", length: 12 } },
      { id: "iv", call: "IV", station: "inside" },
    ],
    places: [
      { id: "hatch", label: "Hatch", refuge: true },
      { id: "boom", label: "Boom" },
    ],
    routes: [{ between: ["hatch", "boom"], length: 10, time: "PT8M" }],
    items: [{ id: "lamp", label: "Lamp", start: { place: "hatch" } }],
  },
);

/** The briefing of the plan of a procedure file, which must have one. */
export function briefingOfFile(file: unknown): Briefing {
  const { timeline } = planOf(outlineOf(procedureOf(file)));
  if (!timeline) throw new Error("the test's procedure has no plan");
  return briefingOf(timeline.course);
}
