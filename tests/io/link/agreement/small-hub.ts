import type {
  Cursor,
  FarMessage,
  NearSide,
  PushAnswer,
  PushResult,
} from "../../../../src/core/link/index.ts";
import type { Entry, Role } from "../../../../src/core/log/index.ts";
import {
  isSameStatement,
  isTooFarAhead,
  keyOf,
  likenessOf,
  roleRefusal,
} from "../../../../src/core/log/index.ts";
import type { Instant } from "../../../../src/core/units/index.ts";
import type { VirtualTime } from "./virtual-time.ts";

interface Kept {
  readonly entry: Entry;
  readonly offset: number;
  /** The hub it came through; `null` from a device. */
  readonly via: string | null;
}

/** Somebody whose stream is open. */
interface Listener {
  readonly via: string | null;
  readonly hear: (message: FarMessage) => void;
  readonly cut: () => void;
}

/** The rules of a hub on a log in memory that outlasts its restarts. */
export class SmallHub {
  readonly name: string;
  isUp = true;
  /** How often it was started. */
  starts = 1;
  log: Kept[] = [];
  /** Entries that two hubs disagree on; there must be none. */
  conflictsBetweenHubs = 0;
  #epoch = 1;
  #byKey = new Map<string, Kept>();
  #upstream: { cursor: Cursor | null; pushed: number } = { cursor: null, pushed: 0 };
  readonly #time: VirtualTime;
  /** How far its clock is ahead of the time, in ms. */
  readonly #skew: number;
  readonly #listeners = new Set<Listener>();
  readonly #watchers = new Set<() => void>();

  constructor(name: string, time: VirtualTime, skew: number) {
    this.name = name;
    this.#time = time;
    this.#skew = skew;
  }

  get now(): Instant {
    return (this.#time.now + this.#skew) as Instant;
  }

  get head(): number {
    return this.log.at(-1)?.offset ?? 0;
  }

  get #epochName(): string {
    return `${this.name}-${this.#epoch}`;
  }

  /** The process ends: streams are cut, the log stays. */
  stop(): void {
    this.isUp = false;
    for (const { cut } of [...this.#listeners]) cut();
  }

  start(): void {
    this.starts += 1;
    this.isUp = true;
  }

  /** Everything is lost, also what it has confirmed: another store takes its place. */
  loseAll(): void {
    this.stop();
    this.log = [];
    this.#byKey = new Map();
    this.#epoch += 1;
    this.#upstream = { cursor: null, pushed: 0 };
    this.start();
  }

  /** Takes entries from a device, or from a hub in the role of a relay. */
  push(entries: readonly Entry[], device: string, role: Role): PushAnswer {
    const via = role === "relay" ? device : null;
    const results = entries.map((entry) => this.#taken(entry, device, role, via));
    this.#tell();
    return { results, gaps: [], now: this.now };
  }

  /** Opens a stream; returns a function that ends it. Everything is heard in order. */
  follow(after: Cursor | null, listener: Listener): () => void {
    const { hear, via } = listener;
    const from = after?.epoch === this.#epochName && after.offset <= this.head ? after.offset : 0;
    hear({
      kind: "hello",
      hello: {
        hub: this.name,
        hubKey: null,
        name: this.name,
        role: "marker",
        device: "",
        now: this.now,
        toCome: null,
      },
    });
    for (const kept of this.log) if (kept.offset > from) hear(this.#message(kept, via));
    hear({ kind: "cursor", cursor: { epoch: this.#epochName, offset: this.head } });
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  /** This hub as the near side of its link with another one. */
  nearSide(upstream: string): NearSide {
    let from = 0;
    const waiting = () =>
      this.log.filter(({ offset, via }) => offset > this.#upstream.pushed && via !== upstream);
    return {
      outbox: async (limit) => {
        from = this.#upstream.pushed;
        return waiting()
          .slice(0, limit)
          .map(({ entry }) => entry);
      },
      unsent: async () => waiting().length,
      settle: async (settled) => {
        // Meanwhile the other hub lost its store, and everything is to be sent once more.
        if (this.#upstream.pushed < from) return;
        for (const { entry, result } of settled) {
          // A hub stamps nothing anew: it offers again what the other's clock has not reached.
          if (result.outcome === "refused" && result.reason === "ahead") return;
          if (result.outcome === "refused" || result.hlc) this.conflictsBetweenHubs += 1;
          this.#upstream.pushed = Math.max(this.#upstream.pushed, this.#byKey.get(keyOf(entry))?.offset ?? 0);
        }
      },
      cursor: async () => this.#upstream.cursor,
      takeIn: async (entries, cursor) => {
        if (this.#upstream.cursor?.epoch !== cursor.epoch) this.#upstream.pushed = 0;
        for (const entry of entries) {
          const other = this.#byKey.get(keyOf(entry));
          if (!other) this.#append(entry, upstream);
          else if (likenessOf(other.entry, entry) !== "identical") this.conflictsBetweenHubs += 1;
        }
        this.#upstream.cursor = cursor;
        this.#tell();
      },
      watch: (onChange) => {
        this.#watchers.add(onChange);
        return () => this.#watchers.delete(onChange);
      },
    };
  }

  #taken(entry: Entry, device: string, role: Role, via: string | null): PushResult {
    const { source, id } = entry.wire;
    const refused = (reason: "role" | "other-source" | "ahead" | "conflict"): PushResult => ({
      source,
      id,
      outcome: "refused",
      reason,
      words: reason,
    });
    const refusal = roleRefusal(entry, role, device);
    if (refusal) return refused(refusal.reason);
    if (isTooFarAhead(entry.hlc, this.now)) return refused("ahead");
    const other = this.#byKey.get(keyOf(entry));
    if (other) {
      if (!isSameStatement(other.entry, entry)) return refused("conflict");
      const { hlc } = other.entry;
      return { source, id, outcome: "known", ...(hlc === entry.hlc ? {} : { hlc }) };
    }
    this.#append(entry, via);
    return { source, id, outcome: "accepted" };
  }

  #append(entry: Entry, via: string | null): void {
    const kept = { entry, offset: this.head + 1, via };
    this.#byKey.set(keyOf(entry), kept);
    this.log.push(kept);
    for (const listener of [...this.#listeners]) listener.hear(this.#message(kept, listener.via));
  }

  #message({ entry, offset, via }: Kept, to: string | null): FarMessage {
    const cursor = { epoch: this.#epochName, offset };
    return to !== null && via === to ? { kind: "cursor", cursor } : { kind: "entry", entry, cursor };
  }

  #tell(): void {
    for (const watcher of this.#watchers) watcher();
  }
}
