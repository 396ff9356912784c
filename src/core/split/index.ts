export type { MixedProgram, ProgramAnswer, ProgramRow, ProgramSolver } from "./mixed-program.ts";
export type { SplitCase } from "./split-case.ts";
export { splitCase } from "./split-case.ts";
export {
  secondProofMessage,
  splitChainMessage,
  splitCostMessages,
  splitVerdict,
  suggestionMessages,
} from "./split-messages.ts";
export type { MovedStep, SplitAnswer, SplitCost, SplitOptions, Suggestion } from "./split-of.ts";
export { splitOf } from "./split-of.ts";
export { walkSplitCase } from "./walk-split-case.ts";
