import { changesByTask } from "../../core/changes/index.ts";
import { inWords, words } from "../../words/index.ts";
import type { Difference } from "./compared-steps.ts";

/** What changed, in words, by the tasks it concerns. */
export function ChangeList({ difference: { before, after, changes } }: { readonly difference: Difference }) {
  return (
    <div className="compare-changes">
      <p>{words("compare/count", { count: changes.length })}</p>
      {changesByTask(before, after, changes).map(({ task, title, changes: said }) => (
        <section key={task ?? ""} className="compare-task">
          <h3>{task === null ? words("compare/outside") : (title ?? task)}</h3>
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
