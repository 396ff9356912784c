import type { Instant } from "../../core/units/index.ts";
import type { TetherlineDatabase } from "./database.ts";
import { DexieManuscriptShelf } from "./dexie-manuscript-shelf.ts";
import type { ManuscriptShelf } from "./manuscript-shelf.ts";
import { MemoryManuscriptShelf } from "./memory-manuscript-shelf.ts";

/** The manuscripts of a database; without one they last as long as the page. */
export function openManuscripts(database: TetherlineDatabase | null, now: () => Instant): ManuscriptShelf {
  return database ? new DexieManuscriptShelf(database, now) : new MemoryManuscriptShelf(now);
}
