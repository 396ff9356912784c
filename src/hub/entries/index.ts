export type { IntakeListener, TakenBatch } from "./intake.ts";
export { Intake } from "./intake.ts";
export type { Offerer } from "./judge-entry.ts";
export { WalkTitles } from "./walk-titles.ts";
