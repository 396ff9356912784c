export { CheckMemory } from "./check-memory.ts";
export type { Checked, CheckedInTurn } from "./check-procedure.ts";
export { checkInTurn, checkOutline, checkProcedureText } from "./check-procedure.ts";
export { isAboutTheEnd } from "./following.ts";
export type { CheckOptions } from "./scenario-check.ts";
export { runFindings } from "./scenario-check.ts";
