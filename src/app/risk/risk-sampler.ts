import type { Risk, RiskModel } from "../../core/plan/index.ts";
import type { RiskRequest } from "./risk-worker.ts";

const SAMPLES = 10_000;
const SEED = 1;

/**
 * Samples models in a worker, one at a time. While a model is sampled, only the latest of the models that arrive is
 * kept waiting, so that a model that changes often does not pile up work.
 */
export class RiskSampler {
  readonly #worker = new Worker(new URL("./risk-worker.ts", import.meta.url), { type: "module" });
  #waiting: RiskModel | null = null;
  #isBusy = false;

  constructor(onRisk: (risk: Risk) => void) {
    this.#worker.addEventListener("message", ({ data }: MessageEvent<Risk>) => {
      this.#isBusy = false;
      onRisk(data);
      this.#next();
    });
  }

  /** Asks for the risk of a model. It replaces a model that is still waiting. */
  ask(model: RiskModel): void {
    this.#waiting = model;
    this.#next();
  }

  /** Ends the worker. No further answer comes. */
  end(): void {
    this.#worker.terminate();
  }

  #next(): void {
    if (this.#isBusy || !this.#waiting) return;
    const request: RiskRequest = { model: this.#waiting, samples: SAMPLES, seed: SEED };
    this.#waiting = null;
    this.#isBusy = true;
    this.#worker.postMessage(request);
  }
}
