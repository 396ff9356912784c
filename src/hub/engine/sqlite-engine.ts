import type { Entry } from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import { Listeners } from "../../core/units/index.ts";
import { message } from "../../words/index.ts";
import type { AppendOptions, AppendOutcome, Engine, StoredEntry } from "./engine.ts";
import { EngineTroubleError } from "./engine.ts";
import { withSecrets } from "./secret-keep.ts";
import { backUp } from "./sqlite-backup.ts";
import { sqliteEntries } from "./sqlite-entries.ts";
import { sqliteKeep } from "./sqlite-keep.ts";
import { openDatabase } from "./sqlite-opening.ts";
import { troubleOf, withTrouble } from "./sqlite-trouble.ts";

/** One call of `append` that waits for its commit. */
interface Waiting {
  readonly walk: WalkId;
  readonly entries: readonly Entry[];
  readonly options: AppendOptions;
  readonly resolve: (outcomes: readonly AppendOutcome[]) => void;
  readonly reject: (cause: unknown) => void;
}

/** What a transaction wrote. */
interface Written {
  readonly outcomes: readonly (readonly AppendOutcome[])[];
  readonly told: ReadonlyMap<WalkId, readonly StoredEntry[]>;
}

/** Far below what SQLite can keep, and above what any limit of entries lets in. */
const LONGEST_TEXT = 64 * 1024 * 1024;
/** How often it is looked whether the write-ahead file is to be brought into the main file, in ms. */
const SETTLED_EVERY = 5_000;

/**
 * The log of a hub in one SQLite file of a data folder, for one process. What is confirmed is on the disk (write-ahead
 * log, `synchronous = FULL`). Offsets count within each walk, so that they say nothing of others. Throws
 * {@link EngineTroubleError} when the log cannot be had whole and written.
 */
export function openSqliteEngine(folder: string, now: () => Instant): Engine {
  const open = openDatabase(folder);
  const { database, file } = open;
  const entries = sqliteEntries(database);
  const appended = new Listeners<[walk: WalkId, kept: readonly StoredEntry[]]>();
  const epochs = new Listeners();
  let isClosed = false;

  const ask = async <T>(work: () => T): Promise<T> => {
    if (isClosed) throw new EngineTroubleError(message("engine/file-closed", { file }));
    return withTrouble(file, work);
  };
  const { keep: small, put, tell: tellKeep } = sqliteKeep(database, ask);
  const keep = withSecrets(small, open.secrets, ask);

  let waiting: Waiting[] = [];

  const write = database.transaction((group: readonly Waiting[]): Written => {
    const told = new Map<WalkId, StoredEntry[]>();
    const received = now();
    const outcomes = group.map(({ walk, entries: offered, options }) => {
      const inOrder = offered.map((entry) => {
        const { outcome, kept } = entries.add(walk, entry, received, options.via ?? null);
        if (kept) {
          const ofWalk = told.get(walk);
          if (ofWalk) ofWalk.push(kept);
          else told.set(walk, [kept]);
        }
        return outcome;
      });
      for (const [key, value] of options.alsoKeep ?? []) put(key, value);
      return inOrder;
    });
    return { outcomes, told };
  });

  /** Commits what waits together: the disk is waited for once, however many ask at the same time. */
  const commit = (group: readonly Waiting[]): void => {
    let written: Written;
    try {
      written = write.immediate(group);
    } catch (cause) {
      // One call that cannot be written must not make the others fail, so each is committed separately.
      if (group.length > 1) for (const one of group) commit([one]);
      else for (const { reject } of group) reject(troubleOf(file, cause));
      return;
    }
    for (const [index, { resolve }] of group.entries()) resolve(written.outcomes[index] ?? []);
    for (const [walk, kept] of written.told) appended.tell(walk, kept);
    for (const { options } of group) for (const [key, value] of options.alsoKeep ?? []) tellKeep(key, value);
  };

  const commitWaiting = (): void => {
    const group = waiting;
    waiting = [];
    if (group.length === 0) return;
    commit(group);
    settle();
  };

  const settle = (): void => {
    try {
      if (!isClosed) open.settle();
    } catch {
      // Everything is in the write-ahead file; it is tried again with the next commit.
    }
  };
  // Small values grow the write-ahead file too.
  const settling = setInterval(settle, SETTLED_EVERY).unref();

  return {
    kind: "sqlite",
    get epoch() {
      return open.epoch;
    },
    findings: open.findings,
    caution: null,
    checkAt: (walk, offset) => ask(() => entries.checkAt(walk, offset)),
    beginEpoch: () =>
      ask(() => {
        open.beginEpoch();
        epochs.tell();
      }),
    onEpoch: epochs.add,
    backup: (to) => ask(() => backUp(database, to)).then((done) => done),
    append: (walk, offered, options = {}) =>
      new Promise((resolve, reject) => {
        if (isClosed) {
          reject(new EngineTroubleError(message("engine/file-closed", { file })));
          return;
        }
        if (waiting.length === 0) setImmediate(commitWaiting);
        waiting.push({ walk, entries: offered, options, resolve, reject });
      }),
    compare: (walk, offered) => ask(() => offered.map((entry) => entries.compare(walk, entry))),
    longestText: LONGEST_TEXT,
    lengthOf: (walk, device) => ask(() => entries.lengthOf(walk, device)),
    cameThrough: (walk, device) => ask(() => entries.cameThrough(walk, device)),
    sequencesOf: (walk, source) => ask(() => entries.sequencesOf(walk, source)),
    read: (walk, after, limit) => ask(() => entries.read(walk, after, limit)),
    head: (walk) => ask(() => entries.head(walk)),
    behind: (walk, after) => ask(() => entries.behind(walk, after)),
    walks: () => ask(() => entries.walks()),
    follow: (onAppended) => appended.add(onAppended),
    keepRefused: (walk, refused) => ask(() => entries.keepRefused(walk, refused)),
    refused: (walk, limit) => ask(() => entries.refused(walk, limit)),
    keep,
    // There is no other hub on this file.
    whisper: () => {},
    onWhisper: () => () => {},
    close: async () => {
      if (isClosed) return;
      commitWaiting();
      isClosed = true;
      clearInterval(settling);
      open.close();
    },
  };
}
