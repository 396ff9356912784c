import { message } from "../../words/index.ts";
import type { ElementSet, OrbitProblem, ReadOrbit } from "./element-set.ts";
import { rangeProblems, refusedOrbit } from "./element-set.ts";
import { splitEpoch } from "./orbit-epoch.ts";

/** Patterns for the whole part of a number in three columns and in two, with blanks allowed only in front. */
const THREE = "(?:\\d{3}| \\d{2}| {2}\\d| {3})";
const TWO = "(?:\\d{2}| \\d| {2})";
const OBJECT = "([0-9A-HJ-NP-Z ][0-9 ]{4})";
const POWER = "([ +-][ \\d]{5}[+-]\\d)";
const ANGLE = `(${THREE}\\.\\d{4})`;

/** The column layouts of the two lines (Kelso, "Frequently asked questions: two-line element set format"). */
const LINE_1 = new RegExp(
  `^1 ${OBJECT}([UCS ]) (.{8}) (\\d{2})(${THREE}\\.\\d{8}) ([ +-]\\.\\d{8}) ${POWER} ${POWER} ([ \\d]) ([ \\d]{4})(\\d)$`,
);
const LINE_2 = new RegExp(
  `^2 ${OBJECT} ${ANGLE} ${ANGLE} ([ \\d]{7}) ${ANGLE} ${ANGLE} (${TWO}\\.\\d{8})([ \\d]{5})(\\d)$`,
);

const LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";
const DAY = 86_400_000;
const NEWEST_OLD_YEAR = 57;

/** The checksum of a line: the sum of its digits, with each minus sign counting as one, modulo 10. */
export function tleChecksum(line: string): number {
  let sum = 0;
  for (const sign of line.slice(0, 68)) {
    if (sign >= "0" && sign <= "9") sum += Number(sign);
    else if (sign === "-") sum += 1;
  }
  return sum % 10;
}

/**
 * An object number as written in five columns, including Alpha-5 (A = 10 … Z = 33, without I and O). Returns `null`
 * when the text is not one.
 */
export function objectNumber(text: string): number | null {
  const trimmed = text.trim();
  if (/^\d{1,5}$/.test(trimmed)) return Number(trimmed);
  if (!/^[A-HJ-NP-Z]\d{4}$/.test(trimmed)) return null;
  return (10 + LETTERS.indexOf(trimmed[0] ?? "")) * 10_000 + Number(trimmed.slice(1));
}

/** Reads a number with an assumed decimal point and a power of ten: ` 12345-3` is 0.12345e-3. */
function assumedPoint(text: string): number {
  const sign = text.startsWith("-") ? -1 : 1;
  return sign * Number(`0.${text.slice(1, 6).replaceAll(" ", "0")}e${text.slice(6)}`);
}

function lineProblems(line: string, number: 1 | 2, pattern: RegExp): OrbitProblem[] {
  const field = message("orbit/line", { line: number });
  if (line.length !== 69) return [{ field, reason: message("orbit/line-length", { count: line.length }) }];
  const problems: OrbitProblem[] = [];
  if (!pattern.test(line)) problems.push({ field, reason: message("orbit/line-columns") });
  const checksum = tleChecksum(line);
  if (String(checksum) !== line[68]) {
    problems.push({
      field,
      reason: message("orbit/line-checksum", { written: String(line[68]), sum: checksum }),
    });
  }
  return problems;
}

/** Reads a two-line element set, with or without a name in a line above it. */
export function readTle(text: string): ReadOrbit {
  const lines = text
    .split(/\r?\n/)
    .map((line) => line.trimEnd())
    .filter((line) => line !== "");
  const name = lines.length === 3 ? (lines[0] ?? "").replace(/^0 /, "").trim() : null;
  const [first, second] = lines.slice(-2);
  if (lines.length < 2 || lines.length > 3 || first === undefined || second === undefined) {
    return refusedOrbit([{ field: message("orbit/file"), reason: message("orbit/two-lines") }]);
  }
  const problems = [...lineProblems(first, 1, LINE_1), ...lineProblems(second, 2, LINE_2)];
  const [one, two] = [LINE_1.exec(first), LINE_2.exec(second)];
  if (problems.length > 0 || !one || !two) return refusedOrbit(problems);
  const [object, other] = [objectNumber(one[1] ?? ""), objectNumber(two[1] ?? "")];
  if (object === null || object !== other) {
    return refusedOrbit([
      {
        field: "NORAD_CAT_ID",
        reason: message("orbit/two-objects", { one: String(one[1]), two: String(two[1]) }),
      },
    ]);
  }
  const short = Number(one[4]);
  const year = short < NEWEST_OLD_YEAR ? 2000 + short : 1900 + short;
  const day = Number(one[5]);
  const [date, millis] = [Date.UTC(year, 0, 1), (day - 1) * DAY];
  if (day < 1 || new Date(date + millis).getUTCFullYear() !== year) {
    return refusedOrbit([{ field: "EPOCH", reason: message("orbit/no-such-day", { day, year }) }]);
  }
  // The day has eight decimals, 0.864 ms. Anything finer than a microsecond is rounding error of the division.
  const epoch = splitEpoch(date, Math.round(millis * 1000) / 1000);
  const elements: ElementSet = {
    name,
    object,
    designator: (one[3] ?? "").trim(),
    ...epoch,
    meanMotion: Number(two[7]),
    eccentricity: Number(`0.${(two[4] ?? "").replaceAll(" ", "0")}`),
    inclination: Number(two[2]),
    ascendingNode: Number(two[3]),
    argumentOfPericenter: Number(two[5]),
    meanAnomaly: Number(two[6]),
    dragTerm: assumedPoint(one[8] ?? ""),
    meanMotionDot: Number((one[6] ?? "").replaceAll(" ", "")),
    meanMotionDdot: assumedPoint(one[7] ?? ""),
    form: "TLE",
  };
  const outOfRange = rangeProblems(elements);
  return outOfRange.length > 0 ? refusedOrbit(outOfRange) : { elements, problems: [] };
}
