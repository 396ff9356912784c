import type { Cursor, Settled } from "../../core/link/index.ts";
import type { ClockOffset, Entry } from "../../core/log/index.ts";
import { appliedOffset, deviceOf } from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import type { EntryRow } from "./database.ts";
import type { DexieRows } from "./dexie-rows.ts";
import { watched } from "./dexie-rows.ts";
import { type FindPen, NO_PEN, penFor } from "./find-pen.ts";
import type { LinkChange, LinkView } from "./link-change.ts";
import { isAheadOf, isOtherStore, isResent, sealedFirst, unlinkedRow } from "./link-change.ts";
import type { AsideEntry, LinkRow, NewLink } from "./link-row.ts";
import { joinedRow } from "./link-row.ts";
import type { Changed, LinkStore, Outbox } from "./link-store.ts";
import { insistOnRead, linkChanges, NotLinkedError } from "./link-store.ts";
import type { SealPen } from "./seal-pen.ts";
import type { WalkSummary } from "./walk-summary.ts";
import { rebuiltSummary, untied, withChained, withEntries } from "./walk-summary.ts";

const TABLES = ["entries", "walks", "links", "aside"] as const;

/** The links of walks in IndexedDB. */
export class DexieLinkStore implements LinkStore {
  readonly #rows: DexieRows;
  readonly #now: () => Instant;
  readonly #findPen: FindPen;

  constructor(rows: DexieRows, now: () => Instant, findPen: FindPen = NO_PEN) {
    this.#rows = rows;
    this.#now = now;
    this.#findPen = findPen;
  }

  all(): Promise<readonly LinkRow[]> {
    return this.#rows.allLinks();
  }

  get(walk: WalkId): Promise<LinkRow | null> {
    return this.#rows.read(["links"], () => this.#rows.linkOf(walk));
  }

  watch(onChange: () => void): () => void {
    return watched(() => this.#links.toArray(), onChange);
  }

  join(joining: NewLink): Promise<LinkRow> {
    return this.#rows.write(["links", "walks"], async () => {
      const row = joinedRow(await this.#rows.linkOf(joining.walk), joining);
      await this.#rows.putTied(row);
      return row;
    });
  }

  leave(walk: WalkId): Promise<void> {
    return this.#rows.write(["links", "walks"], async () => {
      await this.#links.delete(walk);
      const { clockOffset, ...summary } = await this.#rows.summaryOf(walk);
      if (clockOffset !== undefined || summary.tied !== undefined)
        await this.#rows.putSummary(untied(summary));
    });
  }

  change(walk: WalkId, change: (row: LinkRow) => LinkRow): Promise<void> {
    return this.#rows.write(["links", "walks"], async () => {
      const row = await this.#rows.linkOf(walk);
      if (row) await this.#rows.putTied(change(row));
    });
  }

  async outbox(walk: WalkId, limit: number): Promise<Outbox> {
    return this.#rows.read(["entries", "links", "walks"], async () => {
      const [link, summary] = await Promise.all([this.#rows.linkOf(walk), this.#rows.summaryOf(walk)]);
      if (!link) return { entries: [], round: 0 };
      const kept = await this.#rows.firstOf(walk, link.pushed, limit, isOf(link));
      return { entries: sealedFirst(kept, summary), round: link.round ?? 0 };
    });
  }

  async unsent(walk: WalkId): Promise<number> {
    return this.#read(async () => {
      const link = await this.#rows.linkOf(walk);
      return link ? this.#rows.countOf(walk, link.pushed, isOf(link)) : 0;
    });
  }

  async settle(walk: WalkId, settled: readonly Settled[], round: number): Promise<Changed> {
    const { settleChange } = await linkChanges();
    return this.#rows.write(TABLES, async () => {
      const [link, summary] = await Promise.all([this.#linkOf(walk), this.#rows.summaryOf(walk)]);
      const [find, waiting] = await Promise.all([
        this.#rows.finder(
          walk,
          settled.map(({ entry }) => entry),
        ),
        this.#rows.firstOf(walk, link.pushed, settled.length + 1, isOf(link)),
      ]);
      const isAhead = settled.some(({ result }) => "reason" in result && result.reason === "ahead");
      const all = isAhead ? await this.#rows.entriesOf(walk) : [];
      return this.#apply(
        summary,
        settleChange(await this.#view(link, summary), { settled, round, find, waiting, all }),
      );
    });
  }

  async takeIn(
    walk: WalkId,
    entries: readonly Entry[],
    cursor: Cursor,
    after: Cursor | null = null,
  ): Promise<Changed> {
    const [{ takeInChange }, pen] = await Promise.all([linkChanges(), this.#findPen()]);
    return this.#rows.write(TABLES, async () => {
      const [link, summary, head, find] = await Promise.all([
        this.#linkOf(walk),
        this.#rows.summaryOf(walk),
        this.#rows.head(walk),
        this.#rows.finder(walk, entries),
      ]);
      insistOnRead(link, after);
      const isAllSent =
        head <= link.pushed || (await this.#rows.countOf(walk, link.pushed, isOf(link))) === 0;
      const all = isOtherStore(link, cursor) ? await this.#rows.entriesOf(walk) : [];
      return this.#apply(
        summary,
        takeInChange(await this.#view(link, summary, pen), { entries, cursor, find, isAllSent, all }),
      );
    });
  }

  async setClock(walk: WalkId, clock: ClockOffset, scope: "own" | "every"): Promise<Changed> {
    const { clockChange } = await linkChanges();
    return this.#rows.write(TABLES, async () => {
      const [kept, before] = await Promise.all([this.#rows.linkOf(walk), this.#rows.summaryOf(walk)]);
      if (!kept && scope === "own") throw new NotLinkedError(walk);
      const link = kept ?? unlinkedRow(walk);
      const summary: WalkSummary = { ...before, clockOffset: appliedOffset(clock) };
      const view = await this.#view(link, summary);
      const hasAhead = await this.#rows.countOf(walk, link.pushed, ({ wire }) => isAheadOf(view, wire.hlc));
      const all = hasAhead > 0 ? await this.#rows.entriesOf(walk) : [];
      const change = clockChange(view, { clock, all, scope });
      const isNewSummary = summary.clockOffset !== before.clockOffset;
      return this.#apply(summary, kept ? change : { ...change, link: null }, isNewSummary);
    });
  }

  aside(walk: WalkId): Promise<readonly AsideEntry[]> {
    return this.#rows.read(["aside"], () =>
      this.#rows.database.aside.where("walk").equals(walk).sortBy("number"),
    );
  }

  get #links() {
    return this.#rows.database.links;
  }

  #read<Result>(work: () => Promise<Result>): Promise<Result> {
    return this.#rows.read(["entries", "links"], work);
  }

  async #linkOf(walk: WalkId): Promise<LinkRow> {
    const link = await this.#rows.linkOf(walk);
    if (!link) throw new NotLinkedError(walk);
    return link;
  }

  async #view(link: LinkRow, summary: WalkSummary, found: SealPen | null = null): Promise<LinkView> {
    const pen = penFor(found, link);
    const chain = pen && { pen, end: await this.#rows.chainEnd(summary, pen) };
    return { link, summary, source: this.#rows.source, now: this.#now(), chain };
  }

  async #apply(before: WalkSummary, change: LinkChange, isNewSummary = false): Promise<Changed> {
    const { entries, aside } = this.#rows.database;
    const { walk } = before;
    if (change.remove.length > 0) await entries.bulkDelete(change.remove.map(({ offset }) => offset));
    const last = await this.#rows.addEntries(change.add);
    await this.#rows.addEntries(change.queue);
    if (change.aside.length > 0) await aside.bulkAdd([...change.aside]);
    const added = [...change.add, ...change.queue];
    const after =
      change.remove.length > 0
        ? rebuiltSummary(
            before,
            (await this.#rows.entriesOf(walk)).map(({ entry }) => entry),
            this.#rows.source,
          )
        : withEntries(before, added, this.#rows.source);
    const { chained } = change;
    const summary = chained ? withChained(after, chained.end, chained.entries) : after;
    // Readers of the walk are notified through a change of its summary.
    if (added.length > 0 || change.remove.length > 0 || isNewSummary) await this.#rows.putSummary(summary);
    if (change.link) {
      const { link } = change;
      await this.#rows.putLink({ ...link, pushed: change.pushed ?? Math.max(link.pushed, last) });
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
