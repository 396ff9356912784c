import type { HubClient, Invitation, LinkTime, OpenInvitation } from "../../core/link/index.ts";
import { TurnedAwayError } from "../../core/link/index.ts";
import type { Role } from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import { Listeners } from "../../core/units/index.ts";
import { message } from "../../words/index.ts";
import type { DeviceStore, LinkRow } from "../store/index.ts";
import type { HubReach } from "./hub-reach.ts";
import { hubOf, isInReach } from "./hub-reach.ts";
import type { Candidacy, Locks } from "./leadership.ts";
import { stand } from "./leadership.ts";
import type { Joining, JoinOutcome, LinkKeeper, LinkStatus, Recovery, Sharing } from "./link-keeper.ts";
import { aloneStatus } from "./link-status.ts";
import type { LinkedWalk } from "./linked-walk.ts";
import { firstToLink, newLinkedWalk, rest, statusOf } from "./linked-walk.ts";
import { OneAtATime } from "./one-at-a-time.ts";
import type { PageParts } from "./page-signals.ts";
import { watchPage } from "./page-signals.ts";
import type { Channel, ChannelMessage } from "./status-channel.ts";
import { hearOn, sayOn } from "./status-channel.ts";
import type { WalkJoiner } from "./walk-joiner.ts";

/** What the links of a device are made of. */
export interface DeviceLinksParts {
  readonly store: DeviceStore;
  /** The hubs that can be asked; links with others rest. */
  readonly reach: HubReach;
  readonly now: () => Instant;
  readonly time: LinkTime;
  readonly locks: Locks | null;
  readonly channel: Channel | null;
  readonly page: PageParts | null;
}

/** How often the choice of walks to link is made anew, in ms. */
const LOOKED_OVER = 60_000;

/** How long telling a hub that this device leaves may take, in ms. */
const LEAVE_PATIENCE = 5000;

/** The links of all walks of this device, as far as this page runs them, and what other pages say of the rest. */
export class DeviceLinks implements LinkKeeper {
  readonly #parts: DeviceLinksParts;
  #alone: LinkStatus;
  readonly #linked = new Map<WalkId, LinkedWalk>();
  readonly #watchers = new Map<WalkId, Listeners>();
  readonly #over = new AbortController();
  readonly #background: Candidacy;
  /** Links the walks that are to be linked, and no others. */
  readonly #arranging = new OneAtATime(() => this.#arrange());
  /** Whether this page links walks that nobody looks at. */
  #isBackground = false;

  constructor(parts: DeviceLinksParts) {
    this.#parts = parts;
    this.#alone = aloneStatus(parts.store.device);
    const { store, locks, channel, page } = parts;
    const ends = [store.log.links.watch(() => void this.#arranging.run())];
    if (page) ends.push(watchPage(page, () => this.#wake()));
    this.#over.signal.addEventListener("abort", () => {
      for (const end of ends) end();
    });
    if (channel) hearOn(channel, (heard) => this.#hear(heard));
    this.#background = stand(locks, "tetherline-links", (signal) => {
      this.#isBackground = true;
      signal.addEventListener("abort", () => {
        this.#isBackground = false;
        void this.#arranging.run();
      });
      void this.#arranging.run();
    });
    void this.#lookOver();
  }

  get home(): string | null {
    return this.#parts.reach.home;
  }

  status(walk: WalkId): LinkStatus {
    const { device } = this.#parts.store;
    if (this.#alone.device !== device) this.#alone = aloneStatus(device);
    return this.#linked.get(walk)?.status ?? this.#alone;
  }

  watch(walk: WalkId, onChange: () => void): () => void {
    const watchers = this.#watchers.get(walk) ?? new Listeners();
    this.#watchers.set(walk, watchers);
    const unwatch = watchers.add(onChange);
    void this.#arranging.run().then(() => this.#takeOver(walk));
    return () => {
      unwatch();
      void this.#arranging.run();
    };
  }

  async join(joining: Joining): Promise<JoinOutcome> {
    return (await this.#joiner()).join(joining);
  }

  async share(sharing: Sharing): Promise<JoinOutcome> {
    return (await this.#joiner()).share(sharing);
  }

  async recover(walk: WalkId): Promise<Recovery> {
    return (await this.#joiner()).recover(walk);
  }

  invite(walk: WalkId, role: Role, minutes: number, devices = 1): Promise<Invitation> {
    return this.#hubOf(walk).then((hub) => hub.invite(walk, role, minutes, devices));
  }

  invitations(walk: WalkId): Promise<readonly OpenInvitation[]> {
    return this.#hubOf(walk).then((hub) => hub.invitations(walk));
  }

  endInvitation(walk: WalkId, name: string): Promise<void> {
    return this.#hubOf(walk).then((hub) => hub.endInvitation(walk, name));
  }

  withdraw(walk: WalkId, device: string): Promise<void> {
    return this.#hubOf(walk).then((hub) => hub.withdraw(walk, device));
  }

  withdrawAll(walk: WalkId): Promise<number> {
    return this.#hubOf(walk).then((hub) => hub.withdrawAll(walk));
  }

  async leave(walk: WalkId): Promise<void> {
    const { store, time } = this.#parts;
    await Promise.race([
      // Leave even if the hub cannot be told, or has already removed this device.
      this.#hubOf(walk)
        .then((hub) => hub.leave(walk))
        .catch(() => {}),
      time.wait(LEAVE_PATIENCE, this.#over.signal),
    ]);
    await store.log.links.leave(walk);
    await this.#arranging.run();
  }

  dismiss(walk: WalkId, noticeKey: string): void {
    const without = (row: LinkRow): LinkRow => ({
      ...row,
      notices: row.notices.filter(({ key }) => key !== noticeKey),
    });
    this.#parts.store.log.links
      .change(walk, without)
      .then(() => this.#arranging.run())
      // If the store fails, the notice is only shown again later.
      .catch(() => {});
  }

  close(): void {
    this.#over.abort();
    this.#background.end();
    for (const linked of this.#linked.values()) rest(linked);
    this.#parts.channel?.close();
  }

  /** The hub that a walk is linked with; the one that serves the page for a walk without a link, whose cookie may still be there. */
  async #hubOf(walk: WalkId): Promise<HubClient> {
    const { store, reach } = this.#parts;
    const row = await store.log.links.get(walk);
    if (row) return hubOf(reach, row);
    if (reach.home === null) throw new TurnedAwayError(message("link/walk-not-linked"));
    return reach.at(reach.home);
  }

  /** What joins walks is loaded when it is first asked for. */
  async #joiner(): Promise<WalkJoiner> {
    const { WalkJoiner } = await import("./walk-joiner.ts");
    return new WalkJoiner({ ...this.#parts, onJoined: (walk) => this.#beginAnew(walk) });
  }

  /** Ends the link that ran under an earlier token, or had ended, so that another one begins. */
  async #beginAnew(walk: WalkId): Promise<void> {
    const linked = this.#linked.get(walk);
    if (linked) rest(linked);
    await this.#arranging.run();
  }

  #wake(): void {
    for (const [walk, linked] of this.#linked) {
      linked.running?.wake();
      this.#takeOver(walk);
    }
    void this.#arranging.run();
  }

  /** Has this page link a walk that somebody looks at here: the page that links it may be asleep. */
  #takeOver(walk: WalkId): void {
    const isSeen = this.#parts.page?.document.visibilityState === "visible";
    if (isSeen && this.#isWatched(walk)) this.#linked.get(walk)?.candidacy?.takeOver();
  }

  #isWatched(walk: WalkId): boolean {
    return (this.#watchers.get(walk)?.size ?? 0) > 0;
  }

  async #lookOver(): Promise<void> {
    const { signal } = this.#over;
    while (!signal.aborted) {
      await this.#arranging.run();
      await this.#parts.time.wait(LOOKED_OVER, signal);
    }
  }

  /** Links the walks that are to be linked, and no others. A store that fails is asked again in a minute, or when somebody does something. */
  async #arrange(): Promise<void> {
    const { signal } = this.#over;
    if (signal.aborted) return;
    await this.#followRows();
    const wanted = new Set(await this.#wanted());
    if (signal.aborted) return;
    for (const linked of this.#linked.values()) {
      if (wanted.has(linked)) linked.candidacy ??= this.#stand(linked);
      else rest(linked);
    }
  }

  /** Brings the walks here into line with the links that the store keeps. */
  async #followRows(): Promise<void> {
    const { links } = this.#parts.store.log;
    const rows = new Map((await links.all()).map((row) => [row.walk, row]));
    for (const [walk, linked] of this.#linked) {
      if (rows.has(walk)) continue;
      rest(linked);
      this.#linked.delete(walk);
      this.#tell(walk);
    }
    for (const [walk, row] of rows) {
      const linked = this.#linked.get(walk);
      if (!linked) {
        this.#linked.set(walk, newLinkedWalk(row, await links.unsent(walk)));
        if (this.#parts.channel) sayOn(this.#parts.channel, { kind: "ask", walk });
        this.#tell(walk);
        continue;
      }
      // The walk was joined again, perhaps in another role, or after the hub had removed this device.
      if (linked.running && linked.row.joinedAt !== row.joinedAt) rest(linked);
      // Its store was put back without it, so that it has to be read from the beginning.
      if (linked.running && row.cursor === null && linked.running.row.round !== row.round) rest(linked);
      linked.row = row;
      if (!linked.running && !linked.said) linked.unsent = await links.unsent(walk);
      this.#show(linked);
    }
  }

  /** The walks that this page would link. */
  async #wanted(): Promise<readonly LinkedWalk[]> {
    const { store, reach } = this.#parts;
    const walks = await store.log.walks();
    const closed = new Set(walks.filter(({ phase }) => phase === "closed").map(({ walk }) => walk));
    const wanted: LinkedWalk[] = [];
    for (const [walk, linked] of this.#linked) {
      if (!isInReach(reach, linked.row)) continue;
      const isWatched = this.#isWatched(walk);
      if (!isWatched && !this.#isBackground) continue;
      if (!isWatched && closed.has(walk) && (await this.#isThrough(linked))) continue;
      wanted.push(linked);
    }
    return firstToLink(wanted, ({ row }) => this.#isWatched(row.walk));
  }

  /** Whether a walk was read to its end at least once, and everything of it was sent. */
  async #isThrough({ row }: LinkedWalk): Promise<boolean> {
    return row.cursor !== null && (await this.#parts.store.log.links.unsent(row.walk)) === 0;
  }

  #stand(linked: LinkedWalk): Candidacy {
    const name = `tetherline-link ${linked.row.walk}`;
    return stand(this.#parts.locks, name, (signal) => {
      // What cannot be loaded is tried again when the walks are looked over.
      this.#run(linked, signal).catch(() => rest(linked));
    });
  }

  /** Links a walk until the signal ends it. What links is loaded with the first walk. */
  async #run(linked: LinkedWalk, signal: AbortSignal): Promise<void> {
    const { RunningLink } = await import("./running-link.ts");
    if (signal.aborted) return;
    const { store, reach, now, time } = this.#parts;
    const { row } = linked;
    const running = new RunningLink({ row, log: store.log, hub: hubOf(reach, row), now, time });
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
  }

  #show(linked: LinkedWalk): void {
    const { walk } = linked.row;
    if (this.#linked.get(walk) !== linked) return;
    const next = statusOf(linked);
    if (JSON.stringify(next) === JSON.stringify(linked.status)) return;
    linked.status = next;
    this.#tell(walk);
    this.#say(linked);
  }

  #hear(heard: ChannelMessage): void {
    const linked = this.#linked.get(heard.walk);
    if (!linked) return;
    if (heard.kind === "ask") this.#say(linked);
    else if (!linked.running) {
      linked.said = heard.status;
      this.#show(linked);
    }
  }

  #say({ row, running, status }: LinkedWalk): void {
    const { channel } = this.#parts;
    if (running && channel) sayOn(channel, { kind: "status", walk: row.walk, status });
  }

  #tell(walk: WalkId): void {
    this.#watchers.get(walk)?.tell();
  }
}
