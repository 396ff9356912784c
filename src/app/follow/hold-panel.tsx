import { useState } from "react";
import { SidePanel } from "./side-panel.tsx";
import type { WalkPanelProps } from "./walk-panel-props.ts";

/** Calls a hold: the whole walk stops, the clock runs on. */
export function HoldPanel({ actions, onClose }: WalkPanelProps) {
  const [reason, setReason] = useState("");
  return (
    <SidePanel title="Call a hold" onClose={onClose}>
      <p className="hint">The whole walk stops where it is; the clock runs on.</p>
      <label className="field">
        <span>Reason (may be left out)</span>
        <input value={reason} onChange={(event) => setReason(event.target.value)} />
      </label>
      <div className="panel-acts">
        <button
          type="button"
          className="done-button"
          onClick={() => void actions.hold(reason.trim()).then(onClose)}
        >
          <span className="done-word">Hold</span>
        </button>
      </div>
    </SidePanel>
  );
}
