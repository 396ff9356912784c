import type { Outline } from "../../core/procedure/index.ts";
import { waitedMessage } from "../../core/review/index.ts";
import type { Duration, StepId, WalkId } from "../../core/units/index.ts";
import type { ComparedWalk } from "../../core/walks-compared/index.ts";
import { words } from "../../words/index.ts";
import { WalkStrip } from "./walk-strip.tsx";

interface ComparedWalkItemProps {
  readonly outline: Outline;
  readonly walk: ComparedWalk;
  readonly end: Duration;
  readonly isSecond: boolean;
  readonly onSecond: (isSecond: boolean) => void;
  readonly onOpen: (walk: WalkId, step: StepId | null) => void;
}

/** One walk in the list of many: when, how it ended, how it kept the order, and its strip. */
export function ComparedWalkItem({ outline, walk, end, isSecond, onSecond, onOpen }: ComparedWalkItemProps) {
  const call = (crew: string) => outline.crew[outline.lane(crew)]?.call ?? crew;
  const waited = walk.waits
    .slice(0, 3)
    .map((wait) => words("walks/waited", { who: call(wait.crew), waited: waitedMessage(outline, wait) }));
  return (
    <li className="of-walks-row compared-walk">
      <div className="compared-walk-head">
        <h3>{words(`walks/of-${walk.mode}`, { at: walk.began })}</h3>
        <p>{finishWords(walk)}</p>
        <p className="hint">{[orderWords(walk), deviationWords(walk)].join(" · ")}</p>
        {waited.length > 0 && <p className="hint">{words("walks/waits", { waits: waited })}</p>}
      </div>
      <WalkStrip outline={outline} walk={walk} end={end} onStep={(step) => onOpen(walk.walk, step)} />
      <div className="compared-walk-acts">
        <button
          type="button"
          className="plain-button"
          aria-label={words("walks/open-of", { at: walk.began })}
          onClick={() => onOpen(walk.walk, null)}
        >
          {words("walks/open")}
        </button>
        <label className="compared-walk-group">
          <input
            type="checkbox"
            checked={isSecond}
            onChange={(event) => onSecond(event.currentTarget.checked)}
          />
          <span>{words("walks/in-second")}</span>
        </label>
      </div>
    </li>
  );
}

function finishWords({ finish, finishDifference, end }: ComparedWalk): string {
  const ended = words(`walks/end-${end ?? "open"}`);
  if (finish === null) return ended;
  if (finishDifference === null) return words("walks/finish", { ended, finish });
  return words(finishDifference < 0 ? "walks/finish-earlier" : "walks/finish-later", {
    ended,
    finish,
    by: finishDifference,
  });
}

const orderWords = ({ order }: ComparedWalk): string =>
  order.share === null
    ? words("walks/order-none")
    : words("walks/order", { broken: order.broken, all: order.lookedAt });

const deviationWords = ({ deviations }: ComparedWalk): string =>
  words("walks/deviations", { count: deviations.length });
