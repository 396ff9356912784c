export type { Checked, CheckOptions } from "./check-procedure.ts";
export { checkOutline, checkProcedureText, runFindings } from "./check-procedure.ts";
export { isAboutTheEnd } from "./following.ts";
