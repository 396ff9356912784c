import loadHighs from "highs";
import type { MixedProgram, ProgramAnswer, ProgramSolver } from "../../core/split/index.ts";

type Highs = Awaited<ReturnType<typeof loadHighs>>;

/**
 * Returns a solver of programs made of the bytes of HiGHS, which are compiled here. It takes as long as a program takes
 * and never goes by the clock.
 */
export async function solverFrom(bytes: Uint8Array): Promise<ProgramSolver> {
  const highs = await loadHighs({ wasmBinary: bytes });
  return { solve: (program, mostNodes) => solved(highs, program, mostNodes) };
}

function solved(highs: Highs, program: MixedProgram, mostNodes: number): ProgramAnswer {
  // What is made here is let go of in any case.
  return highs.withModel(modelOf(highs, program), (model): ProgramAnswer => {
    model.options.set({
      output_flag: false,
      mip_max_nodes: mostNodes,
      mip_rel_gap: 0,
    });
    const { modelStatus } = model.run();
    const { optimal, infeasible, unboundedOrInfeasible } = highs.constants.modelStatus;
    // Every column has bounds, so that nothing is unbounded.
    if (modelStatus === infeasible || modelStatus === unboundedOrInfeasible)
      return { status: "impossible", values: null, bound: null };
    const bound = Number(model.info.get("mip_dual_bound"));
    const isFeasible = Number(model.info.get("primal_solution_status")) === FEASIBLE;
    return {
      status: modelStatus === optimal ? "solved" : "stopped",
      values: isFeasible ? model.getSolution().colValue : null,
      bound: Number.isFinite(bound) ? bound : null,
    };
  });
}

/** The code of a solution that fulfils all rows. */
const FEASIBLE = 2;

function modelOf({ constants, infinity }: Highs, { lower, upper, isWhole, rows }: MixedProgram) {
  const { integer, continuous } = constants.variableType;
  const starts = [0];
  for (const { terms } of rows) starts.push((starts.at(-1) ?? 0) + terms.length);
  const terms = rows.flatMap((row) => row.terms);
  return {
    numCols: lower.length,
    numRows: rows.length,
    colCost: lower.map((_, column) => (column === 0 ? 1 : 0)),
    colLower: lower,
    colUpper: upper,
    rowLower: rows.map(({ least }) => least),
    rowUpper: rows.map(({ most }) => (Number.isFinite(most) ? most : infinity)),
    integrality: isWhole.map((whole) => (whole ? integer : continuous)),
    matrix: {
      format: "csr" as const,
      numRows: rows.length,
      numCols: lower.length,
      starts,
      indices: terms.map(([column]) => column),
      values: terms.map(([, factor]) => factor),
    },
  };
}
