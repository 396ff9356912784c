import type { Change, Outline } from "../../core/procedure/index.ts";
import { words } from "../../words/index.ts";
import { SidePanel } from "../panel/index.ts";
import { SplitAnswerView } from "./split-answer-view.tsx";
import type { SplitRequest } from "./split-request.ts";
import { useSplit } from "./use-split.ts";
import "./split.css";

interface SplitPanelProps {
  readonly outline: Outline;
  readonly request: SplitRequest;
  /** The revision as which the changes would be saved. */
  readonly revision: string;
  /** Saves the procedure with these changes as that revision. */
  readonly onSave: (changes: readonly Change[]) => void;
  readonly onClose: () => void;
}

/**
 * Who should do what, and in which order, for the earliest finish ([FIT3]): each change with why and what it costs. The
 * plan stays as it is until the reader saves a revision ([FIT4]).
 */
export function SplitPanel({ outline, request, revision, onSave, onClose }: SplitPanelProps) {
  const { looked, stop } = useSplit(request);
  const found = typeof looked === "object" && looked.answer !== null ? looked : null;
  return (
    <SidePanel title={words("split/title")} onClose={onClose}>
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
      {found?.answer && (
        <SplitAnswerView
          outline={outline}
          answer={found.answer}
          isLast={found.isLast}
          revision={revision}
          onStop={stop}
          onKeep={onClose}
          onSave={onSave}
        />
      )}
      <p className="hint">{words("split/how")}</p>
      <p className="hint">{words("follow/advises")}</p>
    </SidePanel>
  );
}
