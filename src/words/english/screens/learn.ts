/** What is said of what walks tell of how long steps take. */
export const learnWords = {
  "learn/no-evidence": "No walk tells of it: the planner’s figures stand.",
  "learn/one-walk": "One walk tells of it, which is too few to offer other figures.",
  "learn/hardly-moved":
    "The likely time would move by less than a tenth or half a minute: the planner’s figures stand.",
  "learn/disagree":
    "Plan and evidence disagree: walks vary far more than was planned. Look at them before you change the figures: {$walks :list}.",
  "learn/offered":
    ".input {$count :integer} .match $count one {{{$count} walk tells of it.}} * {{{$count} walks tell of it.}}",
  "learn/offered-rehearsed":
    ".input {$count :integer} .match $count one {{{$count} rehearsal tells of it, and no live walk.}} * {{{$count} rehearsals tell of it, and no live walk.}}",
} as const;
