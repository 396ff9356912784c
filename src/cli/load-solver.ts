import { existsSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import type { ProgramSolver } from "../core/split/index.ts";

/**
 * Loads the solver, which is several megabytes and is needed for nothing else. It lies beside the program that is built,
 * and among the installed packages in a checkout.
 */
export async function loadSolver(): Promise<ProgramSolver> {
  const beside = join(dirname(fileURLToPath(import.meta.url)), "highs.wasm");
  const path = existsSync(beside) ? beside : createRequire(import.meta.url).resolve("highs/runtime");
  const { solverFrom } = await import("../io/solver/index.ts");
  return solverFrom(await readFile(path));
}
