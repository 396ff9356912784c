import type { Quantity } from "../core/quantity/index.ts";
import type { Duration, Instant } from "../core/units/index.ts";
import type { Argument, Message } from "./argument.ts";
import type { QuantityRange } from "./quantity-range.ts";

/** What each function of our own, and each of the standard, takes as its argument. */
interface FunctionArguments {
  readonly string: string;
  readonly integer: number;
  readonly number: number;
  readonly length: Duration;
  readonly margin: Duration;
  readonly advance: Duration;
  readonly finish: Duration;
  readonly chance: number;
  readonly clock: Duration;
  readonly "hour-minute": Duration;
  readonly pet: Duration;
  readonly utc: Instant;
  readonly quantity: Quantity;
  readonly range: QuantityRange;
  readonly metres: number;
  readonly mebibytes: number;
  readonly list: readonly Argument[];
  readonly clauses: readonly Argument[];
  readonly message: string | Message;
}

/** The insides of every placeholder of a variable: `crew`, `count :integer`. */
type Placeholders<
  Text extends string,
  Found extends string = never,
> = Text extends `${string}{$${infer Inside}}${infer Rest}` ? Placeholders<Rest, Found | Inside> : Found;

type NameOf<Inside extends string> = Inside extends `${infer Name} ${string}` ? Name : Inside;

type FunctionOf<Inside extends string> = Inside extends `${string} :${infer Called}`
  ? Called extends `${infer Name} ${string}`
    ? Name
    : Called
  : never;

/** The function that is given for a name anywhere in the text; `string` where none is. */
type FunctionFor<All extends string, Name extends string> = [
  FunctionOf<Extract<All, Name | `${Name} ${string}`>>,
] extends [never]
  ? "string"
  : FunctionOf<Extract<All, Name | `${Name} ${string}`>>;

type ArgumentOf<Called extends string> = Called extends keyof FunctionArguments
  ? FunctionArguments[Called]
  : { readonly unknownFunction: Called };

/** The arguments that a text of MessageFormat 2 takes, by name: read from its placeholders and `.input` declarations. */
export type ArgumentsIn<Text extends string> = {
  readonly [Name in NameOf<Placeholders<Text>>]: ArgumentOf<FunctionFor<Placeholders<Text>, Name>>;
};
