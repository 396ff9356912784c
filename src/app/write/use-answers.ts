import { useEffect, useMemo, useRef, useState } from "react";
import type { RiskModel } from "../../core/plan/index.ts";
import type { Finding } from "../../core/procedure/index.ts";
import type { CrewOffers } from "../../core/write/index.ts";
import type { OffersAnswer, OffersRequest, WriteAnswer, WriteRequest, WrittenPlan } from "./answers.ts";

/** Something that is known of a manuscript. */
export interface Answer<Value> {
  readonly value: Value;
  /** True while it is of an earlier state of the manuscript: it is never shown as one of what is written now. */
  readonly isOld: boolean;
}

/** What is known of a manuscript. Until an answer to the last question comes, the one before it stands. */
export interface Answers {
  /** `null` until the first answer. */
  readonly plan: Answer<WrittenPlan> | null;
  readonly findings: Answer<readonly Finding[]> | null;
  /** The share of samples within the limit; `null` without a limit or a plan. */
  readonly within: Answer<number | null> | null;
  /**
   * What everybody can do when the step that was asked about begins, by the plan; of `null` where that cannot be told. `null` until the
   * first answer about that step.
   */
  readonly offers: Answer<readonly CrewOffers[] | null> | null;
  /** True while something is of an earlier state of the manuscript, or mends are still being tried. */
  readonly isBehind: boolean;
  /** True when they cannot be had on this device. */
  readonly isBroken: boolean;
}

/** A plan whose chance is to be sampled. */
export interface ChanceRequest {
  readonly number: number;
  readonly model: RiskModel;
}

/** The share of samples within the limit. */
export interface ChanceAnswer {
  readonly number: number;
  readonly within: number | null;
}

interface Known {
  readonly plan: { readonly of: number; readonly value: WrittenPlan } | null;
  readonly findings: { readonly of: number; readonly value: readonly Finding[] } | null;
  readonly within: { readonly of: number; readonly value: number | null } | null;
  readonly offers: OffersAnswer | null;
  /** The last question of which the mends were tried. */
  readonly tried: number;
}

const NOTHING: Known = { plan: null, findings: null, within: null, offers: null, tried: 0 };

type AnyAnswer = WriteAnswer | OffersAnswer | ChanceAnswer;

function taken(known: Known, answer: AnyAnswer): Known {
  const { number: of } = answer;
  if ("offers" in answer) return { ...known, offers: answer };
  if ("within" in answer) {
    // A later text may have been told to have no chance meanwhile.
    const isLate = known.within !== null && known.within.of > of;
    return isLate ? known : { ...known, within: { of, value: answer.within } };
  }
  if ("findings" in answer) {
    const { findings: value, isTried } = answer;
    return { ...known, findings: { of, value }, tried: isTried ? of : known.tried };
  }
  const plan = { of, value: answer.plan };
  return answer.model ? { ...known, plan } : { ...known, plan, within: { of, value: null } };
}

/** The two workers: one plans and checks, the other samples plans for their chance meanwhile. */
type WorkerName = "writing" | "chance";

interface Told {
  readonly onAnswer: (answer: AnyAnswer) => void;
  /** Called with `false` when a worker has answered, with `true` when it has failed. */
  readonly onFailing: (worker: WorkerName, isFailing: boolean) => void;
}

function startWorkers({ onAnswer, onFailing }: Told) {
  const writing = new Worker(new URL("./write-worker.ts", import.meta.url), { type: "module" });
  const chance = new Worker(new URL("./chance-worker.ts", import.meta.url), { type: "module" });
  // While a plan is sampled only the latest that comes waits.
  let waiting: ChanceRequest | null = null;
  let isSampling = false;
  const sample = () => {
    if (isSampling || !waiting) return;
    isSampling = true;
    chance.postMessage(waiting);
    waiting = null;
  };
  writing.addEventListener("message", ({ data }: MessageEvent<WriteAnswer | OffersAnswer>) => {
    onFailing("writing", false);
    onAnswer(data);
    if (!("plan" in data)) return;
    waiting = data.model && { number: data.number, model: data.model };
    sample();
  });
  chance.addEventListener("message", ({ data }: MessageEvent<ChanceAnswer>) => {
    onFailing("chance", false);
    onAnswer(data);
    isSampling = false;
    sample();
  });
  writing.addEventListener("error", () => onFailing("writing", true));
  chance.addEventListener("error", () => {
    onFailing("chance", true);
    isSampling = false;
    sample();
  });
  return {
    ask: (request: WriteRequest | OffersRequest) => writing.postMessage(request),
    end: () => {
      writing.terminate();
      chance.terminate();
    },
  };
}

/** What is asked about a manuscript. */
interface Asked extends Omit<WriteRequest, "number"> {
  /** The step of which it is asked what everybody can do when it begins; `null` for none. */
  readonly step: string | null;
}

/**
 * Asks workers about a manuscript after every gesture ([WRT4]). Each part is told as it comes; a question that comes while one is being
 * answered takes its place.
 */
export function useAnswers({ text, start, light, isDrawn, step }: Asked): Answers {
  const [known, setKnown] = useState(NOTHING);
  const [failing, setFailing] = useState(NONE_FAILING);
  const asked = useRef(0);
  const workers = useRef<ReturnType<typeof startWorkers> | null>(null);
  const question = useMemo(() => ({ text, start, light, isDrawn }), [text, start, light, isDrawn]);
  // One that has no number yet has no answer either: what is known is of before from its first drawing on.
  const numbers = useRef(new WeakMap<typeof question, number>());

  useEffect(() => {
    const started = startWorkers({
      onAnswer: (answer) => setKnown((before) => taken(before, answer)),
      onFailing: (worker, is) =>
        setFailing((before) => (before[worker] === is ? before : { ...before, [worker]: is })),
    });
    workers.current = started;
    return () => {
      workers.current = null;
      started.end();
    };
  }, []);

  useEffect(() => {
    asked.current += 1;
    numbers.current.set(question, asked.current);
    workers.current?.ask({ number: asked.current, ...question });
  }, [question]);

  useEffect(() => {
    const of = numbers.current.get(question);
    if (step !== null && of !== undefined) workers.current?.ask({ number: of, step });
  }, [question, step]);

  const latest = numbers.current.get(question);
  const answer = <Value>(part: { readonly of: number; readonly value: Value } | null): Answer<Value> | null =>
    part && { value: part.value, isOld: part.of !== latest };
  const [plan, findings, within] = [answer(known.plan), answer(known.findings), answer(known.within)];
  const offers =
    known.offers?.step === step ? answer({ of: known.offers.number, value: known.offers.offers }) : null;
  const isOld = (part: Answer<unknown> | null) => part === null || part.isOld;
  return {
    plan,
    findings,
    within,
    offers,
    isBehind: isOld(plan) || isOld(findings) || isOld(within) || known.tried !== latest,
    isBroken: failing.writing || failing.chance,
  };
}

const NONE_FAILING: Readonly<Record<WorkerName, boolean>> = { writing: false, chance: false };
