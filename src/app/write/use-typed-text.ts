import { useCallback, useEffect, useRef } from "react";

/** How long nothing is typed until the text counts, in ms: a word is one gesture, and is kept within a second all the same. */
const RESTS_FOR = 400;

/** Takes a text as it is typed, and tells it once nothing more is typed for a moment, or what shows it is left ([WRT1]). */
export function useTypedText(onText: (text: string) => void): (text: string) => void {
  const waiting = useRef<{ readonly text: string; readonly timer: ReturnType<typeof setTimeout> } | null>(
    null,
  );
  const latest = useRef(onText);
  latest.current = onText;
  const tell = useCallback(() => {
    const typed = waiting.current;
    if (!typed) return;
    clearTimeout(typed.timer);
    waiting.current = null;
    latest.current(typed.text);
  }, []);
  useEffect(() => tell, [tell]);
  return useCallback(
    (text: string) => {
      if (waiting.current) clearTimeout(waiting.current.timer);
      waiting.current = { text, timer: setTimeout(tell, RESTS_FOR) };
    },
    [tell],
  );
}
