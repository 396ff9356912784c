export type { Argument, Message, MessageKey } from "./argument.ts";
export type { MarkedWords } from "./in-words.ts";
export { inMarkedWords, inWords, UnspeakableError, words } from "./in-words.ts";
export type { Language } from "./language.ts";
export { languageInUse, NoLanguageError, speak } from "./language-in-use.ts";
export { english } from "./languages.ts";
export type { ArgumentsAfter, MessageArguments } from "./message.ts";
export { message } from "./message.ts";
