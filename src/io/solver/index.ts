export { solverFrom } from "./solver-from.ts";
