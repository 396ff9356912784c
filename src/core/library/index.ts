export type { KeptRevision, Library, LibraryProcedure, RevisionsApart } from "./library.ts";
export { libraryOf } from "./library.ts";
export { LIBRARY } from "./library-log.ts";
export { revisionHash } from "./revision-hash.ts";
