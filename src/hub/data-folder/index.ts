export type { GuardedFolder } from "./guard-folder.ts";
export { guardFolder } from "./guard-folder.ts";
export { makeFolder } from "./make-folder.ts";
export { roomOf } from "./room-of.ts";
export { writeTextWhole, writeWhole } from "./write-whole.ts";
