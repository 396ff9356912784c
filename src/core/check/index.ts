export type { Checked, CheckOptions } from "./check-procedure.ts";
export { checkOutline, checkProcedureText } from "./check-procedure.ts";
