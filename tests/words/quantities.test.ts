import { afterEach, describe, expect, it } from "vitest";
import { inSystem } from "../../src/core/quantity/index.ts";
import { arabicWords } from "../../src/words/arabic/index.ts";
import { english, englishWords } from "../../src/words/english/index.ts";
import { frenchWords } from "../../src/words/french/index.ts";
import { forMachines, showUnits, speak, unitText, words } from "../../src/words/index.ts";

const show = (system: "si" | "us") => showUnits((quantity) => inSystem(quantity, system));
const quantity = (value: number, unit: string) => words("figures/quantity", { quantity: { value, unit } });
const range = (min: number, max: number, unit: string) =>
  words("parts/limit-range", { limits: { least: { value: min, unit }, most: { value: max, unit } } });

afterEach(() => {
  showUnits(null);
  speak(english, englishWords);
});

describe("a quantity in words", () => {
  it("[WRD5] is shown as written where no units were chosen, and where it is of the units that were", () => {
    expect(quantity(4.3, "[psi]")).toBe("4.3 psi");
    show("us");
    expect(quantity(4.3, "[psi]")).toBe("4.3 psi");
    show("si");
    expect(quantity(29.6, "kPa")).toBe("29.6 kPa");
  });

  it("[WRD5] has the figure in the reader's units behind the written one, with its last zeros", () => {
    show("si");
    expect(quantity(4.3, "[psi]")).toBe("4.3 psi (29.6 kPa)");
    expect(quantity(36, "[ft_i]")).toBe("36 ft (11.0 m)");
    expect(range(4, 5, "[psi]")).toBe("4 to 5 psi (28 to 34 kPa)");
  });

  it("[WRD5] stays as written where the unit is not known, or there is none", () => {
    show("us");
    expect(quantity(12, "smoot{x}")).toBe("12 smootx");
    expect(quantity(7, "1")).toBe("7");
    expect(range(6, 7, "1")).toBe("6 to 7");
  });

  it("[WRD5] is told to machines as written, and to the reader again afterwards, whatever happens meanwhile", () => {
    show("si");
    expect(forMachines(() => quantity(4.3, "[psi]"))).toBe("4.3 psi");
    expect(() =>
      forMachines(() => {
        throw new Error("not written");
      }),
    ).toThrow("not written");
    expect(quantity(4.3, "[psi]")).toBe("4.3 psi (29.6 kPa)");
  });

  it("[WRD5] has the numbers of the language, and stands isolated in text from right to left", () => {
    show("si");
    speak({ tag: "fr", direction: "ltr" }, frenchWords);
    expect(quantity(4.3, "[psi]")).toBe("4,3 psi (29,6 kPa)");
    speak({ tag: "ar-u-nu-latn", direction: "rtl" }, arabicWords);
    expect(quantity(4.3, "[psi]")).toMatch(/\u2068.*\u20684\.3 psi\u2069 \(\u206829\.6 kPa\u2069\).*\u2069/);
  });

  it("[WRD5] gives metres in feet beside them, alone where there is no room, to the side that does not flatter", () => {
    expect(words("map/metres", { metres: 12.34 })).toBe("12.3 m");
    expect(words("map/left", { metres: 12.39 })).toBe("12.3 m of line left");
    expect(words("map/left", { metres: 0.1 + 0.2 })).toBe("0.3 m of line left");
    expect(words("map/home", { metres: 12.31 })).toBe("12.4 m to a refuge");
    show("us");
    expect(words("map/metres", { metres: 12.34 })).toBe("12.3 m (40.4 ft)");
    expect(words("map/left", { metres: 12.3 })).toBe("40.3 ft of line left");
    expect(words("map/too-short", { metres: 0.4 })).toBe("line 1.4 ft too short");
    expect(words("map/home", { metres: 12.3 })).toBe("40.4 ft to a refuge");
  });

  it("[WRD5] that is none is a mistake of ours", () => {
    expect(() => words("figures/quantity", { quantity: "4.3 psi" as never })).toThrow(
      "could not be put in words",
    );
  });
});

it.each([
  ["1", ""],
  ["Cel", "°C"],
  ["N.m", "N·m"],
  ["kPa", "kPa"],
  ["%", "%"],
  ["[psi]", "psi"],
  ["[in_i'Hg]", "inHg"],
  ["mm[Hg]", "mmHg"],
  ["[ft_i]3/min", "ft³/min"],
  ["[cft_i]/min", "ft³/min"],
  ["[ft_i].[lbf_av]", "ft·lbf"],
  ["m/s2", "m/s²"],
  ["s-1", "s⁻¹"],
  ["/min", "/min"],
  ["{turns}/min", "turns/min"],
  ["[foo_x]", "foo_x"],
])("[WRD5] the code %s is written %s by people", (code, text) => {
  expect(unitText(code)).toBe(text);
});
