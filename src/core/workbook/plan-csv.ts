import type { Say } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import { causeMessage } from "../course/index.ts";
import type { Plan, Timeline } from "../plan/index.ts";
import { formatInstant, inSeconds } from "../units/index.ts";
import { csvOf } from "./csv-of.ts";
import { plannedRows } from "./planned-row.ts";

const COLUMNS = [
  "number",
  "step",
  "task",
  "by",
  "action",
  "start_s",
  "finish_s",
  "start_utc",
  "finish_utc",
  "low_s",
  "likely_s",
  "high_s",
  "where",
  "after",
  "within",
  "slack_s",
  "critical",
  "waits",
] as const;

/**
 * Returns the steps of a plan as CSV ([WRT11]), in reading order and with times in seconds of PET; the two columns of UTC are
 * empty without a start. `say` turns messages into text.
 */
export function planCsv(plan: Plan, timeline: Timeline, say: Say): string {
  const { outline } = plan;
  return csvOf(
    COLUMNS,
    plannedRows(plan, timeline).map(
      ({ entry, start, finish, startsAt, finishesAt, time, where, ...row }) => ({
        number: entry.number,
        step: entry.step.id,
        task: entry.task.id,
        by: entry.step.by.join(" "),
        action: entry.step.do,
        start_s: inSeconds(start),
        finish_s: inSeconds(finish),
        start_utc: startsAt === null ? null : formatInstant(startsAt),
        finish_utc: finishesAt === null ? null : formatInstant(finishesAt),
        low_s: inSeconds(time.low),
        likely_s: inSeconds(time.likely),
        high_s: inSeconds(time.high),
        where: where.join(" → "),
        after: entry.step.after.map(({ step }) => step).join(" "),
        within: entry.step.within.join(" "),
        slack_s: inSeconds(row.slack),
        critical: row.critical,
        waits: row.waits
          .map(({ crew, from, to, on }) =>
            say(
              on === null
                ? message("workbook/waits", { crew, seconds: inSeconds(to - from) })
                : message("workbook/waits-for", {
                    crew,
                    seconds: inSeconds(to - from),
                    on: causeMessage(outline, on),
                  }),
            ),
          )
          .join("; "),
      }),
    ),
  );
}
