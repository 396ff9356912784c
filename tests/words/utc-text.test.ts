import { afterEach, describe, expect, it } from "vitest";
import type { Instant } from "../../src/core/units/index.ts";
import { parseInstant } from "../../src/core/units/index.ts";
import { arabicWords } from "../../src/words/arabic/index.ts";
import { english, englishWords } from "../../src/words/english/index.ts";
import { forMachines, showUtc, speak, words } from "../../src/words/index.ts";
import { utcText } from "../../src/words/utc-text.ts";

const at = (text: string) => parseInstant(text) as Instant;
const AT = at("2031-04-02T11:14:03.250Z");

afterEach(() => {
  showUtc("plain");
  speak(english, englishWords);
});

describe("an instant in UTC", () => {
  it.each([
    ["minute", "2031-04-02 11:14", "2031-092 11:14"],
    ["second", "2031-04-02 11:14:03", "2031-092 11:14:03"],
    ["tenth", "2031-04-02 11:14:03.2", "2031-092 11:14:03.2"],
    ["time-minute", "11:14", "092/11:14"],
    ["time-second", "11:14:03", "092/11:14:03"],
  ])("[WRD6] has the form %s in both styles", (form, plain, day) => {
    expect([utcText(AT, form, "plain"), utcText(AT, form, "day")]).toEqual([plain, day]);
  });

  it("[WRD6] goes over a year's end and the end of February with its day", () => {
    const day = (text: string) => utcText(at(text), "time-second", "day");
    expect(day("2028-02-29T23:59:59Z")).toBe("060/23:59:59");
    expect(day("2028-03-01T00:00:00Z")).toBe("061/00:00:00");
    expect(day("2028-12-31T23:59:59Z")).toBe("366/23:59:59");
    expect(day("2029-01-01T00:00:00Z")).toBe("001/00:00:00");
    expect(utcText(at("2028-12-31T23:59:59Z"), "minute", "day")).toBe("2028-366 23:59");
  });

  it("[WRD6] follows the choice at once, and is told to machines with its date", () => {
    const told = () => words("shelf/opened", { at: AT });
    expect(told()).toBe("opened 2031-04-02 11:14 UTC");
    showUtc("day");
    expect(told()).toBe("opened 2031-092 11:14 UTC");
    expect(words("figures/utc-time", { at: AT })).toBe("092/11:14:03");
    expect(forMachines(told)).toBe("opened 2031-04-02 11:14 UTC");
    expect(told()).toBe("opened 2031-092 11:14 UTC");
  });

  it("[WRD6] stands isolated in text from right to left", () => {
    showUtc("day");
    speak({ tag: "ar-u-nu-latn", direction: "rtl" }, arabicWords);
    expect(words("figures/utc", { at: AT })).toContain("\u20682031-092 11:14:03\u2069");
  });
});
