import { message } from "../../words/index.ts";
import type { Finding, Mend, Outline } from "../procedure/index.ts";
import { finding } from "../procedure/index.ts";
import { isUnitCode, nearestUnitCode } from "../quantity/index.ts";
import type { WrittenStep } from "./written-steps.ts";

/** Returns an error for each unit of a supply or record that is no UCUM code, with the nearest one ([PRO19]). */
export function unitFindings(outline: Outline, steps: readonly WrittenStep[]): Finding[] {
  const ofSupplies = outline.procedure.supplies.flatMap(({ crew, id, unit }, index) =>
    unitFinding(unit, `/supplies/${index}/unit`, { things: [crew, id] }, (meant) => ({
      change: `${crew} ${id}`,
      list: "supplies",
      set: { unit: meant },
    })),
  );
  const ofRecords = steps.flatMap(({ step, records }) =>
    records.flatMap(({ record, pointer }) =>
      unitFinding(record.unit, `${pointer}/unit`, { steps: [step.id], things: [record.id] }, (meant) => ({
        change: step.id,
        set: { records: step.records.map((one) => (one === record ? { ...one, unit: meant } : one)) },
      })),
    ),
  );
  return [...ofSupplies, ...ofRecords];
}

function unitFinding(
  unit: string,
  pointer: string,
  concerned: Pick<Partial<Finding>, "steps" | "things">,
  changeTo: (meant: string) => Mend["changes"][number],
): Finding[] {
  if (isUnitCode(unit)) return [];
  const meant = nearestUnitCode(unit);
  const said = meant ? message("unit/not-valid-meant", { unit, meant }) : message("unit/not-valid", { unit });
  const mend = meant ? { changes: [changeTo(meant)], says: message("unit/mend", { unit, meant }) } : null;
  return [finding("error", "unit/not-valid", pointer, said, { ...concerned, mend })];
}
