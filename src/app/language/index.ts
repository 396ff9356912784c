export { startLanguage } from "./app-language.ts";
export { LanguageField } from "./language-field.tsx";
export { Spoken } from "./spoken.tsx";
export { spokenTag, wholeLanguage } from "./spoken-language.ts";
export { UnitsField } from "./units-field.tsx";
export { startUnits } from "./units-in-force.ts";
export { UtcField } from "./utc-field.tsx";
export { startUtc, utcInForce } from "./utc-in-force.ts";
