import { KeptDraws, sampleRisk } from "../../core/plan/index.ts";
import type { ChanceAnswer, ChanceRequest } from "./use-answers.ts";

const SAMPLES = 10_000;
const SEED = 1;

/** Most steps last as long as in the manuscript before, so that their draws are kept. */
const draws = new KeptDraws();

self.addEventListener("message", ({ data: { number, model } }: MessageEvent<ChanceRequest>) => {
  const { withinLimit } = sampleRisk(model, SAMPLES, SEED, { influence: false, draws });
  const answer: ChanceAnswer = { number, within: withinLimit };
  self.postMessage(answer);
});
