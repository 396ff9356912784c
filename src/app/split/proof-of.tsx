import type { SplitAnswer } from "../../core/split/index.ts";
import { secondProofMessage } from "../../core/split/index.ts";
import { inWords, words } from "../../words/index.ts";

interface ProofOfProps {
  readonly answer: SplitAnswer;
  /** True when it is looked no further. */
  readonly isLast: boolean;
  readonly isProving: boolean;
  /** True when what proves it could not be loaded. */
  readonly isMissing: boolean;
  readonly onProve: () => void;
  readonly onStop: () => void;
}

/** The second proof of an answer: asked for where the first one leaves it open, under way, or what became of it ([FIT3]). */
export function ProofOf({ answer, isLast, isProving, isMissing, onProve, onStop }: ProofOfProps) {
  const { second, isProven, status } = answer;
  if (second) return <p className="hint">{inWords(secondProofMessage(second))}</p>;
  if (isProven || !isLast || status === "no-plan") return null;
  return (
    <div className="split-going-on">
      {isProving && (
        <p role="status" className="hint">
          {words("split/proving")}
        </p>
      )}
      {isMissing && !isProving && (
        <p role="status" className="hint">
          {words("split/no-solver")}
        </p>
      )}
      <button type="button" className="plain-button" onClick={isProving ? onStop : onProve}>
        {words(isProving ? "split/stop" : "split/prove")}
      </button>
    </div>
  );
}
