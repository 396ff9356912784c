import type { MessageFunction } from "messageformat/functions";

/** A number that is not one: a mistake of ours. */
export class NoNumberError extends Error {
  override readonly name = "NoNumberError";
}

/** The digits after the point that an option asks for; `fallback` where it does not. */
const digits = (option: unknown, fallback: number): number =>
  option === undefined ? fallback : Number(String(option));

/**
 * `:integer` and `:number` for a language: digits without grouping, as many as the number has unless
 * `minimumFractionDigits` and `maximumFractionDigits` say otherwise, and selection by the number itself, then by its
 * plural category. The standard's own make an `Intl` object at each use, which takes 30 times as long.
 */
export function numberFunctions(
  tag: string,
): Readonly<Record<"integer" | "number", MessageFunction<string>>> {
  const plural = new Intl.PluralRules(tag);
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
  const counted: MessageFunction<string> = (_, options, operand) => {
    const value = typeof operand === "object" && operand !== null ? operand.valueOf() : operand;
    if (typeof value !== "number") throw new NoNumberError(`${String(value)} is no number`);
    const most = digits(options["maximumFractionDigits"], MOST_DIGITS);
    const format = formatOf(digits(options["minimumFractionDigits"], 0), most);
    // Cut as `toFixed` does, by the exact value: `Intl` goes by the shortest decimal that stands for it.
    const text = () => format.format(most === MOST_DIGITS ? value : Number(value.toFixed(most)));
    return {
      type: "number",
      selectKey: (keys) => {
        if (keys.has(String(value))) return String(value);
        const category = plural.select(value);
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
