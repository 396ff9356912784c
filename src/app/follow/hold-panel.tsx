import { useState } from "react";
import { words } from "../../words/index.ts";
import { SidePanel } from "../panel/index.ts";
import type { WalkPanelProps } from "./walk-panel-props.ts";

/** Calls a hold: the whole walk stops while the clock runs on. */
export function HoldPanel({ actions, onClose }: WalkPanelProps) {
  const [reason, setReason] = useState("");
  return (
    <SidePanel title={words("panel/call-hold")} onClose={onClose}>
      <p className="hint">{words("panel/hold-means")}</p>
      <label className="field">
        <span>{words("panel/reason-optional")}</span>
        <input value={reason} onChange={(event) => setReason(event.target.value)} />
      </label>
      <div className="panel-acts">
        <button
          type="button"
          className="done-button"
          onClick={() => void actions.hold(reason.trim()).then(onClose)}
        >
          <span className="done-word">{words("panel/hold")}</span>
        </button>
      </div>
    </SidePanel>
  );
}
