import { useState } from "react";
import { between, clockText } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { SidePanel } from "../panel/index.ts";
import type { WalkPanelProps } from "./walk-panel-props.ts";

/** The notes of the walk, and a field for adding one. */
export function NotesPanel({ state, actions, onClose }: WalkPanelProps) {
  const [text, setText] = useState("");
  const { ledger } = state;
  const keep = async () => {
    await actions.note(text.trim(), null);
    setText("");
  };
  return (
    <SidePanel title={words("panel/notes")} onClose={onClose}>
      <label className="field">
        <span>{words("panel/note-on-walk")}</span>
        <textarea rows={3} value={text} onChange={(event) => setText(event.target.value)} />
      </label>
      <div className="panel-acts">
        <button
          type="button"
          className="plain-button"
          disabled={text.trim() === ""}
          onClick={() => void keep()}
        >
          {words("panel/keep-note")}
        </button>
      </div>
      {ledger.notes.length === 0 ? (
        <p className="hint">{words("panel/no-notes")}</p>
      ) : (
        <ul className="plain-list">
          {ledger.notes
            .toArray()
            .reverse()
            .map((note) => (
              <li key={`${note.at} ${note.text}`}>
                <b>
                  {ledger.petZero === null
                    ? words("panel/before-start")
                    : clockText(between(ledger.petZero, note.at))}
                </b>{" "}
                {note.step === null
                  ? note.text
                  : words("panel/note-of-step", {
                      step: String(ledger.inForce.outline.step(note.step)?.number),
                      text: note.text,
                    })}
              </li>
            ))}
        </ul>
      )}
    </SidePanel>
  );
}
