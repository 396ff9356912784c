import { useEffect } from "react";
import type { OpenManuscript } from "./use-manuscript.ts";

const isTyping = (target: EventTarget | null) =>
  target instanceof HTMLElement && target.matches("input, textarea, select");

/** Undo and redo by keys, wherever the focus is but in a text that is being typed, which has an undo of its own. */
export function useUndoKeys(open: Pick<OpenManuscript, "undo" | "redo">): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || isTyping(event.target)) return;
      const key = event.key.toLowerCase();
      if (key === "z" && !event.shiftKey) open.undo();
      else if (key === "y" || (key === "z" && event.shiftKey)) open.redo();
      else return;
      event.preventDefault();
    };
    document.addEventListener("keydown", onKey);
    return () => document.removeEventListener("keydown", onKey);
  }, [open]);
}
