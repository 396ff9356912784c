import { useDeferredValue, useMemo, useRef } from "react";
import type { Amendment, WalkAlert, WalkState } from "../../core/walk/index.ts";
import type { FollowRow } from "./follow-rows.ts";
import { followMarkers, followRows, keepUnchanged } from "./follow-rows.ts";

/** The list of a walk with its braid. Rows and markers remain the same objects as long as their content is the same. */
export interface FollowList {
  readonly rows: readonly FollowRow[];
  readonly markers: ReturnType<typeof followMarkers>;
  /** The key of the first row that a crew member has reached; `null` when there is none. */
  readonly nowRow: string | null;
}

/** The rows and markers of a walk at an instant. `unseen` are the amendments to be marked at their steps. */
export function useFollowList(
  state: WalkState,
  alerts: readonly WalkAlert[],
  unseen: readonly Amendment[],
): FollowList {
  const before = useRef<readonly FollowRow[]>([]);
  // Completing one step shifts the forecast of most later steps. The tapped step is drawn first, the shifted times
  // right after.
  const isSettled = useDeferredValue(state) === state;
  const rows = useMemo(() => {
    before.current = keepUnchanged(before.current, followRows(state, alerts, unseen), !isSettled);
    return before.current;
  }, [state, alerts, unseen, isSettled]);
  const markersKey = JSON.stringify(followMarkers(state));
  const markers = useMemo(() => JSON.parse(markersKey) as FollowList["markers"], [markersKey]);
  const nowRow = rows.find(({ stage }) => stage === "working" || stage === "waiting")?.key ?? null;
  return { rows, markers, nowRow };
}
