export { saveAsRevision } from "./save-as-revision.ts";
export { freeRevision } from "./trial.ts";
export { WhatIf } from "./what-if.tsx";
