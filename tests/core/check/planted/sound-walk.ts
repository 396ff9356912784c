import type { ProcedureFile } from "../../../../src/core/procedure/index.ts";
import { FORMAT } from "../../../../src/core/procedure/index.ts";
import { fileWith, step, task } from "../../procedure-builder.ts";

/** A small walk without a finding: two people go out, exchange a lamp and a plug at a boom, and come in. */
export const SOUND_WALK: ProcedureFile = fileWith(
  [
    task("out", [
      step("open-hatch", "ev1", 2, { do: "Open the hatch", at: "lock", sets: { hatch: "open" } }),
      step("ev1-out", "ev1", null, { do: "Move out", to: "hatch" }),
      step("ev2-out", "ev2", null, { do: "Move out", to: "hatch", after: ["open-hatch"] }),
      step("ev1-to-boom", "ev1", null, { do: "Move to the boom", to: "boom" }),
      step("ev2-to-boom", "ev2", null, { do: "Move to the boom", to: "boom" }),
    ]),
    task("work", [
      step("power-off", "iv", 1, { do: "Switch off the power", sets: { power: "off" } }),
      step("unplug", "ev1", 3, {
        do: "Pull the plug",
        at: "boom",
        needs: { power: "off" },
        after: ["power-off"],
      }),
      step("hand-lamp", ["ev1", "ev2"], 2, {
        do: "Hand the lamp to EV2",
        at: "boom",
        moves: [{ item: "lamp", to: { crew: "ev2" } }],
        confirm: { by: "ev2", text: "EV2 has the lamp" },
      }),
      step("fit-lamp", "ev2", 4, {
        do: "Fit the lamp",
        at: "boom",
        moves: [{ item: "lamp", to: { place: "boom" } }],
      }),
      step("old-lamp", "ev2", 3, {
        do: "Take the old lamp",
        at: "boom",
        moves: [{ item: "lamp-old", to: { crew: "ev2" } }],
      }),
      step("try-bolt", "ev2", 2, {
        do: "Try the bolt",
        at: "boom",
        decide: { id: "bolt", ask: "Does it turn?", outcomes: ["free", "stuck"], expect: "free" },
      }),
      step("turn-bolt", "ev2", 2, { do: "Turn the bolt", at: "boom", when: { bolt: "free" } }),
      step("bar-out", "ev2", 2, {
        do: "Take the bar out of the bag",
        at: "boom",
        when: { bolt: "stuck" },
        moves: [{ item: "bar", to: { crew: "ev2" } }],
      }),
      step("bar-in", "ev2", 2, {
        do: "Put the bar back",
        at: "boom",
        when: { bolt: "stuck" },
        moves: [{ item: "bar", to: { item: "bag" } }],
      }),
      step("mate", "ev1", 3, {
        do: "Mate the plug",
        at: "boom",
        needs: { power: "off" },
        records: [{ id: "press", label: "Pressure", unit: "kPa", min: 28, max: 31 }],
        confirm: { by: "ev2", text: "The ring is shut" },
      }),
      step("power-on", "iv", 1, { do: "Switch on the power", after: ["mate"], sets: { power: "on" } }),
      step("look", "ev2", 5, { do: "Look over the boom", at: "boom", within: ["day"] }),
      step("report", ["iv", "ground"], 2, {
        do: "Report the boom done",
        after: ["power-on"],
        within: ["contact"],
      }),
    ]),
    task("survey", [step("photos", "ev1", 4, { do: "Photograph the tip", at: "boom" })], {
      priority: "get-ahead",
    }),
    task(
      "home",
      [
        step("ev1-home", "ev1", null, { do: "Move to the hatch", to: "hatch" }),
        step("ev2-home", "ev2", null, { do: "Move to the hatch", to: "hatch" }),
        step("ev1-in", "ev1", null, { do: "Move in", to: "lock" }),
        step("ev2-in", "ev2", null, { do: "Move in", to: "lock" }),
        step("close-hatch", "ev1", 2, {
          do: "Close the hatch",
          at: "lock",
          after: ["ev2-in"],
          sets: { hatch: "closed" },
        }),
      ],
      { closeout: true },
    ),
  ],
  {
    format: FORMAT,
    limits: { elapsed: "PT3H" },
    crew: [
      { id: "ev1", call: "EV1", station: "outside", start: "lock", tether: { anchor: "lock", length: 60 } },
      { id: "ev2", call: "EV2", station: "outside", start: "lock" },
      { id: "iv", call: "IV", station: "inside" },
      { id: "ground", call: "Ground", station: "ground" },
    ],
    places: [
      { id: "lock", label: "Airlock", refuge: true },
      { id: "hatch", label: "Hatch" },
      { id: "boom", label: "Boom" },
      { id: "tip", label: "Tip" },
    ],
    routes: [
      { between: ["lock", "hatch"], length: 2, time: "PT1M", needs: { hatch: "open" } },
      { between: ["hatch", "boom"], length: 20, time: "PT5M" },
      { between: ["boom", "tip"], length: 10, time: "PT3M" },
    ],
    items: [
      { id: "lamp", label: "Lamp", hands: 1, start: { crew: "ev1" }, end: { place: "boom" } },
      { id: "lamp-old", label: "Old lamp", hands: 1, start: { place: "boom" } },
      { id: "bag", label: "Bag", start: { crew: "ev2" } },
      { id: "bar", label: "Bar", hands: 1, start: { item: "bag" }, end: { item: "bag" } },
    ],
    states: [
      { id: "hatch", label: "Hatch", values: ["closed", "open"], start: "closed", end: "closed" },
      { id: "power", label: "Power", values: ["on", "off"], start: "on", end: "on" },
    ],
    windows: [
      { id: "day", label: "Daylight", kind: "listed", spans: [{ from: "PT0S", to: "PT1H" }] },
      { id: "contact", label: "Contact", kind: "listed", spans: [{ from: "PT5M", to: "PT1H30M" }] },
    ],
    supplies: [{ crew: "ev1", id: "oxygen", unit: "kPa", full: 6200, redline: 620, perHour: 700 }],
  },
);
