import type { ReactNode } from "react";
import { useMemo } from "react";
import type { ProcedureFile } from "../../core/procedure/index.ts";
import type { SheetRow } from "../../core/write/index.ts";
import type { BraidPlaces, Strand } from "../braid/index.ts";
import { HEADS } from "./sheet-rows.ts";
import { StrandTargets } from "./strand-targets.tsx";

interface StrandTargetParts {
  /** The row whose strands are tapped; `null` for none, or one that nobody does. */
  readonly row: SheetRow | null;
  readonly crew: ProcedureFile["crew"];
  readonly strands: readonly Strand[];
  readonly onTurn: (crew: string) => void;
  readonly select: (rows: readonly string[]) => void;
}

/** What is laid over the braid while strands are tapped at the row of a step; `null` for nothing. The same function until something changes. */
export function useStrandTargets({
  row,
  crew,
  strands,
  onTurn,
  select,
}: StrandTargetParts): ((braid: BraidPlaces) => ReactNode) | null {
  return useMemo(() => {
    if (row?.kind !== "step") return null;
    const ids = crew.map(({ id }) => id);
    return (braid) => (
      <StrandTargets
        braid={braid}
        strands={strands}
        crew={ids}
        step={row.step}
        number={row.number}
        onTurn={onTurn}
        onRow={(key) => {
          if (key !== HEADS) select([key]);
        }}
      />
    );
  }, [row, crew, strands, onTurn, select]);
}
