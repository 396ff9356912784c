export type { OutsideFile } from "./outside-files.ts";
export { isOutside, keepOutside, outsideFile } from "./outside-files.ts";
