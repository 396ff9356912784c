import { useState } from "react";
import { between, clockText } from "../../core/units/index.ts";
import { SidePanel } from "./side-panel.tsx";
import type { WalkPanelProps } from "./walk-panel-props.ts";

/** The notes of the walk, and a new one. */
export function NotesPanel({ state, actions, onClose }: WalkPanelProps) {
  const [text, setText] = useState("");
  const { ledger } = state;
  const keep = async () => {
    await actions.note(text.trim(), null);
    setText("");
  };
  return (
    <SidePanel title="Notes" onClose={onClose}>
      <label className="field">
        <span>A note on the walk</span>
        <textarea rows={3} value={text} onChange={(event) => setText(event.target.value)} />
      </label>
      <div className="panel-acts">
        <button
          type="button"
          className="plain-button"
          disabled={text.trim() === ""}
          onClick={() => void keep()}
        >
          Keep the note
        </button>
      </div>
      {ledger.notes.length === 0 ? (
        <p className="hint">No notes yet. A note on one step is made at the step.</p>
      ) : (
        <ul className="plain-list">
          {ledger.notes
            .toArray()
            .reverse()
            .map((note) => (
              <li key={`${note.at} ${note.text}`}>
                <b>
                  {ledger.petZero === null ? "before the start" : clockText(between(ledger.petZero, note.at))}
                </b>{" "}
                {note.step !== null && `step ${ledger.inForce.outline.step(note.step)?.number}: `}
                {note.text}
              </li>
            ))}
        </ul>
      )}
    </SidePanel>
  );
}
