export type { Briefing, Chapter, Cue } from "./briefing.ts";
export {
  briefingOf,
  chapterAfter,
  chapterBefore,
  cueAfter,
  cueAt,
  cueBefore,
  cuesPassed,
} from "./briefing.ts";
export type { BriefingKind } from "./briefing-file.ts";
export { briefingFile } from "./briefing-file.ts";
export type { CaptionLine } from "./caption-at.ts";
export { captionAt, captionPlayedAt } from "./caption-at.ts";
export type { Film } from "./film.ts";
export { FILM_RATE, filmOf } from "./film.ts";
export type { PersonFacts } from "./person-facts.ts";
export { personFacts } from "./person-facts.ts";
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
export { sideBySide } from "./side-by-side.ts";
export type { Frame, StepAlert } from "./storyboard-of.ts";
export { frameTime, frameTitle, storyboardOf } from "./storyboard-of.ts";
export { STRIP_STYLE, stripOf } from "./strip-drawing.ts";
