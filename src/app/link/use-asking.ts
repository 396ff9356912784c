import { useState } from "react";
import type { JoinOutcome } from "../../io/link/index.ts";
import { inWords } from "../../words/index.ts";
import { storedFollower, storeFollower } from "../session/index.ts";

/** The state of a form that sends the hub a code and the name of the tablet's user. */
export interface Asking {
  readonly code: string;
  readonly setCode: (code: string) => void;
  readonly name: string;
  readonly setName: (name: string) => void;
  readonly isAsking: boolean;
  /** Why the hub did not do it; `null` when there is no problem. */
  readonly problem: string | null;
  readonly submit: () => Promise<void>;
}

/** The answers of the hub with which the form has succeeded. */
type Granted = Exclude<JoinOutcome, { kind: "refused" | "unreachable" }>;

/** Keeps what is typed into such a form and asks the hub when it is submitted. The name is stored for the next time. */
export function useAsking(
  given: string,
  ask: (code: string, name: string) => Promise<JoinOutcome>,
  onGranted: (outcome: Granted) => void = () => {},
): Asking {
  const [code, setCode] = useState(given);
  const [name, setName] = useState(() => storedFollower() ?? "");
  const [isAsking, setIsAsking] = useState(false);
  const [problem, setProblem] = useState<string | null>(null);
  const submit = async () => {
    setIsAsking(true);
    setProblem(null);
    const outcome = await ask(code.trim(), name.trim());
    setIsAsking(false);
    if ("words" in outcome) return setProblem(inWords(outcome.words));
    storeFollower(name.trim());
    onGranted(outcome);
  };
  return { code, setCode, name, setName, isAsking, problem, submit };
}
