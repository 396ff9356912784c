import { useMemo } from "react";
import type { CheckOptions } from "../../core/check/index.ts";
import type { Effect } from "../../core/effect/index.ts";
import { effectOf } from "../../core/effect/index.ts";
import type { Outline, ProcedureFile } from "../../core/procedure/index.ts";
import { words } from "../../words/index.ts";
import { TimelinePair } from "../timeline/index.ts";
import { ChangeList } from "./change-list.tsx";
import { ComparedEffect, effectOptions } from "./compared-effect.tsx";
import type { Difference } from "./compared-steps.ts";
import { changedInWords, differenceOf, droppedInWords } from "./compared-steps.ts";
import "./compare.css";

/** A procedure that can be compared: it was read without an error that stands in the way. */
export interface ComparedProcedure {
  readonly name: string;
  readonly file: ProcedureFile;
  readonly outline: Outline;
}

interface CompareViewProps {
  readonly before: ComparedProcedure;
  readonly after: ComparedProcedure;
  /** With what both are planned and checked. */
  readonly options: CheckOptions;
}

/** Two procedures compared: what changed by task, what it comes to, and the timelines one over the other ([WRT8]). */
export function CompareView({ before, after, options }: CompareViewProps) {
  const difference = useMemo(() => differenceOf(before.file, after.file), [before.file, after.file]);
  const effect = useMemo(
    () => effectOf(before.outline, after.outline, effectOptions(options)),
    [before.outline, after.outline, options],
  );
  if (difference.changes.length === 0) return <p className="compare-same">{words("compare/same")}</p>;
  return (
    <div className="compare">
      <div className="compare-columns">
        <section aria-labelledby="compare-changes">
          <h2 id="compare-changes">{words("compare/changes")}</h2>
          <ChangeList difference={difference} />
        </section>
        <section aria-labelledby="compare-effect">
          <h2 id="compare-effect">{words("compare/effect")}</h2>
          <ComparedEffect names={{ before: before.name, after: after.name }} effect={effect} />
        </section>
      </div>
      <Timelines before={before.name} after={after.name} difference={difference} effect={effect} />
    </div>
  );
}

interface TimelinesProps {
  readonly before: string;
  readonly after: string;
  readonly difference: Difference;
  readonly effect: Effect;
}

function Timelines({ before, after, difference, effect: { plans } }: TimelinesProps) {
  const marked = useMemo(() => {
    const changed = changedInWords(difference);
    return { upper: new Map([...changed, ...droppedInWords(difference)]), lower: changed };
  }, [difference]);
  return (
    <section aria-labelledby="compare-timelines">
      <h2 id="compare-timelines">{words("compare/timelines")}</h2>
      <TimelinePair
        upper={{ name: before, plan: plans.before, marked: marked.upper }}
        lower={{ name: after, plan: plans.after, marked: marked.lower }}
      />
    </section>
  );
}
