import type { RiskModel } from "../../core/plan/index.ts";
import { sampleRisk } from "../../core/plan/index.ts";

/** A request to the worker, which answers with the risk. */
export interface RiskRequest {
  readonly model: RiskModel;
  readonly samples: number;
  readonly seed: number;
}

self.addEventListener("message", ({ data }: MessageEvent<RiskRequest>) => {
  self.postMessage(sampleRisk(data.model, data.samples, data.seed));
});
