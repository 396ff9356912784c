export type { GivenFile } from "./given-file.ts";
export { readGivenFiles, readTransfer } from "./given-file.ts";
export { pickFiles } from "./pick-files.ts";
export type { SavedText } from "./save-text.ts";
export { saveText } from "./save-text.ts";
