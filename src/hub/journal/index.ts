export type { Journal, JournalEvent } from "./journal.ts";
export { JournalTroubleError, NO_JOURNAL, openJournal } from "./journal.ts";
