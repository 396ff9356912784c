import type { Duration, Instant } from "../../src/core/units/index.ts";
import { later } from "../../src/core/units/index.ts";
import { fileWith, step } from "../core/procedure-builder.ts";
import { WrittenWalk } from "./written-walk.ts";

/** A procedure in which everything a follower can meet comes within a few steps. */
export const shortFile = fileWith(
  [
    {
      id: "start",
      title: "Start",
      steps: [
        step("ev1-check", "ev1", 2, {
          records: [{ id: "pressure", label: "Suit pressure", unit: "kPa", min: 28, max: 31 }],
          alerts: [{ level: "warning", text: "Do not go on below 28 kPa." }],
          confirm: { by: "iv", text: "Pressure read back" },
        }),
        step("ev2-check", "ev2", 3),
        step("hand-over", ["ev1", "ev2"], 2, { moves: [{ item: "driver", to: { crew: "ev2" } }] }),
        step("try-bolt", "ev1", 1, {
          decide: { id: "bolt", ask: "Does the bolt turn?", outcomes: ["turns", "stuck"], expect: "turns" },
        }),
        step("bolt-out", "ev1", 2, { when: { bolt: "turns" } }),
        step("call-stuck", ["ev1", "iv"], 2, { when: { bolt: "stuck" } }),
        step("iv-power", "iv", 1),
        step("iv-test", "iv", 2, { after: [{ step: "iv-power", lag: "PT30M" }] }),
        step("ev2-stow", "ev2", 2),
      ],
    },
    { id: "spare", title: "Spare", priority: "get-ahead", steps: [step("ev2-photos", "ev2", 5)] },
  ],
  {
    id: "short-trial",
    title: "Short trial",
    items: [{ id: "driver", label: "Driver", start: { crew: "ev1" }, end: { crew: "ev1" } }],
    supplies: [
      { crew: "ev1", id: "oxygen", label: "Oxygen", unit: "kPa", full: 6000, redline: 600, perHour: 700 },
    ],
  },
);

/** A walk of it whose clock was started so many minutes ago. */
export function shortWalk(minutesAgo: number, walk = "short-walk"): WrittenWalk {
  return new WrittenWalk(shortFile, {
    start: later(Date.now() as Instant, (-minutesAgo * 60_000) as Duration),
    walk,
  });
}
