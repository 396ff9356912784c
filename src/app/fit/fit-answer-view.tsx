import { windowLabel } from "../../core/course/index.ts";
import type { Fit, FittedSet } from "../../core/fit/index.ts";
import type { Outline } from "../../core/procedure/index.ts";
import type { Duration, TaskId } from "../../core/units/index.ts";
import { inWords, words } from "../../words/index.ts";

/** A set of tasks as a plan: get-aheads that are kept, and tasks that are left out. */
export interface FittingTasks {
  readonly keep: readonly TaskId[];
  readonly out: readonly TaskId[];
}

/** Amends the plan so that it is what fits. */
export type OnAmend = (tasks: FittingTasks) => void;

/** The answer to what fits: how good it is in a sentence, then the sets, best first. */
export function FitAnswerView({
  outline,
  fit,
  now,
  limit,
  onAmend,
  isAsWritten,
}: {
  readonly outline: Outline;
  readonly fit: Fit;
  readonly now: Duration;
  readonly limit: Duration | null;
  readonly onAmend: OnAmend | null;
  /** True while no essential task is left out: then there is nothing to amend for the work without any get-ahead. */
  readonly isAsWritten: boolean;
}) {
  const { sets, fewest, essential, verdict } = fit;
  const isFewest = ({ keep }: FittedSet) => keep.join(" ") === fewest?.keep.join(" ");
  const offered = fewest && !sets.some(isFewest) ? [...sets, fewest] : sets;
  const left = (sets[0] ?? essential)?.left ?? [];
  return (
    <div className="fit-answer">
      <p className="hint">
        {limit === null ? words("fit/from-no-limit", { now }) : words("fit/from", { now, limit })}
      </p>
      <p role="status" className="fit-verdict" data-verdict={verdict}>
        {verdictWords(fit)}
      </p>
      <ol className="fit-sets">
        {(essential && !offered.some(isEmpty) ? [...offered, essential] : offered).map((set) => (
          <SetCard
            key={set.keep.join(" ")}
            outline={outline}
            set={set}
            isFewest={isFewest(set)}
            isPlan={isAsWritten && isEmpty(set)}
            onAmend={isAsWritten && isEmpty(set) ? null : onAmend}
          />
        ))}
      </ol>
      {left.length > 0 && (
        <>
          <h3>{words("fit/left")}</h3>
          <ul>
            {left.map(({ code, pointer, message }) => (
              <li key={`${code} ${pointer}`}>{inWords(message)}</li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}

const isEmpty = ({ keep }: FittedSet) => keep.length === 0;

function verdictWords({ verdict, sets, essential, bound, shortBy, tried }: Fit): string {
  const [best] = sets;
  if (verdict === "proven") {
    const hasChoice = best !== undefined && best.keep.length + best.drop.length > 0;
    return hasChoice ? words("fit/proven", { tried }) : words("fit/no-choice");
  }
  if (verdict === "best-found") return words("fit/best-found", { worth: best?.worth ?? 0, bound, tried });
  if (essential === null) return words("fit/no-plan");
  return shortBy === null ? words("fit/never") : words("fit/short", { time: shortBy });
}

function SetCard({
  outline,
  set,
  isFewest,
  isPlan,
  onAmend,
}: {
  readonly outline: Outline;
  readonly set: FittedSet;
  /** True for the set that leaves out the fewest get-aheads, where that is not the best. */
  readonly isFewest: boolean;
  /** True for what is done when nothing is amended. */
  readonly isPlan: boolean;
  readonly onAmend: OnAmend | null;
}) {
  const titles = (ids: readonly TaskId[]) =>
    ids.map((id) => outline.procedure.tasks.find((task) => task.id === id)?.title ?? id);
  const windows = set.windows.map((id) => windowLabel(outline, id));
  return (
    <li className="fit-set">
      <h3>
        {isEmpty(set)
          ? words(isPlan ? "fit/keep-to-plan" : "fit/without-any")
          : words("fit/with", { tasks: titles(set.keep), worth: set.worth })}
      </h3>
      {isFewest && <p>{words("fit/fewest")}</p>}
      {set.drop.length > 0 && set.keep.length > 0 && (
        <p className="fit-dropped">{words("fit/without", { tasks: titles(set.drop) })}</p>
      )}
      <dl className="fit-figures">
        <div>
          <dt>{words("follow/finish")}</dt>
          <dd>{words("panel/at", { at: set.finish })}</dd>
        </div>
        {set.margin !== null && (
          <div>
            <dt>{words("panel/margin")}</dt>
            <dd>{words(set.margin < 0 ? "follow/over" : "follow/margin", { time: set.margin })}</dd>
          </div>
        )}
        {set.withinLimit !== null && (
          <div>
            <dt>{words("fit/in-time-share")}</dt>
            <dd>{words("fit/share", { share: set.withinLimit, error: (set.error ?? 0) * 100 })}</dd>
          </div>
        )}
      </dl>
      {windows.length > 0 && <p className="hint">{words("fit/windows", { windows })}</p>}
      {onAmend && (
        <button
          type="button"
          className="plain-button"
          onClick={() => onAmend({ keep: set.keep, out: set.drop })}
        >
          {words("fit/amend")}
        </button>
      )}
    </li>
  );
}
