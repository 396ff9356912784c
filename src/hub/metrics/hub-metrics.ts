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

/** The figures of one hub process. They name no walk and no device: anybody may read them. */
export class HubMetrics implements IntakeListener {
  readonly #registry = new Registry();
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
        const lags = links().flatMap(({ sentUpTo, unsent }) =>
          unsent > 0 && sentUpTo !== null ? [(now() - sentUpTo) / 1000] : [],
        );
        this.set(Math.max(0, ...lags));
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

  /** The figures in the Prometheus text format. */
  text(): Promise<string> {
    return this.#registry.metrics();
  }

  get contentType(): string {
    return this.#registry.contentType;
  }
}
