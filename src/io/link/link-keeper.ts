import type { Invitation, Joined, Role } from "../../core/log/index.ts";
import { invitationSchema, joinedSchema, UnreachableError } from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import type { DeviceStore, LinkRow } from "../store/index.ts";
import { readHubClock } from "./hub-clock.ts";
import { walkPath } from "./hub-far-side.ts";
import type { HubRequests } from "./hub-requests.ts";
import { ask, HubRefusalError, posted } from "./hub-requests.ts";
import type { LinkStatus } from "./link-status.ts";
import { aloneStatus, statusOf } from "./link-status.ts";
import { RunningLink } from "./running-link.ts";

/** What joining came to. */
export type JoinOutcome =
  | { readonly kind: "joined"; readonly walk: WalkId; readonly role: Role }
  | { readonly kind: "refused"; readonly words: string }
  | { readonly kind: "unreachable"; readonly words: string };

/** The links of all walks of this device. Nothing here throws at a screen but {@link LinkKeeper.invite}, `withdraw` and `leave`. */
export interface LinkKeeper {
  /** The same object until it changes. */
  status(walk: WalkId): LinkStatus;
  watch(walk: WalkId, onChange: () => void): () => void;
  join(joining: { readonly code: string; readonly name: string }): Promise<JoinOutcome>;
  share(sharing: {
    readonly walk: WalkId;
    readonly ownerCode: string;
    readonly name: string;
  }): Promise<JoinOutcome>;
  invite(walk: WalkId, role: Role, minutes: number): Promise<Invitation>;
  withdraw(walk: WalkId, device: string): Promise<void>;
  leave(walk: WalkId): Promise<void>;
  dismiss(walk: WalkId, key: string): void;
  close(): void;
}

/** What opening the links needs and may be given. */
export interface OpenLinksParts {
  readonly store: DeviceStore;
  readonly now: () => Instant;
  /** The hub that serves this page unless given. */
  readonly origin?: string;
  readonly fetch?: typeof globalThis.fetch;
  readonly random?: () => number;
}

/** So many links run at once: a browser opens six connections to one place, and each link holds one. */
const MOST_RUNNING = 4;

/** Keeps the walks of this device that were joined linked for as long as the app is open. */
export function openLinks(parts: OpenLinksParts): LinkKeeper {
  return new DeviceLinks(parts);
}

class DeviceLinks implements LinkKeeper {
  readonly #store: DeviceStore;
  readonly #now: () => Instant;
  readonly #hub: HubRequests;
  readonly #random: () => number;
  readonly #running = new Map<WalkId, RunningLink>();
  readonly #watchers = new Map<() => void, WalkId>();
  readonly #statuses = new Map<WalkId, LinkStatus>();
  readonly #alone: LinkStatus;
  readonly #stop = new AbortController();
  #rows: ReadonlyMap<WalkId, LinkRow> = new Map();
  #reading: Promise<void> = Promise.resolve();

  constructor({
    store,
    now,
    origin = window.location.origin,
    fetch = (input, init) => globalThis.fetch(input, init),
    random = Math.random,
  }: OpenLinksParts) {
    this.#store = store;
    this.#now = now;
    this.#hub = { origin, fetch };
    this.#random = random;
    this.#alone = aloneStatus(store.device);
    const unwatch = store.log.links.watch(() => void this.#read());
    const wake = () => {
      for (const link of this.#running.values()) link.wake();
    };
    const { signal } = this.#stop;
    globalThis.addEventListener?.("online", wake, { signal });
    globalThis.addEventListener?.("pageshow", wake, { signal });
    globalThis.document?.addEventListener("visibilitychange", wake, { signal });
    signal.addEventListener("abort", unwatch);
    void this.#read();
  }

  status(walk: WalkId): LinkStatus {
    return this.#statuses.get(walk) ?? this.#alone;
  }

  watch(walk: WalkId, onChange: () => void): () => void {
    const watcher = () => onChange();
    this.#watchers.set(watcher, walk);
    return () => this.#watchers.delete(watcher);
  }

  join({ code, name }: { readonly code: string; readonly name: string }): Promise<JoinOutcome> {
    return this.#joined({ code, device: this.#store.device, name, use: "cookie" }, name, null);
  }

  share({
    walk,
    ownerCode,
    name,
  }: {
    readonly walk: WalkId;
    readonly ownerCode: string;
    readonly name: string;
  }): Promise<JoinOutcome> {
    const body = { code: ownerCode, walk, role: "lead", device: this.#store.device, name, use: "cookie" };
    return this.#joined(body, name, ownerCode);
  }

  async invite(walk: WalkId, role: Role, minutes: number): Promise<Invitation> {
    const response = await ask(this.#hub, `${walkPath(walk)}/invitations`, posted({ role, minutes }));
    return invitationSchema.parse(await response.json());
  }

  async withdraw(walk: WalkId, device: string): Promise<void> {
    const path = `${walkPath(walk)}/followers/${encodeURIComponent(device)}`;
    await ask(this.#hub, path, { method: "DELETE" });
  }

  async leave(walk: WalkId): Promise<void> {
    try {
      await ask(this.#hub, `${walkPath(walk)}/leave`, { method: "POST" });
    } catch {
      // A hub that cannot be reached, or that has put this device out already, is left all the same.
    }
    await this.#store.log.links.leave(walk);
    await this.#read();
  }

  dismiss(walk: WalkId, key: string): void {
    const change = (row: LinkRow) => ({ ...row, notices: row.notices.filter((one) => one.key !== key) });
    void this.#store.log.links.change(walk, change).then(() => this.#read());
  }

  close(): void {
    this.#stop.abort();
    for (const link of this.#running.values()) void link.stop();
    this.#running.clear();
  }

  async #joined(body: unknown, name: string, ownerCode: string | null): Promise<JoinOutcome> {
    try {
      const response = await ask(this.#hub, "/api/join", posted(body));
      const joined = joinedSchema.parse(await response.json());
      await this.#keep(joined, name, ownerCode);
      return { kind: "joined", walk: joined.walk as WalkId, role: joined.role };
    } catch (error) {
      if (error instanceof UnreachableError) {
        return {
          kind: "unreachable",
          words: "The hub cannot be reached now. Check the network and try again.",
        };
      }
      if (error instanceof HubRefusalError) return { kind: "refused", words: error.message };
      const words = error instanceof Error ? error.message : "unknown error";
      return { kind: "refused", words: `That did not work: ${words}` };
    }
  }

  async #keep(joined: Joined, name: string, ownerCode: string | null): Promise<void> {
    const { links } = this.#store.log;
    const walk = joined.walk as WalkId;
    const { hub, hubName, role, device } = joined;
    const clock = await readHubClock(this.#hub, this.#now);
    if (ownerCode !== null) {
      // Nothing of it is settled yet: what the hub would refuse as ahead of its clock is stamped anew.
      if (clock) await links.setClock(walk, clock, "every");
      await this.#sendForeign(walk, ownerCode);
    }
    await this.#running.get(walk)?.stop();
    this.#running.delete(walk);
    await links.join({
      walk,
      origin: this.#hub.origin,
      hub,
      hubName,
      role,
      name,
      device,
      joinedAt: this.#now(),
    });
    if (clock) await links.setClock(walk, clock, "own");
    await this.#read();
  }

  /** Entries that came here from other devices, as in a log that was brought in: only the hub's owner may hand them over. */
  async #sendForeign(walk: WalkId, ownerCode: string): Promise<void> {
    const { entries } = await this.#store.log.read(walk, 0);
    const foreign = entries.filter(({ wire }) => !wire.source.startsWith(this.#store.device));
    for (let from = 0; from < foreign.length; from += 500) {
      const batch = foreign.slice(from, from + 500).map(({ wire }) => wire);
      const init = posted(batch, "application/cloudevents-batch+json");
      const headers = { ...init.headers, authorization: `Bearer ${ownerCode}` };
      await ask(this.#hub, `${walkPath(walk)}/entries`, { ...init, headers });
    }
  }

  /** Reads what is kept of links, one reading after another, and has the right ones run. */
  #read(): Promise<void> {
    this.#reading = this.#reading.then(
      () => this.#readNow(),
      () => this.#readNow(),
    );
    return this.#reading;
  }

  async #readNow(): Promise<void> {
    const rows = await this.#store.log.links.all();
    this.#rows = new Map(rows.map((row) => [row.walk, row]));
    for (const [walk, link] of this.#running) {
      if (this.#rows.has(walk)) continue;
      this.#running.delete(walk);
      void link.stop();
    }
    const newest = rows.toSorted((a, b) => b.joinedAt - a.joinedAt).slice(0, MOST_RUNNING);
    for (const row of newest) if (!this.#running.has(row.walk)) this.#run(row);
    for (const walk of new Set([...this.#rows.keys(), ...this.#statuses.keys()])) this.#show(walk);
  }

  #run(row: LinkRow): void {
    if (this.#stop.signal.aborted || row.origin !== this.#hub.origin) return;
    const link = new RunningLink({
      store: this.#store,
      hub: this.#hub,
      row,
      now: this.#now,
      time: { now: this.#now, random: this.#random, wait: waited },
    });
    this.#running.set(row.walk, link);
    link.watch(() => this.#show(row.walk));
    link.start();
  }

  #show(walk: WalkId): void {
    const row = this.#rows.get(walk);
    const next = row ? statusOf(row, this.#running.get(walk)?.status() ?? null) : null;
    const before = this.#statuses.get(walk) ?? null;
    if (JSON.stringify(next) === JSON.stringify(before)) return;
    if (next) this.#statuses.set(walk, next);
    else this.#statuses.delete(walk);
    for (const [watcher, of] of this.#watchers) if (of === walk) watcher();
  }
}

function waited(ms: number, signal: AbortSignal): Promise<void> {
  return new Promise((resolve) => {
    if (signal.aborted) return resolve();
    const end = () => {
      clearTimeout(timer);
      signal.removeEventListener("abort", end);
      resolve();
    };
    const timer = setTimeout(end, ms);
    signal.addEventListener("abort", end);
  });
}
