import type { ReactNode } from "react";
import { words } from "../../words/index.ts";

interface TaskTableProps {
  readonly title: ReactNode;
  /** Shown beside the title of the task: its times, and whether it may be left out. */
  readonly remark: string;
  readonly children: ReactNode;
}

/** The table of a task. The title and the column heads are repeated on every page. Times are PET. */
export function TaskTable({ title, remark, children }: TaskTableProps) {
  return (
    <table className="print-task">
      <thead>
        <tr>
          <th scope="colgroup" colSpan={6} className="print-task-title">
            <span>{title}</span> <span className="print-remark">{remark}</span>
          </th>
        </tr>
        <tr>
          <th scope="col">{words("print/number")}</th>
          <th scope="col">{words("print/who")}</th>
          <th scope="col">{words("print/action")}</th>
          <th scope="col">{words("print/column-planned")}</th>
          <th scope="col">{words("print/done")}</th>
          <th scope="col">{words("print/actual")}</th>
        </tr>
      </thead>
      <tbody>{children}</tbody>
    </table>
  );
}
