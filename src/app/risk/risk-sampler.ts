import type { Risk, RiskModel } from "../../core/plan/index.ts";
import type { RiskRequest } from "./risk-worker.ts";

const SAMPLES = 10_000;
const SEED = 1;

/**
 * Samples models in a worker, one at a time. While a model is sampled, only the latest of the models that arrive is
 * kept waiting, so that a model that changes often does not pile up work.
 */
export class RiskSampler<Subject> {
  readonly #worker = new Worker(new URL("./risk-worker.ts", import.meta.url), { type: "module" });
  #waiting: { readonly model: RiskModel; readonly subject: Subject } | null = null;
  /** What the model is about that is being sampled; `null` while none is. */
  #asked: { readonly subject: Subject } | null = null;

  /** `onRisk` is told each answer, and what it is about. */
  constructor(onRisk: (risk: Risk, subject: Subject) => void) {
    this.#worker.addEventListener("message", ({ data }: MessageEvent<Risk>) => {
      const asked = this.#asked;
      this.#asked = null;
      if (asked) onRisk(data, asked.subject);
      this.#next();
    });
  }

  /** Asks for the risk of a model. It replaces a model that is still waiting. */
  ask(model: RiskModel, subject: Subject): void {
    this.#waiting = { model, subject };
    this.#next();
  }

  /** Ends the worker. No further answer comes. */
  end(): void {
    this.#worker.terminate();
  }

  #next(): void {
    if (this.#asked || !this.#waiting) return;
    const request: RiskRequest = { model: this.#waiting.model, samples: SAMPLES, seed: SEED };
    this.#asked = this.#waiting;
    this.#waiting = null;
    this.#worker.postMessage(request);
  }
}
