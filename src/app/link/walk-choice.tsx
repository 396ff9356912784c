import type { HubWalk } from "../../core/link/index.ts";
import type { WalkId } from "../../core/units/index.ts";

interface WalkChoiceProps {
  readonly walks: readonly HubWalk[];
  readonly chosen: WalkId | null;
  readonly onChoose: (walk: WalkId) => void;
}

/** Which of a hub's walks its owner wants to lead. */
export function WalkChoice({ walks, chosen, onChoose }: WalkChoiceProps) {
  if (walks.length === 0) {
    return (
      <p className="link-problem" role="status">
        This is the hub’s own code, and the hub has no walk yet. Share one from the tablet that has it.
      </p>
    );
  }
  return (
    <fieldset className="choices">
      <legend>This is the hub’s own code: which walk will you lead?</legend>
      {walks.map(({ walk, title, entries }) => (
        <label key={walk} className="choice">
          <input type="radio" name="walk" checked={walk === chosen} onChange={() => onChoose(walk)} />
          <span>
            <b>{title ?? "Not known yet"}</b>
            <span className="hint">
              {walk}, {entries} {entries === 1 ? "entry" : "entries"}
            </span>
          </span>
        </label>
      ))}
    </fieldset>
  );
}
