import address from "highs/runtime?url";
import type { ProgramSolver } from "../../core/split/index.ts";

/** Thrown when the solver cannot be fetched: it is not on this device, and there is no link. */
class SolverNotHereError extends Error {
  override readonly name = "SolverNotHereError";
}

/**
 * Fetches the solver, which is some megabytes and comes when it is asked for; from then on it stays with
 * the app. Rejects while it is not there.
 */
export async function loadSolver(): Promise<ProgramSolver> {
  const answer = await fetch(address);
  if (!answer.ok) throw new SolverNotHereError(address);
  const [{ solverFrom }, bytes] = await Promise.all([
    import("../../io/solver/index.ts"),
    answer.arrayBuffer(),
  ]);
  return solverFrom(new Uint8Array(bytes));
}
