export type { GivenBytes, GivenFile } from "./given-file.ts";
export { readGivenBytes, readGivenFiles, readTransfer } from "./given-file.ts";
export { pickFiles, pickPictures } from "./pick-files.ts";
export type { SavedFile } from "./save-file.ts";
export { saveFile } from "./save-file.ts";
