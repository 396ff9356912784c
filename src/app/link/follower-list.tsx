import type { Follower } from "../../core/link/index.ts";
import type { Instant } from "../../core/units/index.ts";
import { roleWords, seenWords } from "./link-words.ts";

interface FollowerListProps {
  readonly followers: readonly Follower[];
  /** This device. */
  readonly device: string;
  readonly petZero: Instant | null;
  readonly now: Instant;
  /** Takes a follower off the walk; `null` for whoever may not. */
  readonly onWithdraw: ((device: string) => void) | null;
}

/** Everybody who joined the walk: who is here, in which role, and how far each has read. */
export function FollowerList({ followers, device, petZero, now, onWithdraw }: FollowerListProps) {
  if (followers.length === 0) return <p className="hint">The hub has not said yet who follows.</p>;
  const inOrder = followers.toSorted(
    (a, b) => Number(b.present) - Number(a.present) || (a.name < b.name ? -1 : 1),
  );
  return (
    <ul className="plain-list follower-list">
      {inOrder.map((follower) => (
        <li key={follower.device} data-present={follower.present || undefined}>
          <span className="follower-words">
            <b>{follower.name || "unnamed"}</b> {roleWords(follower)}
            {follower.device === device && " · this tablet"}
            <span className="hint">{seenWords(follower, petZero, now)}</span>
          </span>
          {onWithdraw && follower.device !== device && (
            <button
              type="button"
              className="plain-button"
              aria-label={`Take ${follower.name || "this follower"} off the walk`}
              onClick={() => onWithdraw(follower.device)}
            >
              Take off
            </button>
          )}
        </li>
      ))}
    </ul>
  );
}
