import type { Wait } from "../../core/course/index.ts";
import { waitMessage, windowLabel } from "../../core/course/index.ts";
import type { Outline } from "../../core/procedure/index.ts";
import { inWords, words } from "../../words/index.ts";
import { strandsOf } from "../braid/index.ts";
import { Fact } from "../parts/index.ts";
import type { LaneBar } from "./lane-bar.ts";
import { differenceText, performersOf, spanText } from "./step-words.ts";

interface StepPanelProps {
  readonly outline: Outline;
  readonly bar: LaneBar;
  /** All waits; the panel shows those before this step. */
  readonly waits: readonly Wait[];
  readonly live: boolean;
}

/** Everything about the chosen step. */
export function StepPanel({ outline, bar, waits, live }: StepPanelProps) {
  const { entry, planned, slack, flown } = bar;
  const strands = strandsOf(outline.crew);
  const own = waits.filter(({ step }) => step === entry.step.id);
  const windows = entry.step.within.map((id) => windowLabel(outline, id));
  return (
    <section className="timeline-panel" aria-label={words("timeline/step", { number: entry.number })}>
      <p className="timeline-panel-who">
        <span className="timeline-number">{entry.number}</span>
        {entry.performers.map((lane) => (
          <span key={lane} className="timeline-panel-call" style={{ color: strands[lane]?.colour }}>
            <svg width="26" height="8" aria-hidden="true">
              <line x1="0" x2="26" y1="4" y2="4" style={{ strokeDasharray: strands[lane]?.dash }} />
            </svg>
            {outline.crew[lane]?.call}
          </span>
        ))}
        <span className="timeline-panel-task">
          {entry.performers.length > 1 ? `${words("timeline/together")} · ` : ""}
          {entry.task.title}
        </span>
      </p>
      <h2>{entry.step.do}</h2>
      <dl>
        <Fact name={words("timeline/planned")}>
          {planned ? spanText(planned.start, planned.finish) : words("timeline/depends")}
        </Fact>
        {live && <Flown bar={bar} />}
        {flown && planned && flown.stage !== "skipped" && (
          <Fact name={words("timeline/against-plan")}>{differenceText(flown.finish - planned.finish)}</Fact>
        )}
        <Fact name={words("timeline/waits-before")}>
          {own.length === 0
            ? words("timeline/nobody-waits")
            : own.map((wait) => inWords(waitMessage(outline, wait))).join(words("figures/between-clauses"))}
        </Fact>
        {slack && (
          <Fact name={words("timeline/slack")}>
            {slack.slack > 0
              ? words("timeline/slack-until", { slack: slack.slack, latest: slack.latestFinish })
              : bar.onCriticalPath
                ? words("timeline/slack-none-critical")
                : words("timeline/slack-none")}
          </Fact>
        )}
        {windows.length > 0 && (
          <Fact name={words("timeline/only-in")}>{words("timeline/only-in-windows", { windows })}</Fact>
        )}
      </dl>
      <span className="heard-only">{performersOf(outline, entry)}</span>
    </section>
  );
}

function Flown({ bar: { flown } }: { readonly bar: LaneBar }) {
  if (!flown) return <Fact name={words("timeline/forecast")}>{words("timeline/forecast-left-out")}</Fact>;
  switch (flown.stage) {
    case "done":
      return <Fact name={words("timeline/done")}>{spanText(flown.start, flown.finish)}</Fact>;
    case "skipped":
      return (
        <Fact name={words("timeline/skipped")}>{words("timeline/skipped-at", { at: flown.finish })}</Fact>
      );
    case "in-work":
      return (
        <Fact name={words("timeline/in-work")}>
          {words("timeline/in-work-since", { start: flown.start, finish: flown.finish })}
        </Fact>
      );
    case "planned":
      return <Fact name={words("timeline/forecast")}>{spanText(flown.start, flown.finish)}</Fact>;
  }
}
