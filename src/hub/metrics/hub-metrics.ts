import { Counter, Gauge, Histogram, Registry } from "prom-client";
import { words } from "../../words/index.ts";
import type { IntakeListener } from "../entries/index.ts";

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

  /** `followers` tells how many streams are open. */
  constructor(followers: () => number) {
    const registers = [this.#registry];
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
    const appended = await append();
    stop();
    return appended;
  }

  /** The figures in the Prometheus text format. */
  text(): Promise<string> {
    return this.#registry.metrics();
  }

  get contentType(): string {
    return this.#registry.contentType;
  }
}
