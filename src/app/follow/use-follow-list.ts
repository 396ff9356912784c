import { useDeferredValue, useMemo, useRef } from "react";
import type { WalkState } from "../../core/walk/index.ts";
import type { FollowRow } from "./follow-rows.ts";
import { followMarkers, followRows, keepUnchanged } from "./follow-rows.ts";

/** The list of a walk with its braid. Rows and markers stay the same objects as long as they say the same. */
export interface FollowList {
  readonly rows: readonly FollowRow[];
  readonly markers: ReturnType<typeof followMarkers>;
  /** The key of the first row at which somebody is; `null` when nobody is at any. */
  readonly nowRow: string | null;
}

/** The rows and markers of a walk at an instant. */
export function useFollowList(state: WalkState): FollowList {
  const before = useRef<readonly FollowRow[]>([]);
  // One step done moves the forecast of most steps to come: what was tapped is shown first, the moved times right after.
  const isSettled = useDeferredValue(state) === state;
  const rows = useMemo(() => {
    before.current = keepUnchanged(before.current, followRows(state), !isSettled);
    return before.current;
  }, [state, isSettled]);
  const markersKey = JSON.stringify(followMarkers(state));
  const markers = useMemo(() => JSON.parse(markersKey) as FollowList["markers"], [markersKey]);
  const nowRow = rows.find(({ stage }) => stage === "working" || stage === "waiting")?.key ?? null;
  return { rows, markers, nowRow };
}
