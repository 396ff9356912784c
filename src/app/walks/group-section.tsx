import type { Outline } from "../../core/procedure/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import type { ComparedStep } from "../../core/walks-compared/index.ts";
import { groupDifferences } from "../../core/walks-compared/index.ts";
import { words } from "../../words/index.ts";
import { StepName } from "../texts/index.ts";

interface GroupSectionProps {
  readonly outline: Outline;
  readonly steps: readonly ComparedStep[];
  readonly walks: number;
  readonly second: ReadonlySet<WalkId>;
}

/** How two groups of walks differ step by step, where that is told from chance; otherwise that none is shown. */
export function GroupSection({ outline, steps, walks, second }: GroupSectionProps) {
  const isDivided = second.size > 0 && second.size < walks;
  const differences = isDivided ? groupDifferences(steps, second) : [];
  const shown = differences.filter(({ isShown }) => isShown);
  return (
    <section className="walks-part" aria-labelledby="walks-groups">
      <h2 id="walks-groups">{words("walks/groups")}</h2>
      <p>
        {isDivided
          ? words("walks/groups-of", { first: walks - second.size, second: second.size })
          : words("walks/groups-choose")}
      </p>
      {isDivided && (
        <p>
          {differences.length === 0
            ? words("walks/groups-untested")
            : shown.length === 0
              ? words("walks/groups-none", { count: differences.length })
              : words("walks/groups-shown", { count: shown.length, all: differences.length })}
        </p>
      )}
      {shown.length > 0 && (
        <ul className="plain-list">
          {shown.map(({ entry, ratio, walks: [first, other] }) => (
            <li key={entry.step.id}>
              <b>{entry.number}</b> <StepName outline={outline} step={entry.step} />:{" "}
              {words("walks/group-ratio", { ratio, first, second: other })}
            </li>
          ))}
        </ul>
      )}
      <p className="hint">{words("walks/groups-how")}</p>
    </section>
  );
}
