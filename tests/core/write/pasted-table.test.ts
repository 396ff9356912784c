import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { applyChanges } from "../../../src/core/changes/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { readProcedure } from "../../../src/core/procedure/index.ts";
import type { Duration } from "../../../src/core/units/index.ts";
import { formatDuration, inSeconds } from "../../../src/core/units/index.ts";
import type { PastedTable, TableReading } from "../../../src/core/write/index.ts";
import { headingNames, pastedTable, tablePut, tableReading } from "../../../src/core/write/index.ts";
import { readTime } from "../../../src/core/write/read-time.ts";
import { inWords } from "../../../src/words/index.ts";
import { fileWith, step, task } from "../procedure-builder.ts";

const NAMES = headingNames(inWords);

const file = (() => {
  const read = readProcedure(
    JSON.stringify(
      fileWith([task("first", [step("open", "ev1", 2)])], {
        places: [{ id: "mast", label: "Approach mast" }],
      }),
    ),
  ).file;
  if (!read) throw new Error("no file");
  return read;
})();

const HEADED = [
  "No.\tTask\tWho\tAction\tMinutes\tWhere\tAfter",
  "1\tMast\tEV1\tClimb the mast\t4\tApproach mast\t",
  '2\t\tev2\t"Hold the line\nand look up"\t2.5\t\t1',
  "3\tBolts\tEV1 + EV2\tTurn bolt 1\t1:05\tfin\t1, 2",
  "4\t\t\tTurn bolt 2\tsoon\t\t4; 9",
  "5\t\tPilot\tSteer\t3\t\t",
  "6\t\tIV\t\t3\t\t",
].join("\n");

function taken(text: string, reading?: Partial<TableReading>, of: ProcedureFile = file) {
  const table = pastedTable(text, NAMES) as PastedTable;
  const guess = tableReading(table, of, NAMES);
  return { guess, ...tablePut(of, "open", table, { ...guess, ...reading }, "Pasted") };
}

const after = (text: string) => {
  const { proposal } = taken(text);
  const applied = proposal.changes && applyChanges(file, proposal.changes);
  if (!applied?.file) throw new Error("not applied");
  return applied.file.tasks;
};

describe("a table from a spreadsheet", () => {
  it("[WRT12] becomes tasks and steps behind the chosen row", () => {
    const tasks = after(HEADED);
    expect(tasks.map(({ title }) => title)).toEqual([tasks[0]?.title, "Mast", "Bolts"]);
    expect(tasks[1]?.steps).toEqual([
      { id: "climb-the-mast", by: ["ev1"], do: "Climb the mast", time: "PT4M", at: "mast" },
      {
        id: "hold-the-line-and-look-up",
        by: ["ev2"],
        do: "Hold the line\nand look up",
        time: "PT2M30S",
        after: ["climb-the-mast"],
      },
    ]);
    expect(tasks[2]?.steps).toEqual([
      {
        id: "turn-bolt-1",
        by: ["ev1", "ev2"],
        do: "Turn bolt 1",
        time: "PT1H5M",
        after: ["climb-the-mast", "hold-the-line-and-look-up"],
      },
      { id: "turn-bolt-2", by: ["ev1", "ev2"], do: "Turn bolt 2" },
    ]);
  });

  it("[WRT12] says row by row what could not be taken", () => {
    const { rows } = taken(HEADED);
    expect(rows.map(({ step: made, lost }) => [made !== null, lost.map(({ key }) => key)])).toEqual([
      [true, []],
      [true, []],
      [true, ["write/row-place-lost"]],
      [true, ["write/row-time-lost", "write/row-after-itself", "write/row-after-lost"]],
      [false, ["write/row-of-somebody"]],
      [false, ["write/row-without-action"]],
    ]);
  });

  it("[WRT12] is taken by what stands in it where it has no headings", () => {
    const { guess, rows } = taken("1,EV1,Loosen the strap,3\n2,EV2,Stow the strap,4");
    expect(guess).toEqual({ uses: ["number", "who", "do", "time"], unit: "minutes" });
    expect(rows.map(({ step: made }) => made?.time)).toEqual(["PT3M", "PT4M"]);
    expect(taken("who;do;duration (s)\nEV1;Wait;90").rows[0]?.step?.time).toBe("PT1M30S");
  });

  it("[WRT12] names a step of the procedure by its number or id, and a row by its place where none are numbered", () => {
    const { rows } = taken("who\tdo\tafter\nEV1\tA\t1.1\nEV2\tB\topen\nEV1\tC\t2");
    expect(rows.map(({ step: made }) => made?.after)).toEqual([["open"], ["open"], ["b"]]);
  });

  it("[WRT12] is no table without a second column, and no gesture without a step", () => {
    expect(pastedTable("just a text\nand another", NAMES)).toBeNull();
    expect(pastedTable("", NAMES)).toBeNull();
    expect(pastedTable(Array(2001).fill("a\tb").join("\n"), NAMES)).toBeNull();
    expect(taken("who\tdo\nNobody\tNothing").proposal.problem?.key).toBe("write/no-steps-in-table");
    expect(
      tablePut(file, "gone", pastedTable(HEADED, NAMES) as PastedTable, taken(HEADED).guess, "T").proposal
        .problem?.key,
    ).toBe("write/no-row");
  });

  it("[WRT12] accounts for every row, and gives a procedure that reads, whatever is pasted", () => {
    const field = fc.oneof(
      fc.constantFrom("EV1", "ev2 and iv", "5", "1:10", "PT5M", "open", "2", "", "task", "who", "do"),
      fc.string({ unit: "grapheme", maxLength: 12 }),
    );
    fc.assert(
      fc.property(
        fc.array(fc.array(field, { minLength: 2, maxLength: 8 }), { minLength: 1, maxLength: 8 }),
        (lines) => {
          const table = pastedTable(lines.map((line) => line.join("\t")).join("\n"), NAMES);
          fc.pre(table !== null);
          const { proposal, rows } = tablePut(
            file,
            "open",
            table,
            tableReading(table, file, NAMES),
            "Pasted",
          );
          expect(rows).toHaveLength(table.rows.length);
          for (const { step: made, lost } of rows) expect(made !== null || lost.length > 0).toBe(true);
          if (!proposal.changes) return;
          const applied = applyChanges(file, proposal.changes);
          expect(applied.problem).toBeNull();
          const read = readProcedure(JSON.stringify(applied.file));
          expect(read.findings.filter(({ code }) => code.startsWith("file/"))).toEqual([]);
        },
      ),
    );
  });
});

describe("a time as planners write it", () => {
  it.each([
    ["5", 300],
    ["2,5", 150],
    ["0:05", 300],
    ["1:05:30", 3930],
    ["1 h 5 min", 3900],
    ["90 s", 90],
    ["pt4m", 240],
    ["0", 0],
  ])("[WRT12] reads %s", (written, seconds) => {
    expect(inSeconds(readTime(written, "minutes") ?? -1000)).toBe(seconds);
  });

  it.each(["", "soon", "5 6", "-5", "1:75", "5 parsecs", "5-7", "1e3", "9999999999"])(
    "[WRT12] does not read %s",
    (written) => {
      expect(readTime(written, "minutes")).toBeNull();
    },
  );

  it("[WRT12] reads what the project itself writes, in any unit of the column", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 400 * 3600 }),
        fc.constantFrom("seconds", "minutes", "hours"),
        (seconds, unit) => {
          const time = (seconds * 1000) as Duration;
          expect(readTime(formatDuration(time), unit as "hours")).toBe(time);
        },
      ),
    );
  });
});
