import type { FocusEvent, RefObject } from "react";
import { useCallback, useLayoutEffect, useRef } from "react";
import type { FollowRow } from "./follow-rows.ts";

/** The handlers for the element that holds the list. */
export interface DoneFocus {
  readonly onFocus: (event: FocusEvent<HTMLElement>) => void;
  readonly onBlur: (event: FocusEvent<HTMLElement>) => void;
}

/**
 * Keeps keyboard focus in the list. A step that is marked done collapses, and the focused button disappears with it.
 * Focus then moves to the next button of the same crew members that marks a step done, or otherwise to the line of the
 * collapsed step.
 */
export function useDoneFocus(list: RefObject<HTMLElement | null>, rows: readonly FollowRow[]): DoneFocus {
  const held = useRef<string | null>(null);
  const onFocus = useCallback(({ target }: FocusEvent<HTMLElement>) => {
    held.current = target.closest<HTMLElement>("[data-row]")?.dataset["row"] ?? null;
  }, []);
  const onBlur = useCallback(({ relatedTarget }: FocusEvent<HTMLElement>) => {
    // When a focused element is removed, nothing else receives the focus, so `relatedTarget` is empty.
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
