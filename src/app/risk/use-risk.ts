import { useEffect, useRef, useState } from "react";
import type { Risk, RiskModel } from "../../core/plan/index.ts";
import { RiskSampler } from "./risk-sampler.ts";

/**
 * The delay between a model's arrival and its sampling, in ms. Sampling must not compete with drawing what was just
 * entered.
 */
const AFTER = 1500;

/** What a model is about, and when it is sampled. */
interface RiskSubject {
  /** An answer about another subject is not shown. */
  readonly subject?: unknown;
  /** The delay before it is sampled, in ms. */
  readonly after?: number;
}

/**
 * The risk of a model, sampled in a worker: `null` until the first answer. The last answer stays while a later model of
 * the same subject is sampled.
 */
export function useRisk(
  model: RiskModel | null,
  { subject = null, after = AFTER }: RiskSubject = {},
): Risk | null {
  const [answer, setAnswer] = useState<{ readonly risk: Risk; readonly subject: unknown } | null>(null);
  const sampler = useRef<RiskSampler<unknown> | null>(null);
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
      sampler.current ??= new RiskSampler((risk, of) => setAnswer({ risk, subject: of }));
      sampler.current.ask(model, subject);
    }, after);
    return () => clearTimeout(timer);
  }, [model, subject, after]);
  return model && answer && answer.subject === subject ? answer.risk : null;
}
