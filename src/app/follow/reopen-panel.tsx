import { useState } from "react";
import { words } from "../../words/index.ts";
import { SidePanel } from "../panel/index.ts";
import type { FollowActions } from "./follow-actions.ts";

/** Lets a closed walk go on, with a reason; the clock runs on as if it had not been closed ([OFF5]). */
export function ReopenPanel({
  actions,
  onClose,
}: {
  readonly actions: FollowActions;
  readonly onClose: () => void;
}) {
  const [reason, setReason] = useState("");
  return (
    <SidePanel title={words("panel/reopen-walk")} onClose={onClose}>
      <p className="hint">{words("panel/reopen-means")}</p>
      <label className="field">
        <span>{words("panel/reason-needed")}</span>
        <textarea rows={2} value={reason} onChange={(event) => setReason(event.target.value)} />
      </label>
      <div className="panel-acts">
        <button
          type="button"
          className="done-button"
          disabled={reason.trim() === ""}
          onClick={() => void actions.reopenWalk(reason.trim()).then(onClose)}
        >
          <span className="done-word">{words("panel/reopen-walk")}</span>
        </button>
      </div>
    </SidePanel>
  );
}
