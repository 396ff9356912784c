import type { Wait } from "../../core/course/index.ts";
import type { Outline } from "../../core/procedure/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { lengthText, minus } from "../../core/units/index.ts";
import type { LaneBar } from "./lane-bar.ts";
import { differenceText, performersOf, petText, waitReason } from "./step-words.ts";

interface TimelineTableProps {
  readonly outline: Outline;
  readonly lanes: readonly (readonly LaneBar[])[];
  readonly waits: readonly Wait[];
  readonly live: boolean;
}

/** The same as the drawing, in words and figures, in reading order. */
export function TimelineTable({ outline, lanes, waits, live }: TimelineTableProps) {
  const byStep = new Map(lanes.flat().map((bar) => [bar.entry.index, bar]));
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls sideways must be reachable by keyboard.
    <section className="timeline-table" tabIndex={0} aria-label="Timeline as a table">
      <table>
        <thead>
          <tr>
            <th scope="col">No.</th>
            <th scope="col">Who</th>
            <th scope="col">Step</th>
            <th scope="col">Planned</th>
            {live && <th scope="col">Done or forecast</th>}
            {live && <th scope="col">Against the plan</th>}
            <th scope="col">Waits before it</th>
            <th scope="col">Slack</th>
          </tr>
        </thead>
        {outline.procedure.tasks.map((task) => {
          const rows = outline.steps.filter((entry) => entry.task === task && byStep.has(entry.index));
          if (rows.length === 0) return null;
          return (
            <tbody key={task.id}>
              <tr>
                <th scope="rowgroup" colSpan={live ? 8 : 6}>
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
                      {planned ? `${petText(planned.start)}–${petText(planned.finish)}` : "not planned"}
                    </td>
                    {live && (
                      <td>
                        {flown
                          ? `${petText(flown.start)}–${petText(flown.finish)} ${stageWords[flown.stage]}`
                          : "left out"}
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
                        .map(
                          ({ crew, from, to, on }) =>
                            `${outline.crewMember(crew)?.call} ${lengthText(minus(to, from))} ${waitReason(outline, on)}`,
                        )
                        .join("; ") || "–"}
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

const stageWords = {
  done: "done",
  skipped: "skipped",
  "in-work": "in work",
  planned: "to come",
} as const;

function slackWords(slack: Duration | null, onCriticalPath: boolean): string {
  if (slack === null) return "–";
  if (slack > 0) return lengthText(slack);
  return onCriticalPath ? "none, critical path" : "none";
}
