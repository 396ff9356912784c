export { useRisk } from "./use-risk.ts";
