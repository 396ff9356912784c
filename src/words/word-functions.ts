import type { MessageFunction } from "messageformat/functions";
import type { Duration, Instant } from "../core/units/index.ts";
import { clockText, hourMinuteText, once } from "../core/units/index.ts";
import type { Argument, Message } from "./argument.ts";
import { chanceText } from "./chance-text.ts";
import type { Language } from "./language.ts";
import { lengthText, lengthToTheSecond, marginText } from "./length-text.ts";
import { message } from "./message.ts";
import { numberFunctions, numberText } from "./number-functions.ts";
import { quantityFunctions } from "./quantity-functions.ts";
import { shown } from "./shown.ts";
import { telling } from "./telling.ts";
import { utcText } from "./utc-text.ts";

/** Names with the same word between all of them: `A and B and C`. */
const chained = (format: Intl.ListFormat, names: readonly string[]): string =>
  names.length === 0 ? "" : names.reduce((before, name) => format.format([before, name]));

/** A PET to the minute, or to the second when it does not fall on a whole minute. */
const petText = (pet: Duration): string => (pet % 60_000 === 0 ? hourMinuteText(pet) : clockText(pet));

/** Keeps the direction of what it holds from turning the order of the words around it (Unicode Standard Annex 9). */
const isolated = (text: string): string => `\u2068${text}\u2069`;

type Functions = Readonly<Record<string, MessageFunction<string>>>;

const made = new WeakMap<Language, Functions>();

/**
 * The functions that messages of a language call, by name; what they make of `Intl` is made once, when it is first needed. `inWords` words a
 * message that stands in another as an argument.
 */
export function wordFunctions(language: Language, inWords: (message: Message) => string): Functions {
  const known = made.get(language);
  if (known) return known;
  const { tag, direction } = language;
  const all = once(() => new Intl.ListFormat(tag, { type: "conjunction" }));
  const any = once(() => new Intl.ListFormat(tag, { type: "disjunction" }));
  const number = numberText(tag);
  const oneOf = (argument: Argument): string => {
    if (typeof argument === "string") return argument;
    return typeof argument === "object" && "key" in argument ? inWords(argument) : String(argument);
  };
  const functions: Functions = {
    ...numberFunctions(tag),
    ...quantityFunctions(tag, inWords),
    length: shown((time, { form = "minute" }) =>
      String(form) === "second" ? lengthToTheSecond(time as Duration) : lengthText(time as Duration),
    ),
    margin: shown((time) => marginText(time as Duration)),
    advance: shown((time) => lengthText(time as Duration, "down")),
    finish: shown((time, { form = "minute" }) =>
      String(form) === "second" ? clockText(time as Duration, "up") : hourMinuteText(time as Duration, "up"),
    ),
    chance: shown((share, { of = "good" }) =>
      chanceText(Number(share), String(of) === "harm" ? "up" : "down"),
    ),
    clock: shown((time) => clockText(time as Duration)),
    "hour-minute": shown((time) => hourMinuteText(time as Duration)),
    pet: shown((time) => petText(time as Duration)),
    utc: shown((instant, { form = "minute" }) => utcText(instant as Instant, String(form), telling().utc)),
    mebibytes: shown((bytes) => `${number(Math.round(Number(bytes) / 1024 / 1024))} MiB`),
    list: shown((items, { of = "all", style = "comma" }) => {
      const format = (String(of) === "any" ? any : all)();
      const each = (items as readonly Argument[]).map(oneOf);
      const names = direction === "ltr" ? each : each.map(isolated);
      return String(style) === "chained" ? chained(format, names) : format.format(names);
    }),
    clauses: shown((items) =>
      (items as readonly Argument[]).map(oneOf).join(inWords(message("figures/between-clauses"))),
    ),
    message: shown((inner) => oneOf(inner as Argument)),
  };
  made.set(language, functions);
  return functions;
}
