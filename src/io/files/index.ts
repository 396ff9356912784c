export type { ReadTextParts } from "./text-files.ts";
export { MOST_BYTES, readText, STANDARD_INPUT, writeText } from "./text-files.ts";
export type { FileTrouble } from "./unusable-file-error.ts";
export { UnusableFileError } from "./unusable-file-error.ts";
