export { useRisk } from "./use-risk.ts";
export { useWalkRisk } from "./use-walk-risk.ts";
