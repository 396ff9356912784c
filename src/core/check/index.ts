export type { Checked } from "./check-procedure.ts";
export { checkOutline, checkProcedureText } from "./check-procedure.ts";
