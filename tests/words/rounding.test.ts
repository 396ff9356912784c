import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { Duration } from "../../src/core/units/index.ts";
import { clockText, hourMinuteText, ofSeconds } from "../../src/core/units/index.ts";
import { words } from "../../src/words/index.ts";

const at = (text: string) => {
  const [hours = 0, minutes = 0, seconds = 0] = text.split(":").map(Number);
  return ofSeconds(hours * 3600 + minutes * 60 + seconds);
};

describe("rounding", () => {
  it("[OFF8] a finish is rounded up: 5:59:30 is not 5:59", () => {
    expect(words("timeline/planned-finish", { at: at("5:59:30") })).toBe("planned finish 6:00");
    expect(words("timeline/planned-finish", { at: at("5:59:00") })).toBe("planned finish 5:59");
    expect(words("cli/finish", { finish: (at("5:59:29") + 1) as Duration })).toBe("finish 5:59:30");
  });

  it("[OFF8] a margin and slack are rounded down: 10:30 is not 11 min; what is missing is rounded up", () => {
    expect(words("read/slack", { time: at("0:10:30") })).toBe("Slack 10 min");
    expect(words("figures/margin", { time: at("0:10:59.999") })).toBe("10 min");
    expect(words("figures/margin", { time: -at("0:10:01") as Duration })).toBe("−11 min");
    expect(words("figures/margin", { time: at("1:59:59") })).toBe("1 h 59 min");
    expect(words("timeline/over-limit", { time: at("0:10:01") })).toBe("11 min over the limit");
  });

  it("[OFF8] a duration and a delay are rounded up, an advance is rounded down", () => {
    expect(words("figures/length", { time: at("0:02:01") })).toBe("3 min");
    expect(words("figures/length", { time: at("0:01:39.2") })).toBe("2 min");
    expect(words("figures/length", { time: at("0:01:38.2") })).toBe("99 s");
    const planned = { low: at("0:00:45"), likely: (at("0:03:46") + 1) as Duration, high: at("1:00:01") };
    expect(words("learn/planned", planned)).toBe("Planned: 3 min 47 s likely, 45 s to 1 h 01 min");
    expect(words("learn/planned", { ...planned, likely: at("0:03:00") })).toContain("3 min likely");
    expect(words("timeline/later", { time: at("0:10:01") })).toBe("11 min later than planned");
    expect(words("timeline/earlier", { time: at("0:10:59") })).toBe("10 min earlier than planned");
    expect(words("what-if/tried-earlier", { finish: at("0:07:01"), by: -at("0:10:59") as Duration })).toBe(
      "Tried: finish 0:08 (10 min earlier)",
    );
  });

  it("[OFF8] a limit, and a time to turn back that has passed, go to the earlier minute", () => {
    expect(words("timeline/limit", { at: at("6:29:59") })).toBe("limit 6:29");
    expect(hourMinuteText(-at("0:05:30") as Duration)).toBe("-0:06");
    expect(clockText(-at("0:00:05") as Duration)).toBe("-0:00:05");
  });

  it("[OFF8] [PLN5] a chance is one text everywhere: down for what is wished for, up for harm, never certain", () => {
    const good = (share: number) => words("figures/chance", { share });
    expect([1, 0.995, 0.99, 0.989, 0.29, 0.01, 0.0099, 0].map(good)).toEqual([
      "> 99 %",
      "> 99 %",
      "99 %",
      "98 %",
      "29 %",
      "1 %",
      "< 1 %",
      "< 1 %",
    ]);
    expect(words("cli/risk-share", { name: "a", share: 0.071 })).toBe("a 8 %");
    expect(words("timeline/within-limit", { share: 0.9999 })).toBe("> 99 % within the limit");
  });

  test.prop([fc.integer({ min: -86_400_000, max: 86_400_000 })])(
    "[OFF8] what is shown is never on the flattering side, and less than a minute off",
    (time) => {
      const shown = (text: string) => {
        const sign = /^[-−]/.test(text) ? -1 : 1;
        const [, hours = "0", minutes = "0"] = /(\d+):(\d+)/.exec(text) ?? [];
        return sign * (Number(hours) * 60 + Number(minutes)) * 60_000;
      };
      const finish = shown(hourMinuteText(time as Duration, "up"));
      const limit = shown(hourMinuteText(time as Duration));
      expect(finish - time).toBeGreaterThanOrEqual(0);
      expect(finish - time).toBeLessThan(60_000);
      expect(time - limit).toBeGreaterThanOrEqual(0);
      expect(time - limit).toBeLessThan(60_000);
    },
  );
});
