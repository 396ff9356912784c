import { words } from "../../words/index.ts";
import { ChoiceField } from "./choice-field.tsx";
import { chooseUnits, UNIT_CHOICES, unitsInForce } from "./units-in-force.ts";

/** A field for choosing the units in which quantities are shown beside those as written ([WRD5]). */
export function UnitsField() {
  return (
    <ChoiceField
      name="units"
      label={words("parts/units")}
      choices={UNIT_CHOICES.map((id) => ({ id, name: words(`parts/units-${id}`) }))}
      value={unitsInForce()}
      onChoose={chooseUnits}
    />
  );
}
