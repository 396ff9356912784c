export { WhatIf } from "./what-if.tsx";
