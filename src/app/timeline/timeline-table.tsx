import type { Wait } from "../../core/course/index.ts";
import { waitMessage } from "../../core/course/index.ts";
import type { Outline } from "../../core/procedure/index.ts";
import type { Duration, Instant } from "../../core/units/index.ts";
import { later, NO_TIME } from "../../core/units/index.ts";
import { inWords, words } from "../../words/index.ts";
import type { LaneBar } from "./lane-bar.ts";
import { differenceText, performersOf, petText } from "./step-words.ts";

interface TimelineTableProps {
  readonly outline: Outline;
  readonly lanes: readonly (readonly LaneBar[])[];
  readonly waits: readonly Wait[];
  readonly live: boolean;
  /** The instant of PET 0; `null` when it is not known. */
  readonly start: Instant | null;
}

/** The content of the chart in words and figures, in reading order. */
export function TimelineTable({ outline, lanes, waits, live, start }: TimelineTableProps) {
  const byStep = new Map(lanes.flat().map((bar) => [bar.entry.index, bar]));
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls sideways must be reachable by keyboard.
    <section className="timeline-table" tabIndex={0} aria-label={words("timeline/table")}>
      <table>
        <thead>
          <tr>
            <th scope="col">{words("timeline/column-number")}</th>
            <th scope="col">{words("timeline/column-who")}</th>
            <th scope="col">{words("timeline/column-step")}</th>
            <th scope="col">{words("timeline/planned")}</th>
            {start !== null && <th scope="col">{words("timeline/column-start-utc")}</th>}
            {live && <th scope="col">{words("timeline/column-done")}</th>}
            {live && <th scope="col">{words("timeline/against-plan")}</th>}
            <th scope="col">{words("timeline/waits-before")}</th>
            <th scope="col">{words("timeline/slack")}</th>
          </tr>
        </thead>
        {outline.procedure.tasks.map((task) => {
          const rows = outline.steps.filter((entry) => entry.task === task && byStep.has(entry.index));
          if (rows.length === 0) return null;
          return (
            <tbody key={task.id}>
              <tr>
                <th scope="rowgroup" colSpan={(live ? 8 : 6) + (start === null ? 0 : 1)}>
                  {task.title}
                </th>
              </tr>
              {rows.map((entry) => {
                const { planned, slack, flown, onCriticalPath } = byStep.get(entry.index) ?? {};
                return (
                  <tr key={entry.step.id}>
                    <td>{entry.number}</td>
                    <td>{performersOf(outline, entry)}</td>
                    <td>{entry.step.do}</td>
                    <td className="timeline-figures">
                      {planned
                        ? `${petText(planned.start)}–${petText(planned.finish)}`
                        : words("timeline/cell-not-planned")}
                    </td>
                    {start !== null && (
                      <td className="timeline-figures">
                        {(flown ?? planned)
                          ? words("figures/utc-time", {
                              at: later(start, (flown ?? planned)?.start ?? NO_TIME),
                            })
                          : "–"}
                      </td>
                    )}
                    {live && (
                      <td>
                        {flown
                          ? words(`timeline/cell-${flown.stage}`, {
                              span: `${petText(flown.start)}–${petText(flown.finish)}`,
                            })
                          : words("timeline/cell-left-out")}
                      </td>
                    )}
                    {live && (
                      <td>
                        {planned && flown && flown.stage !== "skipped"
                          ? differenceText(flown.finish - planned.finish)
                          : "–"}
                      </td>
                    )}
                    <td>
                      {waits
                        .filter(({ step }) => step === entry.step.id)
                        .map((wait) => inWords(waitMessage(outline, wait)))
                        .join(words("figures/between-clauses")) || "–"}
                    </td>
                    <td>{slackWords(slack?.slack ?? null, onCriticalPath ?? false)}</td>
                  </tr>
                );
              })}
            </tbody>
          );
        })}
      </table>
    </section>
  );
}

function slackWords(slack: Duration | null, onCriticalPath: boolean): string {
  if (slack === null) return "–";
  if (slack > 0) return words("figures/margin", { time: slack });
  return words(onCriticalPath ? "timeline/cell-no-slack-critical" : "timeline/cell-no-slack");
}
