import { useEffect, useRef, useState } from "react";
import type { Risk, RiskModel } from "../../core/plan/index.ts";
import { RiskSampler } from "./risk-sampler.ts";

/** Sampling waits so long after a model came, in ms: it must not compete with the screen that shows what was just entered. */
const AFTER = 1500;

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
    const timer = setTimeout(() => {
      sampler.current ??= new RiskSampler(setRisk);
      sampler.current.ask(model);
    }, AFTER);
    return () => clearTimeout(timer);
  }, [model]);
  return model ? risk : null;
}
