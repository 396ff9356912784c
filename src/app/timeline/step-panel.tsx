import type { Wait } from "../../core/course/index.ts";
import type { Outline } from "../../core/procedure/index.ts";
import { lengthText, minus } from "../../core/units/index.ts";
import { strandsOf } from "../braid/index.ts";
import { Fact } from "../parts/index.ts";
import type { LaneBar } from "./lane-bar.ts";
import { differenceText, performersOf, petText, spanText, waitReason } from "./step-words.ts";

interface StepPanelProps {
  readonly outline: Outline;
  readonly bar: LaneBar;
  /** Every wait there is; those before this step are told. */
  readonly waits: readonly Wait[];
  readonly live: boolean;
}

/** What there is to say of the step that is chosen. */
export function StepPanel({ outline, bar, waits, live }: StepPanelProps) {
  const { entry, planned, slack, flown } = bar;
  const strands = strandsOf(outline.crew);
  const own = waits.filter(({ step }) => step === entry.step.id);
  const windows = entry.step.within.map(
    (id) => outline.procedure.windows.find((window) => window.id === id)?.label ?? id,
  );
  return (
    <section className="timeline-panel" aria-label={`Step ${entry.number}`}>
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
          {entry.performers.length > 1 ? "together · " : ""}
          {entry.task.title}
        </span>
      </p>
      <h2>{entry.step.do}</h2>
      <dl>
        <Fact name="Planned">
          {planned
            ? spanText(planned.start, planned.finish)
            : "not in the plan: it depends on how things come out"}
        </Fact>
        {live && <Flown bar={bar} />}
        {flown && planned && flown.stage !== "skipped" && (
          <Fact name="Against the plan">{differenceText(flown.finish - planned.finish)}</Fact>
        )}
        <Fact name="Waits before it">
          {own.length === 0
            ? "nobody"
            : own
                .map(
                  ({ crew, from, to, on }) =>
                    `${outline.crewMember(crew)?.call} ${lengthText(minus(to, from))} ${waitReason(outline, on)}`,
                )
                .join("; ")}
        </Fact>
        {slack && (
          <Fact name="Slack">
            {slack.slack > 0
              ? `${lengthText(slack.slack)}: may finish as late as ${petText(slack.latestFinish)}`
              : bar.onCriticalPath
                ? "none: it lies on the critical path"
                : "none: any delay moves the finish"}
          </Fact>
        )}
        {windows.length > 0 && <Fact name="Only in">{windows.join(" and ")}</Fact>}
      </dl>
      <span className="heard-only">{performersOf(outline, entry)}</span>
    </section>
  );
}

function Flown({ bar: { flown } }: { readonly bar: LaneBar }) {
  if (!flown) return <Fact name="Forecast">left out: a get-ahead or a branch not taken</Fact>;
  switch (flown.stage) {
    case "done":
      return <Fact name="Done">{spanText(flown.start, flown.finish)}</Fact>;
    case "skipped":
      return <Fact name="Skipped">at {petText(flown.finish)}</Fact>;
    case "in-work":
      return (
        <Fact name="In work">
          since {petText(flown.start)}, due {petText(flown.finish)}
        </Fact>
      );
    case "planned":
      return <Fact name="Forecast">{spanText(flown.start, flown.finish)}</Fact>;
  }
}
