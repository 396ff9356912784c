import { useState } from "react";
import { words } from "../../words/index.ts";
import { SidePanel } from "./side-panel.tsx";
import type { WalkPanelProps } from "./walk-panel-props.ts";

const ENDS = ["complete", "terminated", "aborted"] as const;

/** Asks how the walk ended, and asks for confirmation before it is closed. */
export function ClosePanel({
  state,
  actions,
  onClose,
  onClosed,
}: WalkPanelProps & { readonly onClosed: () => void }) {
  const [end, setEnd] = useState<(typeof ENDS)[number] | null>(null);
  const [reason, setReason] = useState("");
  const left = state.lanes.filter(({ status }) => status !== "finished").length;
  const close = async () => {
    if (end === null) return;
    await actions.close(end, reason.trim());
    onClosed();
  };
  return (
    <SidePanel title={words("panel/how-it-ended-question")} onClose={onClose}>
      {left > 0 && <p className="hint">{words("panel/lanes-left", { count: left })}</p>}
      <fieldset className="choices">
        <legend className="heard-only">{words("panel/how-it-ended")}</legend>
        {ENDS.map((choice) => (
          <label key={choice} className="choice">
            <input type="radio" name="end" checked={end === choice} onChange={() => setEnd(choice)} />
            <span>
              <b>{words(`panel/end-${choice}`)}</b> {words(`panel/end-${choice}-means`)}
            </span>
          </label>
        ))}
      </fieldset>
      <label className="field">
        <span>{words("panel/reason-or-remark")}</span>
        <textarea rows={2} value={reason} onChange={(event) => setReason(event.target.value)} />
      </label>
      <div className="panel-acts">
        <button type="button" className="done-button" disabled={end === null} onClick={() => void close()}>
          <span className="done-word">
            {end === null ? words("panel/choose-end") : words(`panel/close-${end}`)}
          </span>
        </button>
      </div>
    </SidePanel>
  );
}
