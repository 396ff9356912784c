export type { Briefing, Chapter, Moment } from "./briefing.ts";
export {
  briefingOf,
  chapterAfter,
  chapterBefore,
  momentAfter,
  momentAt,
  momentBefore,
  momentsPassed,
  stepsShownAt,
} from "./briefing.ts";
export type { CaptionLine } from "./caption-at.ts";
export { captionAt } from "./caption-at.ts";
export type { Person } from "./people-at.ts";
export { peopleAt } from "./people-at.ts";
export type { Playback, Speed } from "./playback.ts";
export {
  atSpeed,
  captionGrain,
  isPlaying,
  openedPlayback,
  paused,
  pausedAt,
  petOf,
  played,
  SPEEDS,
} from "./playback.ts";
export type { AlertToCome, PresenterNote, PresenterView } from "./presenter-at.ts";
export { presenterAt } from "./presenter-at.ts";
export type { QuizAnswer, QuizStop } from "./quiz-stops.ts";
export { quizStops, stopAfter } from "./quiz-stops.ts";
export type { Frame, StepAlert } from "./storyboard-of.ts";
export { storyboardOf } from "./storyboard-of.ts";
