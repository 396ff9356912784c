import { useEffect, useRef, useState } from "react";

/** How a cell was left: by Enter, by Tab onwards or backwards, by Escape, or for something else on the page. */
export type Left = "enter" | "on" | "back" | "escape" | "away";

interface CellEditorProps {
  readonly label: string;
  readonly text: string;
  /** The value of a text; `null` for what is none. */
  readonly read: (text: string) => unknown;
  readonly onText: (value: unknown) => void;
  readonly onLeft: (how: Left) => void;
}

/**
 * The text of a cell while it is edited: Enter and Tab take it, leaving the cell too; Escape leaves it as it was. What is no value there
 * keeps the cell open, and is not taken where it is left for something else.
 */
export function CellEditor({ label, text, read, onText, onLeft }: CellEditorProps) {
  const [typed, setTyped] = useState(text);
  const input = useRef<HTMLInputElement>(null);
  const isOver = useRef(false);
  useEffect(() => {
    input.current?.focus();
    input.current?.select();
  }, []);
  const isWrong = typed !== text && typed.trim() !== "" && read(typed) === null;
  const take = (how: Left) => {
    if (isOver.current) return;
    isOver.current = true;
    const value = typed === text ? null : read(typed);
    if (value !== null) onText(value);
    onLeft(how);
  };
  return (
    <input
      ref={input}
      aria-label={label}
      className="write-editor"
      enterKeyHint="next"
      autoComplete="off"
      value={typed}
      aria-invalid={isWrong}
      onChange={(event) => setTyped(event.target.value)}
      onBlur={() => take("away")}
      onKeyDown={(event) => {
        event.stopPropagation();
        // Enter ends a word that is being put together, and is no Enter of the cell then.
        if (event.nativeEvent.isComposing) return;
        if (event.key === "Enter" && !isWrong) take("enter");
        if (event.key === "Tab" && !isWrong) {
          event.preventDefault();
          take(event.shiftKey ? "back" : "on");
        }
        if (event.key === "Escape") {
          isOver.current = true;
          onLeft("escape");
        }
      }}
    />
  );
}
