import type { HubWalk } from "../../core/link/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";

interface WalkChoiceProps {
  readonly walks: readonly HubWalk[];
  readonly chosen: WalkId | null;
  readonly onChoose: (walk: WalkId) => void;
}

/** The choice of which walk on a hub its owner wants to lead. */
export function WalkChoice({ walks, chosen, onChoose }: WalkChoiceProps) {
  if (walks.length === 0) {
    return (
      <p className="link-problem" role="status">
        {words("link/no-walk-yet")}
      </p>
    );
  }
  return (
    <fieldset className="choices">
      <legend>{words("link/which-walk")}</legend>
      {walks.map(({ walk, title, entries }) => (
        <label key={walk} className="choice">
          <input type="radio" name="walk" checked={walk === chosen} onChange={() => onChoose(walk)} />
          <span>
            <b>{title ?? words("link/title-not-known")}</b>
            <span className="hint">{words("link/walk-entries", { walk, count: entries })}</span>
          </span>
        </label>
      ))}
    </fieldset>
  );
}
