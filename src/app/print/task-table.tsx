import type { ReactNode } from "react";

interface TaskTableProps {
  readonly title: string;
  /** What is said of the task beside its title: when, and whether it may be left out. */
  readonly remark: string;
  readonly children: ReactNode;
}

/** The table of a task; its title and its column heads are repeated on every page it runs over. Times are PET. */
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
          <th scope="col">No.</th>
          <th scope="col">Who</th>
          <th scope="col">Action</th>
          <th scope="col">Planned</th>
          <th scope="col">Done</th>
          <th scope="col">Actual</th>
        </tr>
      </thead>
      <tbody>{children}</tbody>
    </table>
  );
}
