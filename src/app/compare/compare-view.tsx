import { useMemo } from "react";
import type { CheckOptions } from "../../core/check/index.ts";
import type { Effect, Sides } from "../../core/effect/index.ts";
import { effectOf } from "../../core/effect/index.ts";
import type { Outline, ProcedureFile } from "../../core/procedure/index.ts";
import { words } from "../../words/index.ts";
import { planIn } from "../texts/index.ts";
import { TimelinePair } from "../timeline/index.ts";
import { ChangeList } from "./change-list.tsx";
import { ComparedEffect, effectOptions } from "./compared-effect.tsx";
import type { Difference } from "./compared-steps.ts";
import { changedInWords, differenceOf, droppedInWords } from "./compared-steps.ts";
import { useBothInTexts } from "./use-both-in-texts.ts";
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
  const shown = useBothInTexts(before.outline, after.outline);
  if (difference.changes.length === 0) return <p className="compare-same">{words("compare/same")}</p>;
  return (
    <div className="compare">
      <div className="compare-columns">
        <section aria-labelledby="compare-changes">
          <h2 id="compare-changes">{words("compare/changes")}</h2>
          <ChangeList difference={difference} shown={shown} />
        </section>
        <section aria-labelledby="compare-effect">
          <h2 id="compare-effect">{words("compare/effect")}</h2>
          <ComparedEffect names={{ before: before.name, after: after.name }} effect={effect} shown={shown} />
        </section>
      </div>
      <Timelines
        before={before.name}
        after={after.name}
        difference={difference}
        effect={effect}
        shown={shown}
      />
    </div>
  );
}

interface TimelinesProps {
  readonly before: string;
  readonly after: string;
  readonly difference: Difference;
  readonly effect: Effect;
  readonly shown: Sides<Outline>;
}

function Timelines({ before, after, difference, effect: { plans }, shown }: TimelinesProps) {
  const upper = useMemo(() => planIn(plans.before, shown.before), [plans.before, shown.before]);
  const lower = useMemo(() => planIn(plans.after, shown.after), [plans.after, shown.after]);
  const marked = useMemo(() => {
    const changed = changedInWords(difference);
    return { upper: new Map([...changed, ...droppedInWords(difference)]), lower: changed };
  }, [difference]);
  return (
    <section aria-labelledby="compare-timelines">
      <h2 id="compare-timelines">{words("compare/timelines")}</h2>
      <TimelinePair
        upper={{ name: before, plan: upper, marked: marked.upper }}
        lower={{ name: after, plan: lower, marked: marked.lower }}
      />
    </section>
  );
}
