import type { FocusEvent, RefObject } from "react";
import { useCallback, useLayoutEffect, useRef } from "react";
import type { FollowRow } from "./follow-rows.ts";

/** What the element that holds the list must be told. */
export interface DoneFocus {
  readonly onFocus: (event: FocusEvent<HTMLElement>) => void;
  readonly onBlur: (event: FocusEvent<HTMLElement>) => void;
}

/**
 * Keeps the keyboard in the list: a step marked done folds away with the button that had the focus, which then goes to the
 * next button of the same crew that marks a step done, or else to the line the step has become.
 */
export function useDoneFocus(list: RefObject<HTMLElement | null>, rows: readonly FollowRow[]): DoneFocus {
  const held = useRef<string | null>(null);
  const onFocus = useCallback(({ target }: FocusEvent<HTMLElement>) => {
    held.current = target.closest<HTMLElement>("[data-row]")?.dataset["row"] ?? null;
  }, []);
  const onBlur = useCallback(({ relatedTarget }: FocusEvent<HTMLElement>) => {
    // Nothing takes the focus over when what had it is removed.
    if (relatedTarget) held.current = null;
  }, []);

  useLayoutEffect(() => {
    if (held.current === null || document.activeElement !== document.body) return;
    const from = rows.find(({ key }) => key === held.current);
    held.current = null;
    if (!from || !list.current) return;
    nextButton(list.current, rows, from)?.focus({ preventScroll: true });
  }, [list, rows]);
  return { onFocus, onBlur };
}

function nextButton(list: HTMLElement, rows: readonly FollowRow[], from: FollowRow): HTMLElement | null {
  const buttonOf = (row: FollowRow, selector: string) =>
    list.querySelector<HTMLElement>(`[data-row="${CSS.escape(row.key)}"] ${selector}`);
  const isOwn = (row: FollowRow) => row.lanes.some((lane) => from.lanes.includes(lane));
  const open = rows.filter(({ stage }) => stage === "working" || stage === "waiting");
  for (const row of open.filter(isOwn)) {
    const button = buttonOf(row, ".done-button");
    if (button) return button;
  }
  return buttonOf(from, "button");
}
