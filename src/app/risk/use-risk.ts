import { useEffect, useRef, useState } from "react";
import type { Risk, RiskModel } from "../../core/plan/index.ts";
import { RiskSampler } from "./risk-sampler.ts";

/** The risk of a model, sampled in a worker: `null` until the first answer; the last one stands while a newer is sampled. */
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
    sampler.current ??= new RiskSampler(setRisk);
    sampler.current.ask(model);
  }, [model]);
  return model ? risk : null;
}
