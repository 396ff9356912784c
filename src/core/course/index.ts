export type { Course, CourseHold, CourseStep, ItemCorrection, Stage } from "./course.ts";
export { lanesInTime, marginOf } from "./course.ts";
export type { Wait, WaitOn } from "./course-waits.ts";
export { waitsBefore, waitsOf } from "./course-waits.ts";
export type { ClosedGate, CrewHoldUp, HoldUp, Situation } from "./hold-ups.ts";
export { crewHoldUps, holdUpsOf } from "./hold-ups.ts";
export type { CrewPlace, Places, TetherLine } from "./places-at.ts";
export { placesAt } from "./places-at.ts";
export type { Stretch } from "./stretch.ts";
