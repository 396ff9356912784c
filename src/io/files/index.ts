export { appendText, makeFolder, readText, writeBytes, writeText } from "./text-files.ts";
export type { FileTrouble } from "./unusable-file-error.ts";
export { UnusableFileError } from "./unusable-file-error.ts";
export { watchFiles } from "./watch-files.ts";
