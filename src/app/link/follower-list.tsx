import type { Follower } from "../../core/link/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { roleWords, seenWords } from "./link-words.ts";
import { logWords } from "./log-words.ts";

interface FollowerListProps {
  readonly walk: WalkId;
  readonly followers: readonly Follower[];
  /** The id of this device. */
  readonly device: string;
  readonly petZero: Instant | null;
  readonly now: Instant;
  /** Removes a follower from the walk; `null` for a reader who may not do so. */
  readonly onWithdraw: ((device: string) => void) | null;
}

/** Everybody who joined the walk: who is connected, in which role, and how far each has read. */
export function FollowerList({ walk, followers, device, petZero, now, onWithdraw }: FollowerListProps) {
  if (followers.length === 0) return <p className="hint">{words("link/nobody-known")}</p>;
  const inOrder = followers.toSorted(
    (a, b) => Number(b.present) - Number(a.present) || (a.name < b.name ? -1 : 1),
  );
  return (
    <ul className="plain-list follower-list">
      {inOrder.map((follower) => (
        <li key={follower.device} data-present={follower.present || undefined}>
          <span className="follower-words">
            <b>{follower.name || words("link/unnamed")}</b> {roleWords(follower)}
            {follower.device === device && ` · ${words("link/this-tablet")}`}
            <span className="hint">{seenWords(follower, petZero, now)}</span>
          </span>
          {onWithdraw && follower.device !== device && (
            <button
              type="button"
              className="plain-button"
              aria-label={logWords(walk).takeOff(follower.name)}
              onClick={() => onWithdraw(follower.device)}
            >
              {words("link/take-off")}
            </button>
          )}
        </li>
      ))}
    </ul>
  );
}
