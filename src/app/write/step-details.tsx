import { useMemo } from "react";
import type { Change, Fields, ListName, ProcedureFile } from "../../core/procedure/index.ts";
import type { CrewOffers, FileStep, FileTask } from "../../core/write/index.ts";
import { words } from "../../words/index.ts";
import { choicesIn, memberSchema } from "./field-schema.ts";
import { MemberFields } from "./schema-fields.tsx";
import type { FieldChoices, FormContext } from "./typed-fields.tsx";
import type { Answers } from "./use-answers.ts";

/** The changes that set a field of a member, or take it out with `undefined`. */
export const fieldChanges = (list: ListName, id: string, key: string, value: unknown): readonly Change[] => {
  const of = list === "steps" ? {} : { list };
  if (key === "id" && typeof value === "string") return [{ rename: id, ...of, to: value }];
  return [
    value === undefined ? { change: id, ...of, unset: [key] } : { change: id, ...of, set: { [key]: value } },
  ];
};

function possibleFor(
  step: FileStep,
  offers: readonly CrewOffers[] | null,
  list: ListName,
  path: readonly string[],
): ReadonlySet<string> | null {
  const own = offers?.filter(({ crew }) => step.by.some((one) => one === crew)) ?? [];
  if (own.length === 0) return null;
  if (list === "items" && path[0] === "moves" && path.at(-1) === "item")
    return new Set(own.flatMap(({ holds, beside }) => [...holds, ...beside]));
  if (list === "places" && (path[0] === "at" || path[0] === "to"))
    return new Set(own.flatMap(({ reaches }) => reaches));
  return null;
}

interface StepDetailsProps {
  readonly file: ProcedureFile;
  readonly step: FileStep;
  readonly number: string;
  readonly offers: Answers["offers"];
  readonly onField: (key: string, value: unknown) => void;
}

/**
 * All fields of a step, beside the table. What is not possible when it begins is offered last, and says so once that is known of what is
 * written now ([WRT3]).
 */
export function StepDetails({ file, step, number, offers, onField }: StepDetailsProps) {
  const context = useMemo((): FormContext => {
    const choicesOf = (list: ListName, path: readonly string[]): FieldChoices => {
      const possible = possibleFor(step, offers?.value ?? null, list, path);
      const choices = choicesIn(file, list).filter(({ id }) => list !== "steps" || id !== step.id);
      return {
        choices: possible
          ? choices.toSorted((a, b) => Number(possible.has(b.id)) - Number(possible.has(a.id)))
          : choices,
        // The order stays meanwhile, so that a list that is open does not change twice.
        possible: offers?.isOld === false ? possible : null,
      };
    };
    return { list: "steps", choicesOf };
  }, [file, step, offers]);
  return (
    <section aria-label={words("write/details-of", { number, action: step.do })} className="write-details">
      <h2>{words("write/step-number", { number })}</h2>
      <MemberFields
        key={step.id}
        context={context}
        schema={memberSchema("steps")}
        value={step as Fields}
        without={NOTHING}
        onField={onField}
      />
    </section>
  );
}

const NOTHING: ReadonlySet<string> = new Set();
const STEPS: ReadonlySet<string> = new Set(["steps"]);

interface TaskDetailsProps {
  readonly file: ProcedureFile;
  readonly task: FileTask;
  readonly number: string;
  readonly onField: (key: string, value: unknown) => void;
}

/** All fields of a task but its steps. */
export function TaskDetails({ file, task, number, onField }: TaskDetailsProps) {
  const context = useMemo(
    (): FormContext => ({
      list: "tasks",
      choicesOf: (list) => ({ choices: choicesIn(file, list), possible: null }),
    }),
    [file],
  );
  return (
    <section aria-label={words("write/details-of", { number, action: task.title })} className="write-details">
      <h2>{words("write/task-number", { number })}</h2>
      <MemberFields
        key={task.id}
        context={context}
        schema={memberSchema("tasks")}
        value={task as Fields}
        without={STEPS}
        onField={onField}
      />
    </section>
  );
}
