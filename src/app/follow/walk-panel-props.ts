import type { Instant } from "../../core/units/index.ts";
import type { WalkState } from "../../core/walk/index.ts";
import type { FollowActions } from "./follow-actions.ts";

/** The props of every panel of the walk. */
export interface WalkPanelProps {
  readonly state: WalkState;
  readonly now: Instant;
  readonly actions: FollowActions;
  readonly onClose: () => void;
}
