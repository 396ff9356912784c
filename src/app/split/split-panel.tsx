import type { ReactNode } from "react";
import type { Outline } from "../../core/procedure/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { SidePanel } from "../panel/index.ts";
import { ProofOf } from "./proof-of.tsx";
import type { TakeUp } from "./split-answer-view.tsx";
import { SplitAnswerView } from "./split-answer-view.tsx";
import type { SplitRequest } from "./split-request.ts";
import { useProof, useSplit } from "./use-split.ts";
import "./split.css";

interface SplitPanelProps {
  readonly title: string;
  readonly outline: Outline;
  readonly request: SplitRequest;
  /** What becomes of the answer when somebody takes it up; `null` for whoever may only look. */
  readonly takeUp: TakeUp | null;
  /** By what the answer goes, and when anything is changed. */
  readonly how: string;
  /** Stands above an answer that holds from a PET on. */
  readonly asOf?: (now: Duration) => ReactNode;
  readonly onClose: () => void;
}

/**
 * Who should do what, and in which order, for the earliest finish ([FIT3]): each change with why and what it costs. The
 * plan stays as it is until the reader takes the answer up ([FIT4]).
 */
export function SplitPanel({ title, outline, request, takeUp, how, asOf, onClose }: SplitPanelProps) {
  const { looked, stop } = useSplit(request);
  const proof = useProof(request);
  const proven = typeof proof.looked === "object" ? proof.looked : null;
  const searched = typeof looked === "object" ? looked : null;
  const found = proven?.answer ? proven : searched?.answer ? searched : null;
  return (
    <SidePanel title={title} onClose={onClose}>
      {looked === "working" && (
        <p role="status" className="page-message">
          {words("split/working")}
        </p>
      )}
      {looked !== "working" && !found && (
        <p role="alert" className="page-message">
          {words("split/failed")}
        </p>
      )}
      {found && asOf?.(found.now)}
      {found?.answer && (
        <SplitAnswerView
          outline={outline}
          answer={found.answer}
          isLast={found.isLast}
          takeUp={takeUp}
          onStop={stop}
          onKeep={onClose}
        >
          <ProofOf
            answer={found.answer}
            isLast={found.isLast}
            isProving={proof.looked === "working"}
            isMissing={proof.looked === "no-solver" || proof.looked === "failed"}
            onProve={proof.prove}
            onStop={proof.stop}
          />
        </SplitAnswerView>
      )}
      <p className="hint">{how}</p>
      <p className="hint">{words("follow/advises")}</p>
    </SidePanel>
  );
}
