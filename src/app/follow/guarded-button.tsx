import type { ReactNode } from "react";
import { useTap } from "./use-tap.ts";
import { useJudgeTap } from "./use-tap-guard.ts";

/** A button that enters something. A tap on it counts only when it can have been meant for it ([OFF1]). */
export function GuardedButton({
  onTap,
  wide = false,
  children,
}: {
  readonly onTap: () => void;
  /** True for a button of the size that marks a step. */
  readonly wide?: boolean;
  readonly children: ReactNode;
}) {
  const judge = useJudgeTap();
  const tap = useTap((control, point) => {
    if (judge(control, point)) onTap();
  });
  return (
    <button type="button" className={wide ? "done-button" : "plain-button"} data-guarded {...tap}>
      {wide ? <span className="done-word">{children}</span> : children}
    </button>
  );
}
