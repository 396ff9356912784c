import { LanguageField, UnitsField, UtcField } from "../language/index.ts";
import { ThemeField } from "../parts/index.ts";

/** The id of the choices, for the button that shows them. */
export const CHOICES = "reader-choices";

/** What a reader may choose of how things are told, on this device: the language, the colours, the units, the style of UTC. */
export function ReaderChoices() {
  return (
    <div id={CHOICES} className="shelf-choices">
      <LanguageField />
      <ThemeField />
      <UnitsField />
      <UtcField />
    </div>
  );
}
