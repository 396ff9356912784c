import { inSystem, SYSTEMS } from "../core/quantity/index.ts";
import { showUnits, showUtc, UTC_STYLES, words } from "../words/index.ts";
import { givenFor } from "./given-for.ts";
import { UnusableInputError } from "./unusable-input-error.ts";

/**
 * Tells things in the units that `--units` and in the style of UTC that `--utc` asks for, wherever they stand; as written and with dates
 * where they are missing. Throws {@link UnusableInputError} where there are none such.
 */
export function tellAsAsked(args: readonly string[]): void {
  const units = givenFor("--units", args);
  const system = SYSTEMS.find((one) => one === units);
  if (units !== null && !system) throw new UnusableInputError(words("cli/no-units", { units }));
  showUnits(system ? (quantity) => inSystem(quantity, system) : null);
  const utc = givenFor("--utc", args);
  const style = UTC_STYLES.find((one) => one === (utc ?? "plain"));
  if (!style) throw new UnusableInputError(words("cli/no-utc", { utc: utc ?? "" }));
  showUtc(style);
}
