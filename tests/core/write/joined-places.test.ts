import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { applyChanges } from "../../../src/core/changes/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { procedureFileOf } from "../../../src/core/procedure/index.ts";
import type { Duration, Metres } from "../../../src/core/units/index.ts";
import { parseDuration } from "../../../src/core/units/index.ts";
import type { Proposal } from "../../../src/core/write/index.ts";
import { offeredTime, placeAdded, placesJoined, placesParted } from "../../../src/core/write/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { fileWith, step, task } from "../procedure-builder.ts";

const fileOf = (routes: NonNullable<ProcedureFile["routes"]>) =>
  fileWith([task("one", [step("a", "iv", 1)])], {
    places: [{ id: "hatch", label: "Hatch" }, { id: "boom", label: "Boom" }, { id: "place" }],
    routes,
  });
const FILE = fileOf([{ between: ["boom", "hatch"], length: 4, time: "PT1M" }]);
const WAY = { length: 3 as Metres, time: 90_000 as Duration };

const why = ({ problem }: Proposal) => (problem ? inWords(problem) : null);
function afterwards(proposal: Proposal, file: ProcedureFile = FILE): ProcedureFile {
  if (proposal.problem) throw new Error(inWords(proposal.problem));
  const applied = applyChanges(file, proposal.changes);
  if (applied.problem) throw new Error(applied.problem.code);
  expect(procedureFileOf(applied.file)).not.toBeNull();
  return applied.file;
}

describe("places that are joined by a way", () => {
  it("[WRT5] get a way behind the others, with its length and its time", () => {
    expect(afterwards(placesJoined(FILE, ["hatch", "place"], WAY)).routes).toEqual([
      { between: ["boom", "hatch"], length: 4, time: "PT1M" },
      { between: ["hatch", "place"], length: 3, time: "PT1M30S" },
    ]);
    const { routes: none, ...bare } = FILE;
    expect(none).toHaveLength(1);
    expect(afterwards(placesJoined(bare, ["hatch", "boom"], { ...WAY, time: null }), bare).routes).toEqual([
      { between: ["hatch", "boom"], length: 3 },
    ]);
  });

  it("[WRT5] are refused with the reason", () => {
    expect(why(placesJoined(FILE, ["hatch", "hatch"], WAY))).toMatch(/^A way joins two places/);
    expect(why(placesJoined(FILE, ["hatch", "gone"], WAY))).toBe("Choose two places of this procedure.");
    expect(why(placesJoined(FILE, ["hatch", "boom"], WAY))).toBe("A way joins “Hatch” and “Boom” already.");
    for (const length of [null, Number.NaN, -1, Number.POSITIVE_INFINITY])
      expect(why(placesJoined(FILE, ["hatch", "place"], { ...WAY, length: length as Metres }))).toBe(
        "Say how long the way is, in metres.",
      );
  });

  it("[WRT5] lose it again, from either end", () => {
    expect(afterwards(placesParted(FILE, ["hatch", "boom"])).routes).toEqual([]);
    expect(why(placesParted(FILE, ["hatch", "place"]))).toBe("Choose two places of this procedure.");
  });

  it("[WRT5] a new place has an id that is free, and stands behind the others", () => {
    const { place, proposal } = placeAdded(FILE, "Place");
    expect(place).toBe("place-2");
    expect(afterwards(proposal).places?.at(-1)).toEqual({ id: "place-2", label: "Place" });
  });
});

describe("the time that is offered for a way", () => {
  it("[WRT5] is that of the slowest way of the file, which is named; ways without a time or a length tell nothing", () => {
    const file = fileOf([
      { between: ["boom", "hatch"], length: 4, time: "PT1M" },
      { between: ["place", "boom"], length: 10, time: "PT50S" },
      { between: ["place", "hatch"], length: 0, time: "PT9M" },
    ]);
    expect(offeredTime(file, 5.1 as Metres)).toEqual({ time: 77_000, from: ["Boom", "Hatch"] });
    expect(offeredTime(fileOf([{ between: ["boom", "hatch"], length: 4 }]), 5 as Metres)).toBeNull();
    expect(offeredTime(fileOf([]), 5 as Metres)).toBeNull();
    expect(offeredTime(file, 0 as Metres)).toBeNull();
  });

  test.prop([
    fc.integer({ min: 1, max: 500 }),
    fc.integer({ min: 1, max: 900 }),
    fc.integer({ min: 1, max: 2000 }),
  ])(
    "[WRT5] is never shorter than at that pace, and by less than a second longer",
    (length, seconds, decimetres) => {
      const file = fileOf([{ between: ["boom", "hatch"], length, time: `PT${seconds}S` }]);
      const offer = offeredTime(file, (decimetres / 10) as Metres);
      const exact = ((parseDuration(`PT${seconds}S`) ?? 0) / length) * (decimetres / 10);
      expect(offer?.time).toBeGreaterThanOrEqual(Math.floor(exact));
      expect(offer?.time).toBeLessThan(exact + 1001);
    },
  );
});
