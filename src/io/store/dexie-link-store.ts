import type { Cursor, Settled } from "../../core/link/index.ts";
import type { ClockOffset, Entry } from "../../core/log/index.ts";
import { deviceOf } from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import type { EntryRow } from "./database.ts";
import type { DexieRows } from "./dexie-rows.ts";
import { watched } from "./dexie-rows.ts";
import type { LinkChange } from "./link-changes.ts";
import {
  aheadBy,
  clockChange,
  isAheadOf,
  isOtherStore,
  isResent,
  settleChange,
  takeInChange,
  unlinkedRow,
} from "./link-changes.ts";
import type { AsideEntry, Joining, LinkRow } from "./link-row.ts";
import { joinedRow } from "./link-row.ts";
import type { Changed, LinkStore, Outbox } from "./link-store.ts";
import { NotLinkedError } from "./link-store.ts";
import type { WalkRow } from "./walk-row.ts";
import { rebuiltRow, withEntries } from "./walk-row.ts";

const TABLES = ["entries", "walks", "links", "aside"] as const;

/** The links of walks in IndexedDB. */
export class DexieLinkStore implements LinkStore {
  readonly #rows: DexieRows;
  readonly #now: () => Instant;

  constructor(rows: DexieRows, now: () => Instant) {
    this.#rows = rows;
    this.#now = now;
  }

  all(): Promise<readonly LinkRow[]> {
    return this.#links.toArray();
  }

  async get(walk: WalkId): Promise<LinkRow | null> {
    return (await this.#links.get(walk)) ?? null;
  }

  watch(onChange: () => void): () => void {
    return watched(() => this.#links.toArray(), onChange);
  }

  join(joining: Joining): Promise<LinkRow> {
    return this.#rows.write(["links"], async () => {
      const row = joinedRow(await this.get(joining.walk), joining);
      await this.#links.put(row);
      return row;
    });
  }

  leave(walk: WalkId): Promise<void> {
    return this.#rows.write(["links", "walks"], async () => {
      await this.#links.delete(walk);
      const { ahead, ...row } = await this.#rows.rowOf(walk);
      if (ahead !== undefined) await this.#rows.database.walks.put(row);
    });
  }

  change(walk: WalkId, change: (row: LinkRow) => LinkRow): Promise<void> {
    return this.#rows.write(["links"], async () => {
      const row = await this.#links.get(walk);
      if (row) await this.#links.put(change(row));
    });
  }

  async outbox(walk: WalkId, limit: number): Promise<Outbox> {
    return this.#read(async () => {
      const link = await this.#links.get(walk);
      if (!link) return { entries: [], round: 0 };
      const kept = await this.#rows.firstOf(walk, link.pushed, limit, isOf(link));
      return { entries: kept.map(({ entry }) => entry), round: link.round ?? 0 };
    });
  }

  async unsent(walk: WalkId): Promise<number> {
    return this.#read(async () => {
      const link = await this.#links.get(walk);
      return link ? this.#rows.countOf(walk, link.pushed, isOf(link)) : 0;
    });
  }

  settle(walk: WalkId, settled: readonly Settled[], round: number): Promise<Changed> {
    return this.#rows.write(TABLES, async () => {
      const [link, row] = await Promise.all([this.#linkOf(walk), this.#rows.rowOf(walk)]);
      const [here, waiting] = await Promise.all([
        this.#rows.finder(
          walk,
          settled.map(({ entry }) => entry),
        ),
        this.#rows.firstOf(walk, link.pushed, settled.length + 1, isOf(link)),
      ]);
      const isAhead = settled.some(({ result }) => "reason" in result && result.reason === "ahead");
      const all = isAhead ? await this.#rows.entriesOf(walk) : [];
      return this.#apply(row, settleChange(this.#view(link, row), settled, round, here, waiting, all));
    });
  }

  takeIn(walk: WalkId, entries: readonly Entry[], cursor: Cursor): Promise<Changed> {
    return this.#rows.write(TABLES, async () => {
      const [link, row, head, here] = await Promise.all([
        this.#linkOf(walk),
        this.#rows.rowOf(walk),
        this.#rows.head(walk),
        this.#rows.finder(walk, entries),
      ]);
      const isAllSent =
        head <= link.pushed || (await this.#rows.countOf(walk, link.pushed, isOf(link))) === 0;
      const all = isOtherStore(link, cursor) ? await this.#rows.entriesOf(walk) : [];
      return this.#apply(row, takeInChange(this.#view(link, row), entries, cursor, here, isAllSent, all));
    });
  }

  setClock(walk: WalkId, clock: ClockOffset, scope: "own" | "every"): Promise<Changed> {
    return this.#rows.write(TABLES, async () => {
      const [kept, before] = await Promise.all([this.#links.get(walk), this.#rows.rowOf(walk)]);
      if (!kept && scope === "own") throw new NotLinkedError(walk);
      const link = kept ?? unlinkedRow(walk);
      const row: WalkRow = { ...before, ahead: aheadBy(clock) };
      const view = this.#view(link, row);
      const hasAhead = await this.#rows.countOf(walk, link.pushed, ({ wire }) => isAheadOf(view, wire.hlc));
      const all = hasAhead > 0 ? await this.#rows.entriesOf(walk) : [];
      const change = clockChange(view, clock, all, scope);
      return this.#apply(row, kept ? change : { ...change, link: null }, row.ahead !== before.ahead);
    });
  }

  aside(walk: WalkId): Promise<readonly AsideEntry[]> {
    return this.#rows.database.aside.where("walk").equals(walk).sortBy("number");
  }

  get #links() {
    return this.#rows.database.links;
  }

  #read<Result>(work: () => Promise<Result>): Promise<Result> {
    const { entries, links } = this.#rows.database;
    return this.#rows.database.transaction("r", [entries, links], work);
  }

  async #linkOf(walk: WalkId): Promise<LinkRow> {
    const link = await this.#links.get(walk);
    if (!link) throw new NotLinkedError(walk);
    return link;
  }

  #view(link: LinkRow, row: WalkRow) {
    return { link, row, source: this.#rows.source, now: this.#now() };
  }

  async #apply(before: WalkRow, change: LinkChange, isNewRow = false): Promise<Changed> {
    const { entries, walks, links, aside } = this.#rows.database;
    const { walk } = before;
    if (change.remove.length > 0) await entries.bulkDelete(change.remove.map(({ offset }) => offset));
    const last = change.add.length > 0 ? await entries.bulkAdd(change.add.map(({ wire }) => ({ wire }))) : 0;
    if (change.queue.length > 0) await entries.bulkAdd(change.queue.map(({ wire }) => ({ wire })));
    if (change.aside.length > 0) await aside.bulkAdd([...change.aside]);
    const added = [...change.add, ...change.queue];
    const row =
      change.remove.length > 0
        ? rebuiltRow(
            before,
            (await this.#rows.entriesOf(walk)).map(({ entry }) => entry),
            this.#rows.source,
          )
        : withEntries(before, added, this.#rows.source);
    // A change of the row is what readers of the walk are told by.
    if (added.length > 0 || change.remove.length > 0 || isNewRow) await walks.put(row);
    if (change.link) {
      const { link } = change;
      await links.put({ ...link, pushed: change.pushed ?? Math.max(link.pushed, last) });
    }
    return {
      added,
      removed: change.remove.map(({ entry }) => entry),
      isResent: isResent(change),
    };
  }
}

function isOf({ device }: LinkRow): (row: EntryRow) => boolean {
  return ({ wire }) => deviceOf(wire.source) === device;
}
