export type { GivenFile } from "./given-file.ts";
export { readGivenFiles, readTransfer } from "./given-file.ts";
export { pickFiles } from "./pick-files.ts";
export type { SavedFile } from "./save-file.ts";
export { saveFile } from "./save-file.ts";
