import { Counter, Gauge, Histogram, Registry } from "prom-client";
import type { FarHub } from "../../core/link/index.ts";
import type { Instant } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import type { IntakeListener } from "../entries/index.ts";

/** What the figures are taken from. */
export interface MetricSources {
  /** The room of the disk that the log is on, in bytes; `null` where the log is elsewhere. */
  readonly room: () => Promise<{ readonly free: number; readonly size: number } | null>;
  readonly followers: () => number;
  readonly links: () => readonly FarHub[];
  readonly now: () => Instant;
}

/** The figures of one hub process. They name no walk and no device, and other hubs only to the owner: anybody may read the rest. */
export class HubMetrics implements IntakeListener {
  readonly #registry = new Registry();
  /** What names other hubs, which is for the owner alone. */
  readonly #ofHubs = new Registry();
  readonly #entries = new Counter({
    name: "tetherline_entries_total",
    help: words("hub/metric-entries"),
    labelNames: ["outcome"] as const,
    registers: [this.#registry],
  });
  readonly #append = new Histogram({
    name: "tetherline_append_seconds",
    help: words("hub/metric-append"),
    buckets: [0.001, 0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.25, 0.5, 1, 2.5],
    registers: [this.#registry],
  });

  readonly #queue = new Gauge({
    name: "tetherline_appends_under_way",
    help: words("hub/metric-queue"),
    registers: [this.#registry],
  });
  readonly #answers = new Counter({
    name: "tetherline_refused_requests_total",
    help: words("hub/metric-refused"),
    labelNames: ["status"] as const,
    registers: [this.#registry],
  });

  /** `followers` tells how many streams are open, `links` how each link of a walk with another hub stands at `now`. */
  constructor({ followers, links, room, now }: MetricSources) {
    const registers = [this.#registry];
    new Gauge({
      name: "tetherline_disk_bytes",
      help: words("hub/metric-disk"),
      labelNames: ["what"] as const,
      registers,
      async collect() {
        const found = await room();
        if (found) for (const what of ["free", "size"] as const) this.set({ what }, found[what]);
      },
    });
    new Gauge({
      name: "tetherline_links",
      help: words("hub/metric-links"),
      labelNames: ["state"] as const,
      registers,
      collect() {
        for (const state of ["linking", "linked", "refused"] as const) {
          this.set({ state }, links().filter((link) => link.state === state).length);
        }
      },
    });
    new Gauge({
      name: "tetherline_link_unsent",
      help: words("hub/metric-unsent"),
      registers,
      collect() {
        this.set(links().reduce((sum, { unsent }) => sum + unsent, 0));
      },
    });
    new Gauge({
      name: "tetherline_link_lag_seconds",
      help: words("hub/metric-lag"),
      registers,
      collect() {
        this.set(Math.max(0, ...links().map((link) => lagOf(link, now()))));
      },
    });
    new Gauge({
      name: "tetherline_hub_lag_seconds",
      help: words("hub/metric-hub-lag"),
      labelNames: ["hub"] as const,
      registers: [this.#ofHubs],
      collect() {
        this.reset();
        for (const [hub, lags] of lagsByHub(links(), now())) this.set({ hub }, Math.max(...lags));
      },
    });
    new Gauge({
      name: "tetherline_hub_unsent",
      help: words("hub/metric-hub-unsent"),
      labelNames: ["hub"] as const,
      registers: [this.#ofHubs],
      collect() {
        this.reset();
        for (const { name, unsent } of links()) this.inc({ hub: name }, unsent);
      },
    });
    new Gauge({
      name: "tetherline_followers",
      help: words("hub/metric-followers"),
      registers,
      collect() {
        this.set(followers());
      },
    });
    new Gauge({
      name: "tetherline_memory_bytes",
      help: words("hub/metric-memory"),
      registers,
      collect() {
        this.set(process.memoryUsage.rss());
      },
    });
  }

  counted(outcome: string): void {
    this.#entries.inc({ outcome });
  }

  async timed<T>(append: () => Promise<T>): Promise<T> {
    const stop = this.#append.startTimer();
    this.#queue.inc();
    try {
      const appended = await append();
      stop();
      return appended;
    } finally {
      this.#queue.dec();
    }
  }

  /** A request was answered with a status of 400 or above. */
  refused(status: number): void {
    this.#answers.inc({ status });
  }

  /** The figures in the Prometheus text format; those of each hub that this one is linked with only for its owner. */
  async text({ isOwner }: { readonly isOwner: boolean }): Promise<string> {
    const open = await this.#registry.metrics();
    return isOwner ? `${open}\n${await this.#ofHubs.metrics()}` : open;
  }

  get contentType(): string {
    return this.#registry.contentType;
  }
}

/** How far the other side of a link is behind, in seconds: infinitely far where it lacks something and nothing has ever got there. */
function lagOf({ sentUpTo, unsent }: FarHub, now: Instant): number {
  if (unsent === 0) return 0;
  return sentUpTo === null ? Number.POSITIVE_INFINITY : Math.max(0, (now - sentUpTo) / 1000);
}

function lagsByHub(links: readonly FarHub[], now: Instant): ReadonlyMap<string, readonly number[]> {
  const lags = new Map<string, readonly number[]>();
  for (const link of links) lags.set(link.name, [...(lags.get(link.name) ?? []), lagOf(link, now)]);
  return lags;
}
