export { startLanguage, wholeLanguage } from "./app-language.ts";
