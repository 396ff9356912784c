import { LanguageField, UnitsField, UtcField } from "../language/index.ts";
import { ThemeField } from "../parts/index.ts";

/** What a reader may choose of how things are told, on this device: the language, the colours, the units, the style of UTC. */
export function ReaderChoices({ id }: { readonly id: string }) {
  return (
    <div id={id} className="shelf-choices">
      <LanguageField />
      <ThemeField />
      <UnitsField />
      <UtcField />
    </div>
  );
}
