import { useState } from "react";
import { SidePanel } from "./side-panel.tsx";
import type { WalkPanelProps } from "./walk-panel-props.ts";

const ENDS = [
  { end: "complete", title: "Complete", words: "Everything that had to be done is done." },
  {
    end: "terminated",
    title: "Terminated",
    words: "Work was stopped, made safe, and the crew came back in order.",
  },
  { end: "aborted", title: "Aborted", words: "The crew came back at once by the shortest way." },
] as const;

/** Asks how the walk ended, and then once more before it is closed. */
export function ClosePanel({
  state,
  actions,
  onClose,
  onClosed,
}: WalkPanelProps & { readonly onClosed: () => void }) {
  const [end, setEnd] = useState<(typeof ENDS)[number]["end"] | null>(null);
  const [reason, setReason] = useState("");
  const left = state.lanes.filter(({ status }) => status !== "finished").length;
  const close = async () => {
    if (end === null) return;
    await actions.close(end, reason.trim());
    onClosed();
  };
  return (
    <SidePanel title="How did the walk end?" onClose={onClose}>
      {left > 0 && (
        <p className="hint">
          {left === 1 ? "One lane still has" : `${left} lanes still have`} steps that are not complete.
        </p>
      )}
      <fieldset className="choices">
        <legend className="heard-only">How the walk ended</legend>
        {ENDS.map((choice) => (
          <label key={choice.end} className="choice">
            <input type="radio" name="end" checked={end === choice.end} onChange={() => setEnd(choice.end)} />
            <span>
              <b>{choice.title}</b> {choice.words}
            </span>
          </label>
        ))}
      </fieldset>
      <label className="field">
        <span>Reason or remark</span>
        <textarea rows={2} value={reason} onChange={(event) => setReason(event.target.value)} />
      </label>
      <div className="panel-acts">
        <button type="button" className="done-button" disabled={end === null} onClick={() => void close()}>
          <span className="done-word">{end === null ? "Choose how it ended" : `Close the walk: ${end}`}</span>
        </button>
      </div>
    </SidePanel>
  );
}
