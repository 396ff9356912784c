import { changesByTask } from "../../core/changes/index.ts";
import type { Sides } from "../../core/effect/index.ts";
import type { Outline } from "../../core/procedure/index.ts";
import { inWords, words } from "../../words/index.ts";
import type { Difference } from "./compared-steps.ts";
import { inContingencies } from "./compared-steps.ts";

interface ChangeListProps {
  readonly difference: Difference;
  /** Both procedures as they are shown; what changed is told as it was written. */
  readonly shown: Sides<Outline>;
}

/** What changed, in words, by the tasks it concerns. */
export function ChangeList({ difference: { before, after, changes }, shown }: ChangeListProps) {
  const titles = new Map([...titlesOf(shown.before), ...titlesOf(shown.after)]);
  return (
    <div className="compare-changes">
      <p>{words("compare/count", { count: changes.length })}</p>
      {changesByTask(before, after, changes).map(({ task, title, changes: said }) => (
        <section key={task ?? ""} className="compare-task">
          <h3>{task === null ? words("compare/outside") : (titles.get(task) ?? title ?? task)}</h3>
          <ul>
            {said.map(({ message }, place) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: two changes may say the same, and the list stays as it is.
              <li key={place}>{inWords(message)}</li>
            ))}
          </ul>
        </section>
      ))}
    </div>
  );
}

const titlesOf = ({ procedure }: Outline) =>
  [...procedure.tasks, ...inContingencies(procedure)].map(({ id, title }) => [id as string, title] as const);
