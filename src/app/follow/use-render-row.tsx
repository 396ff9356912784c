import { useCallback } from "react";
import type { Outline } from "../../core/procedure/index.ts";
import type { Strand } from "../braid/index.ts";
import type { FollowActions } from "./follow-actions.ts";
import type { FollowRow } from "./follow-rows.ts";
import { FollowListRow } from "./step-row.tsx";

interface RenderRowParts {
  readonly outline: Outline;
  readonly strands: readonly Strand[];
  /** `null` for a reader who may not enter anything. */
  readonly actions: FollowActions | null;
  readonly live: boolean;
  readonly onPick: (step: string) => void;
}

/** The function that draws a row of the list. It stays the same as long as the given values do. */
export function useRenderRow({ outline, strands, actions, live, onPick }: RenderRowParts) {
  return useCallback(
    (row: FollowRow) => (
      <FollowListRow
        key={row.key}
        row={row}
        outline={outline}
        strands={strands}
        actions={actions}
        live={live}
        onPick={onPick}
      />
    ),
    [outline, strands, actions, live, onPick],
  );
}
