export { PlanLeaves } from "./plan-leaves.tsx";
export { Poster } from "./poster.tsx";
