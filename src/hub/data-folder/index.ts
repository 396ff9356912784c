export { makeFolder } from "./make-folder.ts";
