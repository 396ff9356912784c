import { useEffect, useRef, useState } from "react";
import type { Risk, RiskModel } from "../../core/plan/index.ts";
import { RiskSampler } from "./risk-sampler.ts";

/**
 * The delay between a model's arrival and its sampling, in ms. Sampling must not compete with drawing what was just
 * entered.
 */
const AFTER = 1500;

/**
 * The risk of a model, sampled in a worker: `null` until the first answer. The last answer stays while a later model is
 * sampled.
 */
export function useRisk(model: RiskModel | null): Risk | null {
  const [risk, setRisk] = useState<Risk | null>(null);
  const sampler = useRef<RiskSampler | null>(null);
  useEffect(
    () => () => {
      sampler.current?.end();
      sampler.current = null;
    },
    [],
  );
  useEffect(() => {
    if (!model) return;
    const timer = setTimeout(() => {
      sampler.current ??= new RiskSampler(setRisk);
      sampler.current.ask(model);
    }, AFTER);
    return () => clearTimeout(timer);
  }, [model]);
  return model ? risk : null;
}
