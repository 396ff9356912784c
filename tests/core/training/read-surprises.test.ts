import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { drawnSurprises, readSurprises, surprisesJsonSchema } from "../../../src/core/training/index.ts";
import { obscured, readObscured } from "../../../src/core/training/obscured.ts";
import type { WalkId } from "../../../src/core/units/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { procedureOf } from "../procedure-builder.ts";
import { FILE, surprise, surprisesFrom, surprisesText } from "./surprise-builder.ts";

const stretch = { kind: "stretch", step: "read", factor: 2 };
const silent = { kind: "silent", crew: "ev1", for: "PT5M" };
const read = (...surprises: object[]) => readSurprises(surprisesText(surprises), procedureOf(FILE));
const codes = (...surprises: object[]) =>
  read(...surprises).findings.map(({ code, level, pointer }) => [code, level, pointer]);

describe("[TRN1] a file of surprises", () => {
  it("is read with its times in ms, and a chance of 1 where none is said", () => {
    expect(surprisesFrom(surprise("a", silent))).toMatchObject([
      { id: "a", when: { pet: 300_000 }, does: { for: 300_000 }, chance: 1, expect: { within: 300_000 } },
    ]);
  });

  it.each<[string, object, object]>([
    ["surprises/no-step", { ...stretch, step: "gone" }, {}],
    ["surprises/no-step", stretch, { when: { step: "gone" } }],
    ["surprises/no-place", stretch, { when: { place: "gone" } }],
    ["surprises/no-crew", stretch, { when: { place: "mast", crew: "gone" } }],
    ["surprises/no-crew", { ...silent, crew: "gone" }, {}],
    ["surprises/no-crew", silent, { expect: { who: ["gone"], notice: "x", within: "PT1M", act: "y" } }],
    ["surprises/no-item", { kind: "missing", item: "gone", says: "Gone", for: "PT5M" }, {}],
    ["surprises/no-record", { kind: "record", step: "read", record: "gone", value: 1 }, {}],
    ["surprises/no-supply", { kind: "supply", crew: "ev2", supply: "oxygen", factor: 2 }, {}],
    ["surprises/no-decision", { kind: "decision", decision: "gone", outcome: "stuck" }, {}],
    ["surprises/no-outcome", { kind: "decision", decision: "bolt", outcome: "gone" }, {}],
    ["surprises/past-limit", stretch, { when: { pet: "PT3H" } }],
    ["surprises/past-limit", stretch, { when: { from: "PT1H", to: "PT2H1S" } }],
    ["surprises/backwards", stretch, { when: { from: "PT1H", to: "PT59M" } }],
    ["surprises/too-late", { ...stretch, step: "fetch" }, { when: { step: "read" } }],
    ["surprises/unusable", { ...stretch, factor: 1 }, {}],
    ["surprises/unusable", stretch, { colour: "red" }],
  ])("with %s is refused, at its line", (code, does, more) => {
    const { surprises, findings } = read(surprise("a", does, more));
    expect(surprises).toBeNull();
    expect(findings.map((one) => [one.code, one.level])).toEqual([[code, "error"]]);
    expect(findings[0]?.position?.line).toBeGreaterThan(5);
    expect(inWords(findings[0]?.message ?? "")).toMatch(/^[A-Z"].*\.$/);
  });

  it.each<[string, object, object]>([
    ["/surprises/0/does/factor", { ...stretch, factor: 1 }, {}],
    ["/surprises/0/does/for", { ...silent, for: "five minutes" }, {}],
    ["/surprises/0/does/colour", { ...silent, colour: "red" }, {}],
    ["/surprises/0/does", { kind: "earthquake" }, {}],
    ["/surprises/0/when", stretch, { when: { moon: "full" } }],
    ["/surprises/0/expect", stretch, { expect: undefined }],
  ])("that cannot be read names the place %s", (pointer, does, more) => {
    expect(codes(surprise("a", does, more))).toEqual([["surprises/unusable", "error", pointer]]);
  });

  it("at the limit itself comes in time", () => {
    expect(codes(surprise("a", stretch, { when: { pet: "PT2H" } }))).toEqual([]);
  });

  it("that says something twice, or against itself, is told", () => {
    expect(codes(surprise("a", stretch), surprise("a", silent))).toEqual([
      ["surprises/doubled-id", "error", "/surprises/1/id"],
    ]);
    expect(codes(surprise("a", stretch), surprise("b", stretch))).toEqual([
      ["surprises/doubled", "caution", "/surprises/1"],
    ]);
    const value = (of: number) => ({ kind: "record", step: "read", record: "turns", value: of });
    expect(codes(surprise("a", value(3)), surprise("b", value(12)))).toEqual([
      ["surprises/contrary", "error", "/surprises/1/does"],
    ]);
  });

  it.each<[string, object]>([
    ["surprises/within-limits", { kind: "record", step: "read", record: "turns", value: 10 }],
    ["surprises/expected", { kind: "decision", decision: "bolt", outcome: "turns" }],
  ])("that is no surprise (%s) is cautioned and read", (code, does) => {
    expect(codes(surprise("a", does)).map(([found, level]) => [found, level])).toEqual([[code, "caution"]]);
    expect(read(surprise("a", does)).surprises).not.toBeNull();
  });

  it("of another procedure, of a newer version, or that is no JSON, is refused with one finding", () => {
    const of = (text: string) => readSurprises(text, procedureOf(FILE)).findings.map(({ code }) => code);
    expect(of(surprisesText([surprise("a", stretch)], { procedure: "other" }))).toEqual([
      "surprises/other-procedure",
    ]);
    expect(of(surprisesText([], { format: "tetherline.surprises/9" }))).toEqual(["surprises/newer"]);
    expect(of("{")).toEqual(["file/not-json"]);
    expect(of("[]")).toEqual(["surprises/unusable"]);
    expect(of("null")).toEqual(["surprises/unusable"]);
  });

  it("never throws, whatever it is given", () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
        const result = readSurprises(text, procedureOf(FILE));
        expect(result.surprises === null || result.findings.every(({ level }) => level !== "error")).toBe(
          true,
        );
      }),
    );
  });

  it("has a schema for editors that names every kind", () => {
    const text = JSON.stringify(surprisesJsonSchema());
    for (const kind of ["stretch", "record", "missing", "silent", "contact", "supply", "decision"])
      expect(text).toContain(`"const":"${kind}"`);
  });
});

describe("[TRN2] what a seed draws", () => {
  const file = (surprises: readonly object[]) => {
    const { surprises: sound } = read(...surprises);
    if (!sound) throw new Error("not sound");
    return sound;
  };
  const some = [
    surprise("a", stretch, { chance: 0.5, when: { from: "PT5M", to: "PT50M" } }),
    surprise("b", silent, { chance: 0.5 }),
  ];

  it("is the same for the same seed, and of each surprise alone", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 10_000 }), (seed) => {
        const both = drawnSurprises(file(some), seed);
        expect(drawnSurprises(file(some), seed)).toEqual(both);
        const alone = drawnSurprises(file(some.slice(1)), seed);
        expect(both.filter(({ id }) => id === "b")).toEqual(alone);
        for (const { when } of both) {
          const pet = "pet" in when ? when.pet : Number.NaN;
          expect(pet).toBeGreaterThanOrEqual(5 * 60_000);
          expect(pet).toBeLessThanOrEqual(50 * 60_000);
          expect(pet % 1000).toBe(0);
        }
      }),
    );
  });

  it("comes about as often as its chance says", () => {
    const seeds = Array.from({ length: 1000 }, (_, seed) => seed);
    const count = seeds.filter((seed) =>
      drawnSurprises(file(some), seed).some(({ id }) => id === "a"),
    ).length;
    // Five standard deviations of a coin tossed a thousand times.
    expect(Math.abs(count - 500)).toBeLessThan(80);
  });
});

describe("[TRN2] a surprise in a log", () => {
  const walk = "walk-1" as WalkId;

  it("is not readable by eye, and comes back as it was, in its walk alone", () => {
    for (const does of [
      stretch,
      silent,
      { kind: "missing", item: "bag", says: "Il n’y est pas — 袋がない", for: "PT5M" },
      { kind: "contact", for: "PT5M" },
    ]) {
      const [one] = surprisesFrom(surprise("a", does, { when: { place: "mast" } }));
      if (!one) throw new Error("none");
      const text = obscured(walk, one);
      expect(text).toMatch(/^[0-9a-f]+$/);
      expect(text).not.toContain(Buffer.from("stretch").toString("hex"));
      expect(readObscured(walk, text)).toEqual(one);
      expect(readObscured("walk-2" as WalkId, text)).toBeNull();
    }
  });

  it("that cannot be read is none", () => {
    fc.assert(fc.property(fc.string(), (text) => readObscured(walk, text) === null));
  });
});
