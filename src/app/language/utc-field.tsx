import { UTC_STYLES, words } from "../../words/index.ts";
import { ChoiceField } from "./choice-field.tsx";
import { chooseUtc, utcInForce } from "./utc-in-force.ts";

/** A field for choosing how instants of UTC are told ([WRD6]). */
export function UtcField() {
  return (
    <ChoiceField
      name="utc"
      label={words("parts/utc")}
      choices={UTC_STYLES.map((id) => ({ id, name: words(`parts/utc-${id}`) }))}
      value={utcInForce()}
      onChoose={async (style) => chooseUtc(style)}
    />
  );
}
