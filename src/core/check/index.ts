export type { Checked, CheckedInTurn, CheckOptions } from "./check-procedure.ts";
export { checkInTurn, checkOutline, checkProcedureText, runFindings } from "./check-procedure.ts";
export { isAboutTheEnd } from "./following.ts";
