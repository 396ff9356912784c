import type { Course } from "../../core/course/index.ts";
import type { Alert, Outline, OutlineStep, Step, Task } from "../../core/procedure/index.ts";
import type { CrewId, Duration } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { callsOf, limitWords } from "../parts/index.ts";
import { branchWords, conditionWords, effectWords } from "../print/index.ts";

/** One row of a card. A long text takes several rows, of which the first has the mark or box and the last the blank. */
export interface CardRow {
  readonly kind: "title" | "head" | "when" | "alert" | "do" | "detail" | "tick" | "record" | "ask";
  readonly text: string;
  readonly isFirst: boolean;
  readonly isLast: boolean;
  readonly level: Alert["level"] | null;
}

/** The rows of one step, with the title of its task before them where it is the first of that task. */
export interface CardGroup {
  /** The number of the step as on every screen. */
  readonly number: string;
  readonly rows: readonly CardRow[];
}

/** A step and how a card names it. */
interface CardStep {
  readonly step: Step;
  readonly number: string;
  readonly entry: OutlineStep | null;
  readonly start: Duration | null;
}

/**
 * What the cards of one crew member say, step by step: the steps of their own and joint ones in reading order, then those of
 * the contingencies. Texts are broken into rows of at most `letters` letters.
 */
export function cardGroups(
  outline: Outline,
  course: Course | null,
  crew: CrewId,
  letters: number,
): readonly CardGroup[] {
  const { tasks, contingencies } = outline.procedure;
  const main = tasks.flatMap((task, index) => {
    const own = outline.steps
      .filter((entry) => entry.task === task && entry.step.by.includes(crew))
      .map((entry) => ({
        step: entry.step,
        number: entry.number,
        entry,
        start: course?.steps.get(entry.step.id)?.start ?? null,
      }));
    return groupsOf(outline, crew, { title: taskTitle(task, index + 1), steps: own, letters });
  });
  const others = contingencies.flatMap(({ title, when, tasks: own }, index) => {
    const name = { number: `C${index + 1}`, title };
    const steps = own.flatMap((task, taskIndex) =>
      task.steps.flatMap((step, stepIndex) =>
        step.by.includes(crew)
          ? [{ step, number: `${name.number}.${taskIndex + 1}.${stepIndex + 1}`, entry: null, start: null }]
          : [],
      ),
    );
    const heading =
      when === undefined
        ? words("cards/contingency", name)
        : words("cards/contingency-when", { ...name, when });
    return groupsOf(outline, crew, { title: heading, steps, letters });
  });
  return [...main, ...others];
}

const taskTitle = ({ title, priority }: Task, number: number) =>
  priority === "get-ahead"
    ? words("cards/get-ahead", { number, title })
    : words("cards/task", { number, title });

function groupsOf(
  outline: Outline,
  crew: CrewId,
  { title, steps, letters }: { title: string; steps: readonly CardStep[]; letters: number },
): CardGroup[] {
  return steps.map((one, index) => ({
    number: one.number,
    rows: [...(index === 0 ? rowsOf("title", title, letters) : []), ...stepRows(outline, crew, one, letters)],
  }));
}

function stepRows(
  outline: Outline,
  crew: CrewId,
  { step, number, entry, start }: CardStep,
  letters: number,
): CardRow[] {
  const rows = (kind: CardRow["kind"], text: string, level: Alert["level"] | null = null) =>
    rowsOf(kind, text, letters, level);
  const others = step.by.filter((one) => one !== crew);
  const head = [
    number,
    ...(start === null ? [] : [words("cards/planned", { at: start })]),
    ...(others.length > 0 ? [words("cards/with", { crew: callsOf(outline, others) })] : []),
  ];
  const details = [...conditionWords(outline, step, entry), ...effectWords(outline, step)];
  return [
    ...rows("head", head.join(" · ")),
    ...rows("when", branchWords(step)),
    ...step.alerts.flatMap(({ level, text }) => rows("alert", text, level)),
    ...rows("do", step.do),
    ...rows("detail", details.join(" · ")),
    ...step.check.flatMap((counted) => rows("tick", counted)),
    ...step.records.flatMap((record) =>
      rows(
        "record",
        [record.label ?? record.id, limitWords(record)].filter(Boolean).join(words("figures/between")),
      ),
    ),
    ...(step.confirm
      ? rows(
          "tick",
          words("print/confirms", { crew: callsOf(outline, [step.confirm.by]), text: step.confirm.text }),
        )
      : []),
    ...(step.decide
      ? [...rows("ask", step.decide.ask), ...step.decide.outcomes.flatMap((outcome) => rows("tick", outcome))]
      : []),
    ...(step.refs.length > 0 ? rows("detail", words("read/refs", { refs: step.refs })) : []),
  ];
}

function rowsOf(
  kind: CardRow["kind"],
  text: string,
  letters: number,
  level: Alert["level"] | null = null,
): CardRow[] {
  const pieces = isolatedEach(piecesOf(text, letters));
  return pieces.map((piece, index) => ({
    kind,
    text: piece,
    isFirst: index === 0,
    isLast: index === pieces.length - 1,
    level,
  }));
}

/** Pieces of a text in which what was isolated in the whole is isolated in each: a row is a paragraph of its own. */
function isolatedEach(pieces: readonly string[]): string[] {
  let open = 0;
  return pieces.map((piece) => {
    const before = "\u2068".repeat(open);
    open += (piece.match(/[\u2066-\u2068]/g) ?? []).length - (piece.match(/\u2069/g) ?? []).length;
    open = Math.max(0, open);
    return before + piece + "\u2069".repeat(open);
  });
}

/** A text in pieces of at most so many letters, broken between words where it can be. Empty text gives none. */
export function piecesOf(text: string, letters: number): string[] {
  const pieces: string[] = [];
  let piece = "";
  for (const word of text.split(/(?<=\s)/)) {
    if (piece !== "" && piece.length + word.length > letters) {
      pieces.push(piece);
      piece = "";
    }
    piece += word;
    while (piece.length > letters) {
      const end = lettersBefore(piece, letters);
      pieces.push(piece.slice(0, end));
      piece = piece.slice(end);
    }
  }
  return piece === "" ? pieces : [...pieces, piece];
}

/** Where a text may be cut at or before a number of code units, not between the two halves of one letter. */
function lettersBefore(text: string, most: number): number {
  const isHalved = /[\uD800-\uDBFF]/.test(text.charAt(most - 1));
  return isHalved && most > 1 ? most - 1 : most;
}
