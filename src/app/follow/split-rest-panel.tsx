import { useMemo } from "react";
import type { Change } from "../../core/procedure/index.ts";
import type { Instant } from "../../core/units/index.ts";
import type { Folded, WalkState } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
import { SplitPanel } from "../split/index.ts";
import { useWalkSubject } from "./use-walk-subject.ts";

interface SplitRestPanelProps {
  readonly state: WalkState;
  readonly folded: Folded;
  readonly now: Instant;
  /** Opens an amendment with these changes; `null` where the plan may not be amended. */
  readonly onAmend: ((changes: readonly Change[]) => void) | null;
  readonly onClose: () => void;
}

/** Who should do what of the rest of the walk, from the moment at which the panel was opened until it is asked again. */
export function SplitRestPanel({ state, folded, now, onAmend, onClose }: SplitRestPanelProps) {
  const { subject, outline, hasMovedOn, onAgain } = useWalkSubject(state, folded, now);
  const request = useMemo(() => ({ subject }), [subject]);
  return (
    <SplitPanel
      title={words("split/rest")}
      outline={outline}
      request={request}
      takeUp={onAmend && { says: words("fit/amend"), onTake: onAmend }}
      how={words("split/how-rest")}
      asOf={(pet) => (
        <div className="split-as-of">
          <p className="hint">{words("split/as-of", { now: pet })}</p>
          {hasMovedOn && <p role="status">{words("split/moved-on")}</p>}
          <button type="button" className="plain-button" onClick={onAgain}>
            {words("fit/again")}
          </button>
        </div>
      )}
      onClose={onClose}
    />
  );
}
