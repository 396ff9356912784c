export type { Argument, Message, MessageKey } from "./argument.ts";
export type { MarkedWords } from "./in-words.ts";
export { inMarkedWords, inWords, words } from "./in-words.ts";
export type { Language } from "./language.ts";
export type { Catalogue } from "./language-in-use.ts";
export { addWords, speak } from "./language-in-use.ts";
export { lengthText } from "./length-text.ts";
export type { ArgumentsAfter, MessageArguments } from "./message.ts";
export { message } from "./message.ts";
