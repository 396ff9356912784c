import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { ElementSet, OrbitProblem } from "../../../src/core/light/index.ts";
import { orbitOf, readOrbit, tleChecksum } from "../../../src/core/light/index.ts";
import type { Duration } from "../../../src/core/units/index.ts";
import { later } from "../../../src/core/units/index.ts";
import { inWords } from "../../../src/words/index.ts";

const TLE = [
  "1 25544U 98067A   24127.82853009  .00015698  00000+0  27310-3 0  9995",
  "2 25544  51.6393 160.4574 0003580 140.6673 205.7250 15.50957674452123",
] as const;

const FIELDS = {
  OBJECT_NAME: "OSIER",
  OBJECT_ID: "1998-067A",
  CENTER_NAME: "EARTH",
  REF_FRAME: "TEME",
  TIME_SYSTEM: "UTC",
  MEAN_ELEMENT_THEORY: "SGP4",
  EPOCH: "2024-05-06T19:53:04.999776",
  MEAN_MOTION: "15.50957674",
  ECCENTRICITY: "0.000358",
  INCLINATION: "51.6393",
  RA_OF_ASC_NODE: "160.4574",
  ARG_OF_PERICENTER: "140.6673",
  MEAN_ANOMALY: "205.725",
  NORAD_CAT_ID: "25544",
  BSTAR: "0.0002731",
  MEAN_MOTION_DOT: "0.00015698",
  MEAN_MOTION_DDOT: "0",
};

type Fields = Readonly<Record<string, string>>;
const json = (fields: Fields) => JSON.stringify(fields);
const kvn = (fields: Fields) =>
  ["CCSDS_OMM_VERS = 3.0", ...Object.entries(fields).map(([key, value]) => `${key} = ${value}`)].join("\n");
const xml = (fields: Fields) => {
  const inside = Object.entries(fields).map(([key, value]) => `<${key}>${value}</${key}>`);
  return `<?xml version="1.0"?><ndm><omm id="CCSDS_OMM_VERS" version="3.0"><body><segment>${inside.join("")}</segment></body></omm></ndm>`;
};
const FORMS = { json, kvn, xml };

function sound(text: string): ElementSet {
  const { elements, problems } = readOrbit(text);
  if (!elements) throw new Error(JSON.stringify(problems));
  return elements;
}

/** Two lines with their checksums put right. */
function summed(line1: string, line2: string): string {
  return [line1, line2].map((line) => `${line.slice(0, 68)}${tleChecksum(line)}`).join("\n");
}

/** What was read is sound to the last number, and so is every place on the orbit. */
function expectSound(elements: ElementSet) {
  for (const [key, value] of Object.entries(elements))
    if (typeof value === "number") expect([key, Number.isFinite(value)]).toEqual([key, true]);
  const orbit = orbitOf(elements);
  expect(orbit.period).toBeGreaterThan(0);
  for (const minutes of [0, 60, 1440]) {
    const found = orbit.at(later(elements.epoch, (minutes * 60_000) as Duration));
    if (found) expect(Object.values(found).every(Number.isFinite)).toBe(true);
  }
}

/** A text with a few of its letters replaced, taken out, doubled or put in. */
const mutated = (text: string) =>
  fc
    .array(
      fc.record({
        at: fc.nat({ max: text.length - 1 }),
        kind: fc.constantFrom("replace", "drop", "insert"),
        by: fc.oneof(
          fc.constantFrom(...'0123456789 .-+eENaI=<>{}[]",:/\n'),
          fc.string({ minLength: 1, maxLength: 2, unit: "binary" }),
        ),
      }),
      { minLength: 1, maxLength: 4 },
    )
    .map((changes) =>
      changes.reduce(
        (now, { at, kind, by }) =>
          now.slice(0, at) + (kind === "drop" ? "" : by) + now.slice(at + (kind === "insert" ? 0 : 1)),
        text,
      ),
    );

/** The field of a problem as it is shown. */
const fieldOf = ({ field }: OrbitProblem) => (typeof field === "string" ? field : inWords(field));

function expectReadOrRefused(text: string) {
  const { elements, problems } = readOrbit(text);
  if (elements) expectSound(elements);
  else {
    expect(problems.length).toBeGreaterThan(0);
    for (const { field, reason } of problems) {
      expect(field).not.toBe("");
      expect(inWords(reason)).not.toMatch(/NaN is not between|undefined/);
    }
  }
}

describe("reading an orbit file", () => {
  test.prop([fc.string({ unit: "binary", maxLength: 300 })], { numRuns: 200 })(
    "[LGT1] any text is read or refused with a field and a reason; nothing is thrown",
    (text) => expectReadOrRefused(text),
  );

  test.prop([mutated(TLE.join("\n"))], { numRuns: 200 })("[LGT1] so are spoiled two-line sets", (text) =>
    expectReadOrRefused(text),
  );

  test.prop([mutated(TLE.join("\n"))], { numRuns: 200 })(
    "[LGT1] so are spoiled two-line sets with checksums put right",
    (text) => {
      const [line1 = "", line2 = ""] = text.split("\n");
      expectReadOrRefused(summed(line1.padEnd(69), line2.padEnd(69)));
    },
  );

  test("[LGT1] XML that its validator passes and its parser does not is refused", () => {
    const text = `<?xml version=\u00001.0"?>${(FORMS.xml?.(FIELDS) ?? "").replace(/^<\?xml[^>]*\?>/, "")}`;
    const { elements, problems } = readOrbit(text);
    expect(elements).toBeNull();
    expect(problems.map(fieldOf)).toEqual(["file"]);
  });

  for (const [name, write] of Object.entries(FORMS)) {
    test.prop([mutated(write(FIELDS))], { numRuns: 150 })(
      `[LGT1] so are spoiled messages in ${name}`,
      (text) => expectReadOrRefused(text),
    );

    test.prop(
      [
        fc.constantFrom(...Object.keys(FIELDS)),
        fc.oneof(
          fc.constantFrom(
            "",
            " ",
            "NaN",
            "Infinity",
            "-Infinity",
            "1e999",
            "-1e999",
            "1e-999",
            "0x10",
            "1,5",
            "1_0",
            "١٢",
          ),
          fc.double().map(String),
          fc.string({ maxLength: 12 }).filter((text) => !/[<>&"\\]/.test(text)),
        ),
      ],
      { numRuns: 150 },
    )(`[LGT1] so is any value in any field, in ${name}`, (field, value) =>
      expectReadOrRefused(write({ ...FIELDS, [field]: value })),
    );
  }

  it("[LGT1] the three forms of a message are one orbit", () => {
    const { form, ...rest } = sound(json(FIELDS));
    expect(form).toBe("OMM (JSON)");
    expect(sound(kvn(FIELDS))).toEqual({ ...rest, form: "OMM (KVN)" });
    expect(sound(xml(FIELDS))).toEqual({ ...rest, form: "OMM (XML)" });
    expect(sound(kvn(FIELDS).replaceAll("\n", "\r\n"))).toEqual({ ...rest, form: "OMM (KVN)" });
    expect(sound(`\uFEFF${json(FIELDS)}\n`)).toEqual({ ...rest, form });
  });

  test.prop([fc.integer({ min: 0, max: 999_999 }), fc.constantFrom("json", "kvn", "xml")], { numRuns: 100 })(
    "[LGT1] epochs keep their microseconds, in dates of the calendar and of the year",
    (micro, name) => {
      const fraction = String(micro).padStart(6, "0");
      for (const epoch of [`2024-05-06T19:53:04.${fraction}`, `2024-127T19:53:04.${fraction}Z`]) {
        const read = sound(FORMS[name as keyof typeof FORMS]({ ...FIELDS, EPOCH: epoch }));
        const whole = Date.UTC(2024, 4, 6, 19, 53, 4);
        expect(read.epoch - whole).toBe(Math.floor(micro / 1000));
        expect(Math.abs(read.epochRest - (micro % 1000) / 1000)).toBeLessThan(1e-9);
        expect(read.epochRest).toBeLessThan(1);
      }
    },
  );

  it("[LGT1] a part of a millisecond of the epoch is way", () => {
    const at = (fraction: string) => {
      const orbit = orbitOf(sound(json({ ...FIELDS, EPOCH: `2024-05-06T19:53:04.${fraction}` })));
      return orbit.at(orbit.elements.epoch) ?? { x: Number.NaN, y: 0, z: 0 };
    };
    const [early, late] = [at("999000"), at("999900")];
    const way = Math.hypot(early.x - late.x, early.y - late.y, early.z - late.z) * 1000;
    expect(way).toBeGreaterThan(6.5);
    expect(way).toBeLessThan(7.2);
  });

  it.each([
    ["an empty file", "  \n", "file"],
    ["no JSON", "{", "file"],
    ["a number", "[3]", "file"],
    ["two sets", `[${json(FIELDS)},${json(FIELDS)}]`, "file"],
    ["no set", "[]", "file"],
    ["no XML", "<omm>", "file"],
    ["two sets in XML", xml(FIELDS).replaceAll(/<segment>.*<\/segment>/g, "$&$&"), "segment"],
    ["a line that is no assignment", `${kvn(FIELDS)}\nand so on`, "line 19"],
    ["a keyword twice", `${kvn(FIELDS)}\nBSTAR = 0`, "BSTAR"],
    ["a list for a value", JSON.stringify({ ...FIELDS, BSTAR: [1] }), "BSTAR"],
    ["a number beyond all bounds", json({ ...FIELDS, MEAN_MOTION_DOT: "1e999" }), "MEAN_MOTION_DOT"],
    ["a number beyond all bounds", json({ ...FIELDS, MEAN_MOTION_DDOT: "-1e999" }), "MEAN_MOTION_DDOT"],
    ["a hyperbola", json({ ...FIELDS, ECCENTRICITY: "1" }), "ECCENTRICITY"],
    ["an inclination below zero", json({ ...FIELDS, INCLINATION: "-1" }), "INCLINATION"],
    ["too many revolutions", json({ ...FIELDS, MEAN_MOTION: "18.1" }), "MEAN_MOTION"],
    ["half an object", json({ ...FIELDS, NORAD_CAT_ID: "2.5" }), "NORAD_CAT_ID"],
    ["another theory", json({ ...FIELDS, MEAN_ELEMENT_THEORY: "DSST" }), "MEAN_ELEMENT_THEORY"],
    ["another centre", json({ ...FIELDS, CENTER_NAME: "MARS" }), "CENTER_NAME"],
    ["another clock", json({ ...FIELDS, TIME_SYSTEM: "TAI" }), "TIME_SYSTEM"],
    ["SGP4-XP", json({ ...FIELDS, EPHEMERIS_TYPE: "4" }), "EPHEMERIS_TYPE"],
    ["day 366 of a common year", json({ ...FIELDS, EPOCH: "2023-366T00:00:00" }), "EPOCH"],
    ["day 0", json({ ...FIELDS, EPOCH: "2023-000T00:00:00" }), "EPOCH"],
    ["30 February", json({ ...FIELDS, EPOCH: "2024-02-30T00:00:00" }), "EPOCH"],
    ["an offset", json({ ...FIELDS, EPOCH: "2024-02-20T00:00:00+01:00" }), "EPOCH"],
    ["one line", TLE[0], "file"],
    ["four lines", ["a", "b", ...TLE].join("\n"), "file"],
    ["a line cut short", `${TLE[0]}\n${TLE[1].slice(0, 60)}`, "line 2"],
    ["a wrong checksum", `${TLE[0].slice(0, 68)}6\n${TLE[1]}`, "line 1"],
    ["day 366 of a common year in two lines", summed(TLE[0].replace("24127", "23366"), TLE[1]), "EPOCH"],
    ["a blank within a number", summed(TLE[0], TLE[1].replace(" 51.6393", "5 1.6393")), "line 2"],
  ])("[LGT1] %s is refused by its field", (_, text, field) => {
    const { elements, problems } = readOrbit(text);
    expect(elements).toBeNull();
    expect(problems.map(fieldOf)[0]).toBe(field);
  });

  it("[LGT1] a point that became a digit is seen although the checksum agrees", () => {
    const spoiled = TLE[0].replace(" .00015698", " 000015698");
    expect(tleChecksum(spoiled)).toBe(5);
    expect(readOrbit(`${spoiled}\n${TLE[1]}`).problems.map(fieldOf)[0]).toBe("line 1");
  });

  it("[LGT1] a name above two lines is kept, with or without the figure of its line", () => {
    expect(sound(["OSIER", ...TLE].join("\r\n")).name).toBe("OSIER");
    expect(sound(["0 OSIER", ...TLE].join("\n")).name).toBe("OSIER");
    expect(sound(TLE.join("\n")).name).toBeNull();
  });
});
