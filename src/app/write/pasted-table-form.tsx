import { useMemo, useState } from "react";
import type { ProcedureFile } from "../../core/procedure/index.ts";
import type { ColumnUse, PastedTable, Proposal, TimeUnit } from "../../core/write/index.ts";
import { headingNames, tablePut, tableReading } from "../../core/write/index.ts";
import { inWords, words } from "../../words/index.ts";
import { SelectField } from "../parts/index.ts";
import "./pasted-table-form.css";

interface PastedTableFormProps {
  readonly file: ProcedureFile;
  /** The row behind whose task the new ones come. */
  readonly row: string;
  readonly table: PastedTable;
  /** Puts the steps in; they are one gesture. */
  readonly onPut: (proposal: Proposal) => void;
  readonly onEnd: () => void;
}

const USES: readonly ColumnUse[] = ["do", "who", "time", "after", "where", "task", "number", "none"];
const UNITS: readonly TimeUnit[] = ["minutes", "seconds", "hours"];

/** How many values of a column are shown beside what it is taken for. */
const SAMPLE = 3;

/** What each column of a pasted table is taken for, which can be changed, and what becomes of every row ([WRT12]). */
export function PastedTableForm({ file, row, table, onPut, onEnd }: PastedTableFormProps) {
  const [reading, setReading] = useState(() => tableReading(table, file, headingNames(inWords)));
  const { uses, unit } = reading;
  const { proposal, rows } = useMemo(
    () => tablePut(file, row, table, reading, words("write/table-task")),
    [file, row, table, reading],
  );
  const taken = rows.filter(({ step }) => step !== null).length;
  const lost = rows.flatMap((one, index) => (one.lost.length > 0 ? [{ ...one, number: index + 1 }] : []));
  // A use belongs to one column: giving it to another takes it from the first.
  const use = (column: number, chosen: ColumnUse) =>
    setReading({
      unit,
      uses: uses.map((one, at) => (at === column ? chosen : one === chosen ? "none" : one)),
    });
  return (
    <section className="pasted-table" aria-label={words("write/table-title")}>
      <h2>{words("write/table-title")}</h2>
      <p className="hint">{words("write/table-how")}</p>
      {uses.map((one, column) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a column is its place.
        <div key={column} className="pasted-column">
          <SelectField
            label={table.headings?.[column] || words("write/table-column", { number: column + 1 })}
            choices={USES.map((id) => ({ id, name: words(`write/use-${id}`) }))}
            value={one}
            onValue={(chosen) => use(column, chosen)}
          />
          <p className="hint">
            {table.rows
              .flatMap((fields) => fields[column] || [])
              .slice(0, SAMPLE)
              .join(" · ") || words("write/table-empty")}
          </p>
        </div>
      ))}
      {uses.includes("time") && (
        <SelectField
          label={words("write/table-unit")}
          choices={UNITS.map((id) => ({ id, name: words(`write/unit-${id}`) }))}
          value={unit}
          onValue={(chosen) => setReading({ uses, unit: chosen })}
        />
      )}
      <p role="status">{words("write/table-taken", { taken, of: rows.length })}</p>
      {lost.length > 0 && (
        <ul className="pasted-lost" aria-label={words("write/table-lost")}>
          {lost.map(({ number, step, lost: said }) => (
            <li key={number}>
              <b>{words("write/table-row", { number })}</b>{" "}
              {step?.do ?? table.rows[number - 1]?.filter(Boolean).join(" · ")}
              {said.map((one) => (
                <p key={inWords(one)}>{inWords(one)}</p>
              ))}
            </li>
          ))}
        </ul>
      )}
      {proposal.problem && <p role="alert">{inWords(proposal.problem)}</p>}
      <div className="panel-acts">
        <button
          type="button"
          className="main-button"
          disabled={proposal.problem !== null}
          onClick={() => onPut(proposal)}
        >
          {words("write/table-put", { count: taken })}
        </button>
        <button type="button" className="plain-button" onClick={onEnd}>
          {words("write/table-leave")}
        </button>
      </div>
    </section>
  );
}
