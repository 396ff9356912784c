import type { MessageFunction } from "messageformat/functions";
import { once } from "../core/units/index.ts";

/** A number that is not one: a mistake of ours. */
export class NoNumberError extends Error {
  override readonly name = "NoNumberError";
}

/** The digits after the point that an option asks for; `fallback` where it does not. */
const digits = (option: unknown, fallback: number): number =>
  option === undefined ? fallback : Number(String(option));

/**
 * Words a number in a language: digits without grouping, as many after the point as it has unless `least` and `most` say otherwise. The
 * standard's own functions make an `Intl` object at each use, which takes 30 times as long.
 */
export function numberText(tag: string): (value: number, least?: number, most?: number) => string {
  const formats = new Map<string, Intl.NumberFormat>();
  const formatOf = (least: number, most: number) => {
    const kept =
      formats.get(`${least} ${most}`) ??
      new Intl.NumberFormat(tag, {
        useGrouping: false,
        minimumFractionDigits: least,
        maximumFractionDigits: most,
      });
    formats.set(`${least} ${most}`, kept);
    return kept;
  };
  return (value, least = 0, most = MOST_DIGITS) => {
    // A count has the same digits in each of our languages; making what words all others takes as long as drawing a page of text.
    if (least === 0 && Number.isSafeInteger(value) && value >= 0) return String(value + 0);
    // Cut as `toFixed` does, by the exact value: `Intl` goes by the shortest decimal that stands for it.
    return formatOf(least, most).format(most === MOST_DIGITS ? value : Number(value.toFixed(most)));
  };
}

/**
 * `:integer` and `:number` for a language: {@link numberText} with the digits of `minimumFractionDigits` and `maximumFractionDigits`, and
 * selection by the number itself, then by its plural category.
 */
export function numberFunctions(
  tag: string,
): Readonly<Record<"integer" | "number", MessageFunction<string>>> {
  const plural = once(() => new Intl.PluralRules(tag));
  const worded = numberText(tag);
  const counted: MessageFunction<string> = (_, options, operand) => {
    const value = typeof operand === "object" && operand !== null ? operand.valueOf() : operand;
    if (typeof value !== "number") throw new NoNumberError(`${String(value)} is no number`);
    const least = digits(options["minimumFractionDigits"], 0);
    const text = () => worded(value, least, digits(options["maximumFractionDigits"], MOST_DIGITS));
    return {
      type: "number",
      selectKey: (keys) => {
        if (keys.has(String(value))) return String(value);
        const category = plural().select(value);
        return keys.has(category) ? category : null;
      },
      toString: text,
      toParts: () => [{ type: "shown", value: text() }],
      valueOf: () => value,
    };
  };
  return { integer: counted, number: counted };
}

/** As many digits as any number of ours has. */
const MOST_DIGITS = 20;
