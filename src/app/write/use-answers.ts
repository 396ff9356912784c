import { useEffect, useRef, useState } from "react";
import type { Finding } from "../../core/procedure/index.ts";
import type { WriteAnswer, WriteRequest, WrittenPlan } from "./answers.ts";

/** What is known of a manuscript. Until an answer to the last question comes, the one before it stands. */
export interface Answers {
  /** `null` until the first answer. */
  readonly plan: WrittenPlan | null;
  readonly findings: readonly Finding[] | null;
  /** The share of samples within the limit; `null` without a limit or a plan, or until it is there. */
  readonly within: number | null;
  /** True while something is of an earlier state of the manuscript. */
  readonly isBehind: boolean;
  /** True when they cannot be had on this device. */
  readonly isBroken: boolean;
}

interface Known {
  readonly plan: { readonly of: number; readonly value: WrittenPlan } | null;
  readonly findings: { readonly of: number; readonly value: readonly Finding[] } | null;
  readonly within: { readonly of: number; readonly value: number | null } | null;
}

const NOTHING: Known = { plan: null, findings: null, within: null };

function taken(known: Known, answer: WriteAnswer): Known {
  const { number: of } = answer;
  if ("plan" in answer) return { ...known, plan: { of, value: answer.plan } };
  if ("findings" in answer) return { ...known, findings: { of, value: answer.findings } };
  return { ...known, within: { of, value: answer.within } };
}

/**
 * Asks a worker about a manuscript after every gesture ([WRT4]). A question that comes while one is being answered waits; only the latest
 * does.
 */
export function useAnswers({ text, start, light }: Omit<WriteRequest, "number">): Answers {
  const [known, setKnown] = useState(NOTHING);
  const [isBroken, setIsBroken] = useState(false);
  const asked = useRef(0);
  const ask = useRef<((request: WriteRequest) => void) | null>(null);
  const [latest, setLatest] = useState(0);

  useEffect(() => {
    const worker = new Worker(new URL("./write-worker.ts", import.meta.url), { type: "module" });
    let busy = false;
    let waiting: WriteRequest | null = null;
    const next = () => {
      if (busy || !waiting) return;
      busy = true;
      worker.postMessage(waiting);
      waiting = null;
    };
    worker.addEventListener("message", ({ data }: MessageEvent<WriteAnswer>) => {
      setKnown((before) => taken(before, data));
      setIsBroken(false);
      if (!("within" in data)) return;
      busy = false;
      next();
    });
    worker.addEventListener("error", () => {
      setIsBroken(true);
      // The next question may be one that it can answer.
      busy = false;
      next();
    });
    ask.current = (request) => {
      waiting = request;
      next();
    };
    return () => {
      ask.current = null;
      worker.terminate();
    };
  }, []);

  useEffect(() => {
    asked.current += 1;
    setLatest(asked.current);
    ask.current?.({ number: asked.current, text, start, light });
  }, [text, start, light]);

  const isOf = (part: { readonly of: number } | null) => part !== null && part.of === latest;
  return {
    plan: known.plan?.value ?? null,
    findings: known.findings?.value ?? null,
    within: known.within?.value ?? null,
    isBehind: !isOf(known.plan) || !isOf(known.findings) || !isOf(known.within),
    isBroken,
  };
}
