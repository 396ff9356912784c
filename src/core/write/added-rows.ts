import { message } from "../../words/index.ts";
import { writtenOver } from "../changes/index.ts";
import type { Fields, ProcedureFile } from "../procedure/index.ts";
import { FORMATS } from "../procedure/index.ts";
import { FreeIds, freeDecisionIds, freeIdsIn } from "./free-id.ts";
import type { Manuscript } from "./manuscript.ts";
import { manuscriptOf } from "./manuscript.ts";
import type { Proposal } from "./proposal.ts";
import { impossible, proposed } from "./proposal.ts";
import type { FileStep, FileTask } from "./sheet.ts";
import { placedStep, taskKey, tasksOf } from "./sheet.ts";

/** One of the crew of a new procedure. */
export interface NewCrewMember {
  readonly call: string;
  readonly station: "outside" | "inside" | "ground";
}

/** What a new procedure is begun with. */
export interface NewProcedure {
  readonly title: string;
  readonly crew: readonly NewCrewMember[];
  /** The title of its first task. */
  readonly task: string;
}

/**
 * A new procedure with a crew and a task without steps ([WRT1]); `null` when it has no title or nobody in it. Ids are made of the
 * title and the call signs.
 */
export function newManuscript({ title, crew, task }: NewProcedure): Manuscript | null {
  const ids = new FreeIds([]);
  const file = {
    format: FORMATS[0],
    id: new FreeIds([]).next(title, "procedure"),
    title,
    revision: "A",
    crew: crew.map(({ call, station }) => ({ id: ids.next(call, "crew"), call, station })),
    tasks: [{ id: new FreeIds([]).next(task, "task"), title: task, steps: [] }],
  };
  return manuscriptOf(`${JSON.stringify(file, null, 2)}\n`);
}

/**
 * A manuscript that begins with a copy of a text, under another id and title, as revision A; `null` when the text has not the shape of a
 * procedure. The rest of its lines stays as it is.
 */
export function copyOf({
  text,
  id,
  title,
}: {
  readonly text: string;
  readonly id: string;
  readonly title: string;
}): Manuscript | null {
  const file = manuscriptOf(text)?.file;
  return file ? manuscriptOf(writtenOver(text, { ...file, id, title, revision: "A" })) : null;
}

/** Behind which step, or as the first of which task, a row is put. */
export type RowPlace = { readonly behind: string } | { readonly first: string };

/** Where what comes next to a row is put: behind a step, first in a task; `null` when there is no such row. */
export function placeAt(file: ProcedureFile, row: string): RowPlace | null {
  if (placedStep(file, row)) return { behind: row };
  const task = tasksOf(file).find(({ id }) => taskKey(id) === row);
  return task ? { first: task.id } : null;
}

const NO_ROW = message("write/no-row");

/** The step from which a new one takes over who, where and on what condition: the one before it, else the one behind it. */
function neighbourOf(file: ProcedureFile, place: RowPlace): FileStep | null {
  if ("behind" in place) return placedStep(file, place.behind)?.step ?? null;
  const tasks = tasksOf(file);
  const at = tasks.findIndex(({ id }) => id === place.first);
  const before = tasks.slice(0, Math.max(0, at)).findLast(({ steps }) => steps.length > 0);
  return tasks[at]?.steps[0] ?? before?.steps.at(-1) ?? null;
}

/** Who does a new step beside a row, where nobody says otherwise ([WRT2]): who does its neighbour, else the first one outside. */
export function performersBeside(file: ProcedureFile, row: string): readonly string[] {
  const place = placeAt(file, row);
  const neighbour = place && neighbourOf(file, place);
  const first = file.crew.find(({ station }) => station === "outside") ?? file.crew[0];
  return neighbour?.by ?? (first ? [first.id] : []);
}

/**
 * A new step beside a row ([WRT2]). It takes over who and where from its neighbour, and from one on a condition that too; `by` are others
 * who do it.
 */
export function stepAdded(
  file: ProcedureFile,
  row: string,
  action: string,
  by: readonly string[] | null = null,
): Proposal {
  const place = placeAt(file, row);
  if (!place) return impossible(NO_ROW);
  const neighbour = neighbourOf(file, place);
  const at = neighbour?.to ?? neighbour?.at;
  const id = freeIdsIn(file, "steps").next(action);
  const add: Fields = {
    id,
    by: [...(by ?? performersBeside(file, row))],
    do: action,
    ...(at === undefined ? {} : { at }),
    ...(neighbour?.when && "behind" in place ? { when: neighbour.when } : {}),
  };
  return proposed([{ add, ...place }], [id]);
}

/** A new task without steps behind the task of a row ([WRT2]). */
export function taskAdded(file: ProcedureFile, row: string, title: string): Proposal {
  const task =
    placedStep(file, row)?.task ?? tasksOf(file).find(({ id }) => taskKey(id) === row) ?? file.tasks.at(-1);
  if (!task) return impossible(NO_ROW);
  const id = freeIdsIn(file, "tasks").next(title, "task");
  return proposed([{ add: { id, title, steps: [] }, list: "tasks", behind: task.id }], [taskKey(id)]);
}

/** Gives steps ids that are free in a file. Among one another they keep what they come after and their conditions. */
function renewed(file: ProcedureFile, steps: readonly FileStep[]): FileStep[] {
  const [stepIds, decisionIds] = [freeIdsIn(file, "steps"), freeDecisionIds(file)];
  const named = new Map(steps.map(({ id }) => [id, stepIds.next(id)]));
  const decided = new Map(
    steps.flatMap(({ decide }) => (decide ? [[decide.id, decisionIds.next(decide.id, "decision")]] : [])),
  );
  const newId = (id: string) => named.get(id) ?? id;
  return steps.map((step) => ({
    ...step,
    id: newId(step.id),
    ...(step.after
      ? {
          after: step.after.map((one) =>
            typeof one === "string" ? newId(one) : { ...one, step: newId(one.step) },
          ),
        }
      : {}),
    ...(step.decide ? { decide: { ...step.decide, id: decided.get(step.decide.id) ?? step.decide.id } } : {}),
    ...(step.when
      ? {
          when: Object.fromEntries(
            Object.entries(step.when).map(([decision, outcome]) => [
              decided.get(decision) ?? decision,
              outcome,
            ]),
          ),
        }
      : {}),
  }));
}

/** Puts steps beside a row, with ids that are free ([WRT2]). */
export function stepsPut(file: ProcedureFile, row: string, steps: readonly FileStep[]): Proposal {
  const place = placeAt(file, row);
  if (!place) return impossible(NO_ROW);
  const fresh = renewed(file, steps);
  return proposed(
    fresh.map((add, index) => {
      const before = fresh[index - 1];
      return { add: { ...add }, ...(before ? { behind: before.id } : place) };
    }),
    fresh.map(({ id }) => id),
  );
}

/** Puts tasks behind the task of a row, with ids that are free, those of their steps too. */
export function tasksPut(file: ProcedureFile, row: string, tasks: readonly FileTask[]): Proposal {
  const behind = placedStep(file, row)?.task ?? tasksOf(file).find(({ id }) => taskKey(id) === row);
  if (!behind) return impossible(NO_ROW);
  const ids = freeIdsIn(file, "tasks");
  const steps = renewed(
    file,
    tasks.flatMap((task) => task.steps),
  );
  let at = 0;
  const fresh = tasks.map((task) => {
    const own = steps.slice(at, at + task.steps.length);
    at += task.steps.length;
    return { ...task, id: ids.next(task.id, "task"), steps: own };
  });
  return proposed(
    fresh.map((add, index) => ({
      add: { ...add },
      list: "tasks" as const,
      behind: fresh[index - 1]?.id ?? behind.id,
    })),
    fresh.map(({ id }) => taskKey(id)),
  );
}
