import { useEffect, useEffectEvent, useRef } from "react";
import type { Finding } from "../../core/procedure/index.ts";
import { words } from "../../words/index.ts";
import { TextEditor } from "./text-editor.ts";
import "./text-pane.css";

export interface TextPaneProps {
  /** The text of the procedure, as the rest of the screen has it. */
  readonly text: string;
  /** What was typed and cannot be read yet, which is shown in place of the text; `null` where the two are in step. */
  readonly unread: string | null;
  /** Called with all that stands in the pane after each change by whoever types. */
  readonly onTyped: (text: string) => void;
  readonly findings: readonly Finding[];
  /** The part that is to be brought into view, as a JSON Pointer; `null` for none. A new object with the same pointer goes there again. */
  readonly goTo: { readonly pointer: string } | null;
}

/** The file of a procedure as JSON, to be read and typed in ([WRT6]). It is loaded when it is opened. */
export function TextPane({ text, unread, onTyped, findings, goTo }: TextPaneProps) {
  const parent = useRef<HTMLDivElement>(null);
  const editor = useRef<TextEditor | null>(null);
  const shown = unread ?? text;
  const typed = useEffectEvent(onTyped);
  const first = useEffectEvent(() => shown);
  useEffect(() => {
    if (!parent.current) return;
    const made = new TextEditor({
      parent: parent.current,
      text: first(),
      label: words("text-pane/name"),
      onTyped: (next) => typed(next),
    });
    editor.current = made;
    return () => {
      editor.current = null;
      made.end();
    };
  }, []);
  useEffect(() => editor.current?.setText(shown), [shown]);
  useEffect(() => editor.current?.setFindings(findings), [findings]);
  useEffect(() => {
    if (goTo) editor.current?.goTo(goTo.pointer);
  }, [goTo]);
  return (
    <section className="text-pane" aria-label={words("text-pane/title")}>
      <p className="hint" role="status">
        {words(unread === null ? "text-pane/in-step" : "text-pane/unread")}
      </p>
      <div ref={parent} className="text-pane-editor" />
      <p className="hint">{words("text-pane/keys")}</p>
    </section>
  );
}
