import type { HubClient, Invitation, Joined, LinkTime, Settled } from "../../core/link/index.ts";
import { HubRefusedError, TurnedAwayError, UnreachableError } from "../../core/link/index.ts";
import type { Role } from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import type { DeviceStore, LinkRow } from "../store/index.ts";
import type { Candidacy, Locks } from "./leadership.ts";
import { stand } from "./leadership.ts";
import type { Joining, JoinOutcome, LinkKeeper, LinkStatus, Sharing } from "./link-keeper.ts";
import { aloneStatus, othersStatus, ownStatus } from "./link-status.ts";
import type { PageParts } from "./page-signals.ts";
import { watchPage } from "./page-signals.ts";
import { RunningLink } from "./running-link.ts";
import { handOver } from "./sharing.ts";
import type { Channel } from "./status-channel.ts";
import { hearOn, sayOn } from "./status-channel.ts";

/** What the links of a device are made of. */
export interface DeviceLinksParts {
  readonly store: DeviceStore;
  readonly hub: HubClient;
  /** Where the hub is; links with others rest. */
  readonly origin: string;
  readonly now: () => Instant;
  readonly time: LinkTime;
  readonly locks: Locks | null;
  readonly channel: Channel | null;
  readonly page: PageParts | null;
}

const NOT_THE_OWNERS = "This is not the owner’s code of this hub: look at its console.";

/** So many walks are linked at once: a browser opens six connections to one place, and each link holds one. */
const MOST = 4;

/** Which walks are linked is looked over so often, in ms. */
const LOOKED_OVER = 60_000;

/** A walk with a link, as this page has it. */
interface Linked {
  row: LinkRow;
  /** Missing while this page does not want to link it. */
  candidacy?: Candidacy;
  /** Missing while another page links it, or none. */
  running?: RunningLink;
  said: LinkStatus | null;
  unsent: number;
  status: LinkStatus;
}

/** The links of all walks of this device, as far as this page runs them, and what other pages say of the rest. */
export class DeviceLinks implements LinkKeeper {
  readonly #parts: DeviceLinksParts;
  readonly #alone: LinkStatus;
  readonly #linked = new Map<WalkId, Linked>();
  readonly #watchers = new Map<() => void, WalkId>();
  readonly #over = new AbortController();
  readonly #background: Candidacy;
  /** Whether this page links walks that nobody looks at. */
  #isBackground = false;
  #isArranging = false;
  #mustArrange = false;
  #arranged: (() => void)[] = [];

  constructor(parts: DeviceLinksParts) {
    this.#parts = parts;
    this.#alone = aloneStatus(parts.store.device);
    const { store, locks, channel, page } = parts;
    const ends = [store.log.links.watch(() => void this.#arrange())];
    if (page) ends.push(watchPage(page, () => this.#wake()));
    this.#over.signal.addEventListener("abort", () => {
      for (const end of ends) end();
    });
    if (channel) {
      hearOn(channel, (message) => {
        const linked = this.#linked.get(message.walk);
        if (!linked) return;
        if (message.kind === "ask") this.#say(linked);
        else if (!linked.running) {
          linked.said = message.status;
          this.#show(linked);
        }
      });
    }
    this.#background = stand(locks, "tetherline-links", (signal) => {
      this.#isBackground = true;
      signal.addEventListener("abort", () => {
        this.#isBackground = false;
        void this.#arrange();
      });
      void this.#arrange();
    });
    void this.#lookOver();
  }

  status(walk: WalkId): LinkStatus {
    return this.#linked.get(walk)?.status ?? this.#alone;
  }

  watch(walk: WalkId, onChange: () => void): () => void {
    const watcher = () => onChange();
    this.#watchers.set(watcher, walk);
    void this.#arrange().then(() => this.#takeOver(walk));
    return () => {
      this.#watchers.delete(watcher);
      void this.#arrange();
    };
  }

  async join({ code: entered, name, walk }: Joining): Promise<JoinOutcome> {
    const { hub, store } = this.#parts;
    const code = bare(entered);
    const request = {
      code,
      device: store.device,
      name,
      ...(walk === undefined ? {} : { walk }),
      use: "cookie",
    } as const;
    return this.#joining(name, async () => {
      try {
        return await hub.join(request);
      } catch (error) {
        if (!(error instanceof HubRefusedError) || error.reason !== "walk-needed") throw error;
        return { kind: "which", walks: await hub.walks({ credential: code }) };
      }
    });
  }

  share(sharing: Sharing): Promise<JoinOutcome> {
    const { hub, store, now, time } = this.#parts;
    const { walk, name } = sharing;
    const code = bare(sharing.ownerCode);
    let refused: readonly Settled[] = [];
    const ask = async () => {
      try {
        refused = await handOver({ walk, ownerCode: code, name }, { store, hub, now, wait: time.wait });
        return await hub.join({ code, device: store.device, name, walk, use: "cookie" });
      } catch (cause) {
        if (!(cause instanceof TurnedAwayError)) throw cause;
        throw new TurnedAwayError(NOT_THE_OWNERS, { cause });
      }
    };
    return this.#joining(name, ask, async () => {
      if (refused.length > 0) await store.log.links.settle(walk, refused, 0);
    });
  }

  invite(walk: WalkId, role: Role, minutes: number): Promise<Invitation> {
    return this.#parts.hub.invite(walk, role, minutes);
  }

  withdraw(walk: WalkId, device: string): Promise<void> {
    return this.#parts.hub.withdraw(walk, device);
  }

  async leave(walk: WalkId): Promise<void> {
    const { hub, store } = this.#parts;
    await Promise.race([
      // A hub that cannot be told, or has put this device out already, is left all the same.
      hub.leave(walk).catch(() => {}),
      this.#parts.time.wait(5000, this.#over.signal),
    ]);
    await store.log.links.leave(walk);
    await this.#arrange();
  }

  dismiss(walk: WalkId, noticeKey: string): void {
    const without = (row: LinkRow): LinkRow => ({
      ...row,
      notices: row.notices.filter(({ key }) => key !== noticeKey),
    });
    this.#parts.store.log.links
      .change(walk, without)
      .then(() => this.#arrange())
      // A store that fails now shows the notice again later.
      .catch(() => {});
  }

  close(): void {
    this.#over.abort();
    this.#background.end();
    for (const linked of this.#linked.values()) this.#rest(linked);
    this.#parts.channel?.close();
  }

  async #joining(
    name: string,
    ask: () => Promise<Joined | Extract<JoinOutcome, { kind: "which" }>>,
    afterwards = async (): Promise<void> => {},
  ): Promise<JoinOutcome> {
    try {
      const joined = await ask();
      if ("kind" in joined) return joined;
      await this.#keep(joined, name);
      await afterwards();
      return { kind: "joined", walk: joined.walk as WalkId, role: joined.role };
    } catch (error) {
      const words = error instanceof Error ? error.message : String(error);
      if (error instanceof UnreachableError) return { kind: "unreachable", words };
      const isSaid = error instanceof TurnedAwayError || error instanceof HubRefusedError;
      return { kind: "refused", words: isSaid ? words : `This tablet could not keep it: ${words}.` };
    }
  }

  async #keep({ walk, role, hub, hubName, device }: Joined, name: string): Promise<void> {
    const { store, origin, now } = this.#parts;
    await store.log.links.join({
      walk: walk as WalkId,
      origin,
      hub,
      hubName,
      role,
      name,
      device,
      joinedAt: now(),
    });
    // What ran under an earlier token, or had ended, begins anew.
    const linked = this.#linked.get(walk as WalkId);
    if (linked) this.#rest(linked);
    await this.#arrange();
  }

  #wake(): void {
    for (const [walk, linked] of this.#linked) {
      linked.running?.wake();
      if (this.#isWatched(walk)) this.#takeOver(walk);
    }
    void this.#arrange();
  }

  /** The page that somebody looks at links what they look at: another one may be asleep. */
  #takeOver(walk: WalkId): void {
    const isSeen = this.#parts.page?.document.visibilityState === "visible";
    const linked = this.#linked.get(walk);
    if (!linked || !isSeen || !this.#isWatched(walk)) return;
    linked.candidacy?.takeOver();
  }

  #isWatched(walk: WalkId): boolean {
    return [...this.#watchers.values()].includes(walk);
  }

  async #lookOver(): Promise<void> {
    const { signal } = this.#over;
    while (!signal.aborted) {
      await this.#arrange();
      await this.#parts.time.wait(LOOKED_OVER, signal);
    }
  }

  /** Has the right walks linked; resolves once that was seen to. Never rejects: a store that fails is asked again later. */
  #arrange(): Promise<void> {
    const arranged = new Promise<void>((resolve) => this.#arranged.push(resolve));
    this.#mustArrange = true;
    if (!this.#isArranging) void this.#arrangeOn();
    return arranged;
  }

  async #arrangeOn(): Promise<void> {
    this.#isArranging = true;
    while (this.#mustArrange) {
      this.#mustArrange = false;
      const waiting = this.#arranged.splice(0);
      try {
        if (!this.#over.signal.aborted) await this.#arrangeOnce();
      } catch {
        // Looked over again in a minute, or when somebody does something.
      }
      for (const resolve of waiting) resolve();
    }
    this.#isArranging = false;
  }

  async #arrangeOnce(): Promise<void> {
    const { links } = this.#parts.store.log;
    const rows = new Map((await links.all()).map((row) => [row.walk, row]));
    for (const [walk, linked] of this.#linked) {
      if (rows.has(walk)) continue;
      this.#rest(linked);
      this.#linked.delete(walk);
      this.#tell(walk);
    }
    for (const [walk, row] of rows) {
      const linked = this.#linked.get(walk);
      if (!linked) await this.#begin(row);
      else {
        // Joined anew, perhaps in another role, or after the hub had put this device out.
        if (linked.running && linked.row.joinedAt !== row.joinedAt) this.#rest(linked);
        linked.row = row;
        if (!linked.running && !linked.said) linked.unsent = await links.unsent(walk);
        this.#show(linked);
      }
    }
    const wanted = new Set(await this.#wanted());
    if (this.#over.signal.aborted) return;
    for (const linked of this.#linked.values()) {
      if (!wanted.has(linked)) this.#rest(linked);
      else linked.candidacy ??= this.#stand(linked);
    }
  }

  async #begin(row: LinkRow): Promise<void> {
    const unsent = await this.#parts.store.log.links.unsent(row.walk);
    const linked: Linked = { row, said: null, unsent, status: othersStatus(row, null, unsent) };
    this.#linked.set(row.walk, linked);
    if (this.#parts.channel) sayOn(this.#parts.channel, { kind: "ask", walk: row.walk });
    this.#tell(row.walk);
  }

  /** The walks that this page would link, those that somebody looks at first, then the newest. */
  async #wanted(): Promise<readonly Linked[]> {
    const { store, origin } = this.#parts;
    const closed = new Set(
      (await store.log.walks()).filter(({ phase }) => phase === "closed").map(({ walk }) => walk),
    );
    const wanted: Linked[] = [];
    for (const [walk, linked] of this.#linked) {
      if (linked.row.origin !== origin) continue;
      const isWatched = this.#isWatched(walk);
      if (!isWatched && !this.#isBackground) continue;
      if (!isWatched && closed.has(walk) && (await this.#isThrough(linked))) continue;
      wanted.push(linked);
    }
    const rank = ({ row }: Linked) => (this.#isWatched(row.walk) ? 1 : 0);
    return wanted
      .sort((a, b) => rank(b) - rank(a) || b.row.joinedAt - a.row.joinedAt)
      .filter((_, index, all) => {
        // One that was ended holds no connection.
        const before = all.slice(0, index).filter(({ status }) => status.kind !== "ended");
        return before.length < MOST;
      });
  }

  /** Whether all of a walk was read, once at least, and sent. */
  async #isThrough({ row }: Linked): Promise<boolean> {
    return row.cursor !== null && (await this.#parts.store.log.links.unsent(row.walk)) === 0;
  }

  #stand(linked: Linked): Candidacy {
    const { locks, store, hub, now, time } = this.#parts;
    return stand(locks, `tetherline-link ${linked.row.walk}`, (signal) => {
      const running = new RunningLink({ row: linked.row, log: store.log, hub, now, time });
      linked.running = running;
      running.watch(() => this.#show(linked));
      signal.addEventListener("abort", () => {
        void running.stop();
        if (linked.running !== running) return;
        delete linked.running;
        linked.said = linked.status;
        this.#show(linked);
      });
      running.start();
      this.#show(linked);
    });
  }

  #rest(linked: Linked): void {
    linked.candidacy?.end();
    delete linked.candidacy;
  }

  #show(linked: Linked): void {
    const { row, running, said, unsent, status } = linked;
    if (this.#linked.get(row.walk) !== linked) return;
    const next = running ? ownStatus(row, running.status()) : othersStatus(row, said, unsent);
    if (JSON.stringify(next) === JSON.stringify(status)) return;
    linked.status = next;
    this.#tell(row.walk);
    this.#say(linked);
  }

  #say({ row, running, status }: Linked): void {
    const { channel } = this.#parts;
    if (running && channel) sayOn(channel, { kind: "status", walk: row.walk, status });
  }

  #tell(walk: WalkId): void {
    for (const [watcher, of] of [...this.#watchers]) if (of === walk) watcher();
  }
}

/** A code as it was meant: blanks and dashes of any kind in it are for the eye. */
function bare(code: string): string {
  return code.replaceAll(/[^\p{L}\p{N}]/gu, "");
}
