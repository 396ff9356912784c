import { useState } from "react";
import type { Plan, Timeline } from "../../core/plan/index.ts";
import { finishMessage } from "../../core/plan/index.ts";
import type { Instant } from "../../core/units/index.ts";
import { inWords, words } from "../../words/index.ts";
import { callsOf } from "../parts/index.ts";
import "../print/index.ts";
import { DrawnStrips, NoTimeline } from "../timeline/index.ts";
import type { Paper } from "./paper.ts";
import { HEAD_HEIGHT, MARGIN, PAPERS } from "./paper.ts";
import "./poster.css";

interface PosterProps {
  readonly plan: Plan;
  readonly printedAt: Instant;
}

/** The timeline of a plan as one large sheet for the wall ([WRT11]). */
export function Poster({ plan, printedAt }: PosterProps) {
  const [paper, setPaper] = useState<Paper>(PAPERS[0] as Paper);
  const { outline, timeline, start } = plan;
  const { id, title, revision } = outline.procedure;
  const { width, height } = paper;
  const shape = (height - 2 * MARGIN - HEAD_HEIGHT) / (width - 2 * MARGIN);
  return (
    <main className="print-sheet poster">
      <style>{`@page { size: ${width}mm ${height}mm; margin: ${MARGIN}mm }`}</style>
      <div className="print-tools poster-tools">
        <fieldset>
          <legend className="heard-only">{words("poster/paper")}</legend>
          {PAPERS.map((one) => (
            <button
              key={one.name}
              type="button"
              className="plain-button"
              aria-pressed={one === paper}
              onClick={() => setPaper(one)}
            >
              {words(`poster/${one.name}`)}
            </button>
          ))}
        </fieldset>
        <button type="button" className="main-button" onClick={() => window.print()}>
          {words("print/print")}
        </button>
      </div>
      <header className="poster-head">
        <h1>{title}</h1>
        <p>
          <b>{id}</b> · {revision ? words("print/revision", { revision }) : words("print/no-revision")} ·{" "}
          {start === null ? words("poster/no-start") : words("print/planned-from", { at: start })} ·{" "}
          {timeline && inWords(finishMessage(timeline.course))} · {words("print/printed", { at: printedAt })}
        </p>
        <p>{words("poster/caution")}</p>
      </header>
      {timeline ? (
        <>
          <DrawnStrips plan={plan} timeline={timeline} shape={shape} />
          <PosterSteps plan={plan} timeline={timeline} />
        </>
      ) : (
        <NoTimeline plan={plan} />
      )}
    </main>
  );
}

/** What the numbers on the bars stand for, since most bars are too short for words. */
function PosterSteps({ plan: { outline }, timeline }: { readonly plan: Plan; readonly timeline: Timeline }) {
  return (
    <section className="poster-steps">
      <h2>{words("print/steps")}</h2>
      <ol>
        {[...timeline.course.steps.values()].map(({ step, start }) => {
          const entry = outline.step(step);
          if (!entry) return null;
          return (
            <li key={step}>
              <b>{entry.number}</b> {words("poster/step", { start, who: callsOf(outline, entry.step.by) })}{" "}
              {entry.step.do}
            </li>
          );
        })}
      </ol>
    </section>
  );
}
