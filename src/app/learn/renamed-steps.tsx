import type { Learned } from "../../core/learn/index.ts";
import { isSameWork } from "../../core/learn/index.ts";
import type { Outline } from "../../core/procedure/index.ts";
import type { StepId } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { SelectField } from "../parts/index.ts";
import { markedInText, useShownTexts } from "../texts/index.ts";
import type { Renamed } from "./walks-request.ts";

interface RenamedStepsProps {
  readonly outline: Outline;
  /** Observations of steps that the procedure does not have, or has as other work. */
  readonly unmatched: Learned["unmatched"];
  readonly renamed: Renamed;
  readonly onRenamed: (renamed: Renamed) => void;
}

/** The choice of no step. */
const NONE: string = "";

/**
 * Lets an author say which step is an earlier one under another id ([LRN6]). Offered are the steps that are the same work,
 * since with other performers, items or places the times would start afresh whatever the author says.
 */
export function RenamedSteps({ outline, unmatched, renamed, onRenamed }: RenamedStepsProps) {
  const gone = new Map(
    unmatched.flatMap(({ entry: { step } }) => (outline.step(step.id) ? [] : [[step.id, step] as const])),
  );
  const texts = useShownTexts();
  // What an earlier revision called its step stands in its walks as it was written.
  const asWritten = (text: string) => (texts?.language == null ? text : markedInText(text, "missing"));
  const asked = [...gone].flatMap(([id, step]) => {
    const same = outline.steps.filter((entry) => isSameWork(step, entry.step));
    return same.length === 0 ? [] : [{ id, action: asWritten(step.do), same }];
  });
  const said = Object.entries(renamed) as [StepId, StepId][];
  if (asked.length === 0 && said.length === 0) return null;
  return (
    <section className="learn-renamed" aria-labelledby="learn-renamed">
      <h2 id="learn-renamed">{words("learn/renamed")}</h2>
      <p className="hint">{words("learn/renamed-how")}</p>
      {asked.map(({ id, action, same }) => (
        <SelectField
          key={id}
          label={words("learn/renamed-is-now", { id, action })}
          choices={[
            { id: NONE, name: words("learn/renamed-none") },
            ...same.map(({ step, number }) => ({
              id: step.id,
              name: words("learn/renamed-step", { number, action: step.do }),
            })),
          ]}
          value={NONE}
          onValue={(now) => onRenamed({ ...renamed, [id]: now as StepId })}
        />
      ))}
      <ul className="plain-list">
        {said.map(([before, now]) => (
          <li key={before}>
            {words("learn/renamed-said", { before, now: outline.step(now)?.number ?? now })}{" "}
            <button
              type="button"
              className="plain-button"
              aria-label={words("learn/renamed-take-back-of", { before })}
              onClick={() => onRenamed(Object.fromEntries(said.filter(([id]) => id !== before)))}
            >
              {words("learn/renamed-take-back")}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
