export { startLanguage } from "./app-language.ts";
export { LanguageField } from "./language-field.tsx";
export { Spoken } from "./spoken.tsx";
export { wholeLanguage } from "./spoken-language.ts";
export { UnitsField } from "./units-field.tsx";
export { startUnits } from "./units-in-force.ts";
