export type { Course, CourseHold, CourseStep, ItemCorrection, Stage } from "./course.ts";
export { isCompleteBy, lanesInTime, marginOf } from "./course.ts";
export type { Wait, WaitOn } from "./course-waits.ts";
export { waitsBefore, waitsOf } from "./course-waits.ts";
export type { ClosedGate, CrewHoldUp, HoldUp, Situation } from "./hold-ups.ts";
export { crewHoldUps, holdUpsOf } from "./hold-ups.ts";
export type { CrewPlace, CrewPlaceInTime, Places, TetherLine } from "./places-at.ts";
export { crewPlaceAt, placesAt } from "./places-at.ts";
export type { Stretch } from "./stretch.ts";
