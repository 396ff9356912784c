export type { GuardedFolder } from "./guard-folder.ts";
export { guardFolder } from "./guard-folder.ts";
export { makeFolder } from "./make-folder.ts";
export { writeTextWhole, writeWhole } from "./write-whole.ts";
