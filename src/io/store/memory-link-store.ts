import type { Cursor, Settled } from "../../core/link/index.ts";
import type { ClockOffset, Entry } from "../../core/log/index.ts";
import { appliedOffset } from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import { Listeners } from "../../core/units/index.ts";
import { type FindPen, NO_PEN, penFor } from "./find-pen.ts";
import type { LinkChange, LinkView } from "./link-change.ts";
import { isOtherStore, isResent, isWaiting, sealedFirst, unlinkedRow } from "./link-change.ts";
import type { AsideEntry, LinkRow, NewLink } from "./link-row.ts";
import { joinedRow, nextRound } from "./link-row.ts";
import type { Changed, LinkStore, Outbox } from "./link-store.ts";
import { insistOnRead, linkChanges, NotLinkedError } from "./link-store.ts";
import type { MemoryRows } from "./memory-rows.ts";
import { withUnheard } from "./only-here.ts";
import type { SealPen } from "./seal-pen.ts";
import { withChained } from "./walk-summary.ts";

/** The links of walks in memory. Each call does all of its work at once. */
export class MemoryLinkStore implements LinkStore {
  readonly #rows: MemoryRows;
  readonly #now: () => Instant;
  readonly #findPen: FindPen;
  readonly #links = new Map<WalkId, LinkRow>();
  #aside: AsideEntry[] = [];
  readonly #listeners = new Listeners();

  constructor(rows: MemoryRows, now: () => Instant, findPen: FindPen = NO_PEN) {
    this.#rows = rows;
    this.#now = now;
    this.#findPen = findPen;
  }

  async all(): Promise<readonly LinkRow[]> {
    return [...this.#links.values()];
  }

  async get(walk: WalkId): Promise<LinkRow | null> {
    return this.#links.get(walk) ?? null;
  }

  watch(onChange: () => void): () => void {
    return this.#listeners.add(onChange);
  }

  async join(joining: NewLink): Promise<LinkRow> {
    const row = joinedRow(this.#links.get(joining.walk) ?? null, joining);
    this.#put(row);
    return row;
  }

  /** Takes over links of another store, as links of which nothing was read or sent. */
  adopt(rows: readonly LinkRow[]): void {
    for (const row of rows) {
      this.#put({ ...row, cursor: null, pushed: 0, round: nextRound(row) });
      if (row.clock)
        this.#rows.setSummary({ ...this.#rows.summaryOf(row.walk), clockOffset: appliedOffset(row.clock) });
    }
  }

  async leave(walk: WalkId): Promise<void> {
    const { clockOffset: _, ...row } = this.#rows.summaryOf(walk);
    this.#rows.setSummary(row);
    if (this.#links.delete(walk)) this.#listeners.tellSoon();
  }

  /** Forgets all that is kept of a walk. */
  async remove(walk: WalkId): Promise<void> {
    this.#aside = this.#aside.filter((one) => one.walk !== walk);
    await this.leave(walk);
  }

  async change(walk: WalkId, change: (row: LinkRow) => LinkRow): Promise<void> {
    const row = this.#links.get(walk);
    if (row) this.#put(change(row));
  }

  async outbox(walk: WalkId, limit: number): Promise<Outbox> {
    const entries = sealedFirst(this.#waiting(walk).slice(0, limit), this.#rows.summaryOf(walk));
    return { entries, round: this.#links.get(walk)?.round ?? 0 };
  }

  async unsent(walk: WalkId): Promise<number> {
    return this.#waiting(walk).length;
  }

  async settle(walk: WalkId, settled: readonly Settled[], round: number): Promise<Changed> {
    const { settleChange } = await linkChanges();
    const view = this.#view(this.#linkOf(walk));
    const find = (key: string) => this.#rows.find(walk, key);
    const [waiting, all] = [this.#waiting(walk), this.#rows.entriesOf(walk)];
    return this.#apply(walk, settleChange(view, { settled, round, find, waiting, all }));
  }

  async takeIn(
    walk: WalkId,
    entries: readonly Entry[],
    cursor: Cursor,
    after: Cursor | null = null,
  ): Promise<Changed> {
    const { takeInChange } = await linkChanges();
    const pen = await this.#findPen();
    const view = this.#view(this.#linkOf(walk), pen);
    insistOnRead(view.link, after);
    const find = (key: string) => this.#rows.find(walk, key);
    const isAllSent = this.#waiting(walk).length === 0;
    const all = isOtherStore(view.link, cursor) ? this.#rows.entriesOf(walk) : [];
    return this.#apply(walk, takeInChange(view, { entries, cursor, find, isAllSent, all }));
  }

  async setClock(walk: WalkId, clock: ClockOffset, scope: "own" | "every"): Promise<Changed> {
    const { clockChange } = await linkChanges();
    const kept = this.#links.get(walk);
    if (!kept && scope === "own") throw new NotLinkedError(walk);
    this.#rows.setSummary({ ...this.#rows.summaryOf(walk), clockOffset: appliedOffset(clock) });
    const view = this.#view(kept ?? unlinkedRow(walk));
    const change = clockChange(view, { clock, all: this.#rows.entriesOf(walk), scope });
    return this.#apply(walk, kept ? change : { ...change, link: null });
  }

  /** Notes entries that came from elsewhere than the hub. */
  noteUnheard(walk: WalkId, entries: readonly Entry[]): void {
    const row = this.#links.get(walk);
    const noted = row && withUnheard(row, entries);
    if (noted && noted !== row) this.#put(noted);
  }

  async aside(walk: WalkId): Promise<readonly AsideEntry[]> {
    return this.#aside.filter((one) => one.walk === walk);
  }

  #waiting(walk: WalkId) {
    const link = this.#links.get(walk);
    return link ? this.#rows.entriesOf(walk, link.pushed).filter((kept) => isWaiting(link, kept)) : [];
  }

  #linkOf(walk: WalkId): LinkRow {
    const link = this.#links.get(walk);
    if (!link) throw new NotLinkedError(walk);
    return link;
  }

  #view(link: LinkRow, found: SealPen | null = null): LinkView {
    const summary = this.#rows.summaryOf(link.walk);
    const pen = penFor(found, link);
    const chain = pen && { pen, end: this.#rows.chainEnd(summary, pen) };
    return { link, summary, source: this.#rows.source, now: this.#now(), chain };
  }

  #apply(walk: WalkId, change: LinkChange): Changed {
    const last = this.#rows.change(walk, change.remove, change.add);
    this.#rows.change(walk, [], change.queue);
    const { chained } = change;
    if (chained) this.#rows.setSummary(withChained(this.#rows.summaryOf(walk), chained.end, chained.entries));
    this.#aside.push(...change.aside);
    const { link } = change;
    if (link) this.#put({ ...link, pushed: change.pushed ?? Math.max(link.pushed, last) });
    return {
      added: [...change.add, ...change.queue],
      removed: change.remove.map(({ entry }) => entry),
      isResent: isResent(change),
    };
  }

  #put(row: LinkRow): void {
    this.#links.set(row.walk, row);
    this.#listeners.tellSoon();
  }
}
