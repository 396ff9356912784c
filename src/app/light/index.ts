export { ContactTimes } from "./contact-times.tsx";
export { LightAndStart } from "./light-and-start.tsx";
export { LightField } from "./light-field.tsx";
export { type ProcedureLight, useProcedureLight } from "./use-procedure-light.ts";
