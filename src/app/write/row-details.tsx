import type { Change, ListName, ProcedureFile } from "../../core/procedure/index.ts";
import type { SheetRow } from "../../core/write/index.ts";
import { taskKey } from "../../core/write/index.ts";
import { words } from "../../words/index.ts";
import { fieldChanges, StepDetails, TaskDetails } from "./step-details.tsx";
import type { Answers } from "./use-answers.ts";

interface RowDetailsProps {
  readonly file: ProcedureFile;
  /** The row that is selected last; `null` for none. */
  readonly row: SheetRow | null;
  /** What everybody can do when it begins. */
  readonly offers: Answers["offers"];
  /** A field that was set; `renamed` is the key that the row has then, `null` where it keeps its own. */
  readonly onField: (changes: readonly Change[], renamed: string | null) => void;
}

/** Everything about the row that is selected, beside the table. */
export function RowDetails({ file, row, offers, onField }: RowDetailsProps) {
  const set = (list: ListName, id: string, keyOf: (id: string) => string) => (key: string, value: unknown) =>
    onField(
      fieldChanges(list, id, key, value),
      key === "id" && typeof value === "string" ? keyOf(value) : null,
    );
  if (row?.kind === "step")
    return (
      <StepDetails
        file={file}
        step={row.step}
        number={row.number}
        offers={offers}
        onField={set("steps", row.step.id, (id) => id)}
      />
    );
  if (row?.kind === "task")
    return (
      <TaskDetails
        file={file}
        task={row.task}
        number={row.number}
        onField={set("tasks", row.task.id, taskKey)}
      />
    );
  return row === null ? <p className="hint">{words("write/choose-row")}</p> : null;
}
