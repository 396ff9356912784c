import type { MessageFunction } from "messageformat/functions";
import type { Figure, Quantity } from "../core/quantity/index.ts";
import type { Message } from "./argument.ts";
import { message } from "./message.ts";
import { NoNumberError, numberText } from "./number-functions.ts";
import type { QuantityRange } from "./quantity-range.ts";
import { shown } from "./shown.ts";
import { telling } from "./telling.ts";
import { unitText } from "./unit-text.ts";

/** A share of a decimetre that is no more than what reckoning leaves. */
const NOISE = 1e-6;

/** Which side the option `round` has a length go to: in metres, which are told to the decimetre, and converted, as a limit of that kind. */
const ROUNDINGS: Readonly<
  Record<string, { readonly whole: (decimetres: number) => number; readonly limit?: "min" | "max" }>
> = {
  nearest: { whole: Math.round },
  down: { whole: (decimetres) => Math.floor(decimetres + NOISE), limit: "max" },
  up: { whole: (decimetres) => Math.ceil(decimetres - NOISE), limit: "min" },
};

/** A way of rounding that there is not: a mistake of ours. */
export class NoSuchRoundingError extends Error {
  override readonly name = "NoSuchRoundingError";
}

/**
 * `:quantity`, `:range` and `:metres` for a language: what was written, with the figure in the reader's units behind it ([WRD5]). With
 * `form=short` metres are told in the reader's units alone, and `round` says to which side these go.
 */
export function quantityFunctions(
  tag: string,
  inWords: (message: Message) => string,
): Readonly<Record<"quantity" | "range" | "metres", MessageFunction<string>>> {
  const number = numberText(tag);
  const withUnit = (text: string, unit: string) => [text, unitText(unit)].filter(Boolean).join(" ");
  const written = ({ value, unit }: Quantity) => {
    if (typeof value !== "number") throw new NoNumberError(`${String(value)} is no number`);
    return withUnit(number(value), unit);
  };
  const figure = ({ value, decimals }: Figure) => number(value, decimals, decimals);
  const converted = (of: Figure) => withUnit(figure(of), of.unit);
  const both = (first: string, other: string | null) =>
    other === null ? first : inWords(message("figures/both", { written: first, converted: other }));
  const range = (least: string, most: string) => inWords(message("figures/range", { least, most }));
  return {
    quantity: shown((input) => {
      const quantity = input as Quantity;
      const figure = telling().inReadersUnits(quantity);
      return both(written(quantity), figure && converted(figure));
    }),
    range: shown((input) => {
      const { least, most } = input as QuantityRange;
      const [from, to] = [telling().inReadersUnits(least), telling().inReadersUnits(most)];
      return both(
        range(number(least.value), written(most)),
        from && to && range(figure(from), converted(to)),
      );
    }),
    metres: shown((input, { form = "both", round = "nearest" }) => {
      const rounding = ROUNDINGS[String(round)];
      if (!rounding) throw new NoSuchRoundingError(`${String(round)} is no way of rounding`);
      const { whole, limit } = rounding;
      const value = whole(Number(input) * 10) / 10 + 0;
      const quantity: Quantity = limit ? { value, unit: "m", limit } : { value, unit: "m" };
      const figure = telling().inReadersUnits(quantity);
      if (figure && String(form) === "short") return converted(figure);
      // Metres have the digits of the log in every language.
      return both(`${quantity.value} m`, figure && converted(figure));
    }),
  };
}
