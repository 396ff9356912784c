import type { Say } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import { waitMessage } from "../course/index.ts";
import type { Plan, Timeline } from "../plan/index.ts";
import { finishMessage } from "../plan/index.ts";
import type { PlaceId } from "../units/index.ts";
import { later, minus } from "../units/index.ts";
import { laneBlocks, rowLength } from "./lane-blocks.ts";
import { plannedRows } from "./planned-row.ts";
import type { Cell, Sheet } from "./sheet.ts";
import { textCell } from "./sheet.ts";

/**
 * Returns a plan as two sheets ([WRT11]): a grid with a column for each crew member and time going down, and a list of the steps. With a
 * start both have UTC beside PET. `say` turns messages into text.
 */
export function planSheets(plan: Plan, timeline: Timeline, say: Say): readonly Sheet[] {
  return [gridSheet(plan, timeline, say), listSheet(plan, timeline, say)];
}

/** What stands above both: which procedure and revision, for which start, when it finishes, and what it is worth. */
function headOf({ outline, start }: Plan, { course }: Timeline, say: Say): readonly (readonly Cell[])[] {
  const { title, id, revision } = outline.procedure;
  return [
    [textCell(title, "title")],
    [
      textCell(
        say(
          revision
            ? message("workbook/of-revision", { procedure: id, revision })
            : message("workbook/of-procedure", { procedure: id }),
        ),
      ),
    ],
    [textCell(say(start === null ? message("workbook/no-start") : message("workbook/start", { at: start })))],
    [textCell(say(finishMessage(course)))],
    [textCell(say(message("workbook/caution")))],
  ];
}

function gridSheet(plan: Plan, timeline: Timeline, say: Say): Sheet {
  const { outline, start, windows } = plan;
  const { course } = timeline;
  const row = rowLength(course.finish);
  const count = Math.max(1, Math.ceil(course.finish / row));
  const known = start === null ? 1 : 2;
  const heading = (text: string) => textCell(text, "heading");
  const head = headOf(plan, timeline, say);
  const headings = [
    heading(say(message("workbook/pet"))),
    ...(start === null ? [] : [heading(say(message("workbook/utc")))]),
    ...outline.crew.map(({ call }) => heading(call)),
    ...(outline.procedure.windows.length > 0 ? [heading(say(message("workbook/windows")))] : []),
  ];
  const rows = Array.from({ length: count }, (_, index): (Cell | null)[] => {
    const from = (index * row) as typeof row;
    const to = (from + row) as typeof row;
    const open = outline.procedure.windows.filter(({ id }) =>
      (windows.get(id) ?? []).some((span) => span.from < to && span.to > from),
    );
    return [
      { value: { duration: from } },
      ...(start === null ? [] : [{ value: { instant: later(start, from) } }]),
      ...outline.crew.map(() => null),
      ...(outline.procedure.windows.length > 0
        ? [textCell(open.map(({ id, label }) => label ?? id).join(", "))]
        : []),
    ];
  });
  for (const [lane, blocks] of laneBlocks(course, row).entries()) {
    for (const { row: at, rows: tall, steps } of blocks) {
      const cells = rows[at];
      if (!cells) continue;
      const lines = steps.flatMap((one) => {
        const entry = outline.step(one.step);
        if (!entry) return [];
        const { number, step } = entry;
        const length = minus(one.finish, one.start);
        const others = step.by.filter((id) => outline.lane(id) !== lane);
        const names = others.map((id) => outline.crewMember(id)?.call ?? id);
        return say(
          names.length > 0
            ? message("workbook/joint-line", {
                start: one.start,
                number,
                action: step.do,
                length,
                crew: names,
              })
            : message("workbook/step-line", { start: one.start, number, action: step.do, length }),
        );
      });
      const isJoint = steps.some(({ step }) => (outline.step(step)?.performers.length ?? 0) > 1);
      cells[known + lane] = {
        value: { text: lines.join("\n") },
        look: isJoint ? "joint" : "block",
        ...(tall > 1 && { rows: tall }),
      };
    }
  }
  return {
    name: say(message("workbook/grid")),
    widths: [
      8,
      ...(start === null ? [] : [18]),
      ...outline.crew.map(() => 36),
      ...(outline.procedure.windows.length > 0 ? [24] : []),
    ],
    headRows: head.length + 1,
    rows: [...head, headings, ...rows],
  };
}

function listSheet(plan: Plan, timeline: Timeline, say: Say): Sheet {
  const { outline, start } = plan;
  const callOf = (id: Parameters<typeof outline.crewMember>[0]) => outline.crewMember(id)?.call ?? id;
  const placeOf = (id: PlaceId) => outline.place(id)?.label ?? id;
  const numberOf = (id: string) => outline.step(id)?.number ?? id;
  const headings = [
    "number",
    "task",
    "who",
    "do",
    "start",
    "finish",
    ...(start === null ? ([] as const) : (["start-utc", "finish-utc"] as const)),
    "low",
    "likely",
    "high",
    "where",
    "after",
    "within",
    "slack",
    "waits",
  ] as const;
  const head = headOf(plan, timeline, say);
  const rows = plannedRows(plan, timeline).map(({ entry, ...row }): (Cell | null)[] => {
    const { step, task, number } = entry;
    return [
      textCell(number),
      textCell(task.title),
      textCell(step.by.map(callOf).join(" + ")),
      textCell(step.do),
      { value: { duration: row.start } },
      { value: { duration: row.finish } },
      ...(row.startsAt === null || row.finishesAt === null
        ? []
        : [{ value: { instant: row.startsAt } }, { value: { instant: row.finishesAt } }]),
      { value: { duration: row.time.low } },
      { value: { duration: row.time.likely } },
      { value: { duration: row.time.high } },
      textCell(row.where.map(placeOf).join(" → ")),
      textCell(step.after.map((one) => numberOf(one.step)).join(", ")),
      textCell(
        step.within
          .map((id) => outline.procedure.windows.find((one) => one.id === id)?.label ?? id)
          .join(", "),
      ),
      row.critical ? textCell(say(message("workbook/critical"))) : { value: { duration: row.slack } },
      textCell(row.waits.map((wait) => say(waitMessage(outline, wait))).join("; ")),
    ];
  });
  return {
    name: say(message("workbook/list")),
    widths: [8, 24, 14, 48, 10, 10, ...(start === null ? [] : [20, 20]), 10, 10, 10, 28, 14, 18, 10, 32],
    headRows: head.length + 1,
    rows: [
      ...head,
      headings.map((name) => textCell(say(message(`workbook/column-${name}`)), "heading")),
      ...rows,
    ],
  };
}
