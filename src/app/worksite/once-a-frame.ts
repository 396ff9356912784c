/** An act that is done at once, and then at most once for each picture of the screen, however often it is asked for. */
export interface OnceAFrame {
  readonly ask: () => void;
  /** What was asked for and not done yet is left. */
  readonly stop: () => void;
}

/** Paces an act: the first time it is asked for it is done, and what is asked for until the next picture is done once, then. */
export function onceAFrame(act: () => void): OnceAFrame {
  let frame: number | null = null;
  let isAsked = false;
  const run = () => {
    isAsked = false;
    frame = requestAnimationFrame(() => {
      frame = null;
      if (isAsked) run();
    });
    act();
  };
  return {
    ask: () => {
      if (frame === null) run();
      else isAsked = true;
    },
    stop: () => {
      if (frame !== null) cancelAnimationFrame(frame);
      [frame, isAsked] = [null, false];
    },
  };
}
