export { freeRevision } from "./trial.ts";
export { WhatIf } from "./what-if.tsx";
