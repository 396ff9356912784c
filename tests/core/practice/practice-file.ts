import { readFileSync } from "node:fs";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import type { WalkState } from "../../../src/core/walk/index.ts";
import { walkStateAt } from "../../../src/core/walk/index.ts";
import { LogWriter, minute } from "../log-writer.ts";

/** The procedure to learn by, as it comes with the program. */
export const practiceFile = JSON.parse(
  readFileSync("procedures/practice.procedure.json", "utf8"),
) as ProcedureFile;

/** The log of a practice walk whose clock was started. */
export const practiceLog = (): LogWriter => LogWriter.started(practiceFile, { mode: "rehearsal" });

/** The steps up to the swap of the lamps, each with its minute. */
export const UP_TO_SWAP = [
  ["iv-door", 0.5],
  ["ev1-mast", 1],
  ["ev2-chest", 1.2],
  ["iv-power-off", 1.4],
  ["ev1-old", 2],
  ["ev2-new", 2.2],
] as const;

/** The steps from there to the reading of the voltage. */
export const UP_TO_VOLTS = [
  ...UP_TO_SWAP,
  ["ev2-mast", 2.5],
  ["swap", 3],
  ["ev1-new", 3.5],
  ["iv-power-on", 4],
] as const;

/** The changes that bring the contingency in, behind the step in hand. */
export const BROUGHT = [{ bring: "low-voltage", behind: "ev1-volts" }];

/** The state of a walk at a minute. */
export const stateOf = (log: LogWriter, at: number): WalkState => walkStateAt(log.ledger, minute(at));
