export type { Lesson } from "./lesson-at.ts";
export { lessonAt } from "./lesson-at.ts";
export { isPracticeWalk, PRACTICE } from "./practice-walk.ts";
export type { Practised } from "./practised.ts";
export { practisedOf } from "./practised.ts";
