import { inSystem, SYSTEMS } from "../core/quantity/index.ts";
import { showUnits, words } from "../words/index.ts";
import { givenFor } from "./given-for.ts";
import { UnusableInputError } from "./unusable-input-error.ts";

/** Shows the units that `--units` asks for, wherever it stands; those as written where it is missing. Throws {@link UnusableInputError} where there are none such. */
export function tellAsAsked(args: readonly string[]): void {
  const units = givenFor("--units", args);
  const system = SYSTEMS.find((one) => one === units);
  if (units !== null && !system) throw new UnusableInputError(words("cli/no-units", { units }));
  showUnits(system ? (quantity) => inSystem(quantity, system) : null);
}
