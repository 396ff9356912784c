/** What is said of what walks tell of how long steps take. */
export const learnWords = {
  "learn/no-evidence": "No walk tells of it: the planner’s figures stand.",
  "learn/one-walk": "One walk tells of it, which is too few to offer other figures.",
  "learn/hardly-moved":
    "The likely time would move by less than a tenth or half a minute: the planner’s figures stand.",
  "learn/disagree":
    "Plan and evidence disagree: walks vary far more than was planned. Look at each of them before you change the figures.",
  "learn/offered":
    ".input {$count :integer} .match $count one {{{$count} walk tells of it.}} * {{{$count} walks tell of it.}}",
  "learn/offered-rehearsed":
    ".input {$count :integer} .match $count one {{{$count} rehearsal tells of it, and no live walk.}} * {{{$count} rehearsals tell of it, and no live walk.}}",
  "learn/title": "Learn from walks",
  "learn/what": "How long steps took, beside what was planned",
  "learn/working": "Reading the walks…",
  "learn/failed":
    "The walks on this device could not be read. Nothing is lost: go back and open this page again.",
  "learn/no-walks":
    "There is no walk of this procedure on this device yet. Follow or rehearse it, or bring a log in on the shelf.",
  "learn/told-by":
    ".input {$live :integer} .input {$rehearsed :integer} .match $live $rehearsed one one {{{$live} live walk and {$rehearsed} rehearsal on this device}} one * {{{$live} live walk and {$rehearsed} rehearsals on this device}} * one {{{$live} live walks and {$rehearsed} rehearsal on this device}} * * {{{$live} live walks and {$rehearsed} rehearsals on this device}}",
  "learn/in-one-go":
    ".input {$count :integer} .match $count one {{{$count} step was tapped done in one go with others and tells nothing.}} * {{{$count} steps were tapped done in one go with others and tell nothing each.}}",
  "learn/renamed": "Renamed steps",
  "learn/renamed-how":
    "A step that has another id in this revision starts afresh, unless you say which one it is now. Offered are the steps by the same people, with the same items and to the same place.",
  "learn/renamed-is-now": "“{$action}” ({$id}) is now",
  "learn/renamed-none": "none of these",
  "learn/renamed-step": "{$number} {$action}",
  "learn/renamed-said": "{$before} is now {$now}.",
  "learn/renamed-take-back": "Take back",
  "learn/renamed-take-back-of": "Take back what {$before} is now",
  "learn/unmatched":
    ".input {$count :integer} .match $count one {{{$count} time is of a step that is not there any more, or is other work now: {$steps :list}.}} * {{{$count} times are of steps that are not there any more, or are other work now: {$steps :list}.}}",
  "learn/which": "Which steps are shown",
  "learn/shown-evidence": "Steps with walks ({$count :integer})",
  "learn/shown-offered": "Steps with an offer ({$count :integer})",
  "learn/shown-all": "All steps ({$count :integer})",
  "learn/none-shown": "There is none of these.",
  "learn/steps": "Steps",
  "learn/planned":
    "Planned: {$likely :length form=second} likely, {$low :length form=second} to {$high :length form=second}",
  "learn/expected":
    "Expected now: {$middle :length form=second}, eight of ten walks {$from :length form=second} to {$to :length form=second}",
  "learn/weight": "Weight of the walks {$weight :number maximumFractionDigits=1}",
  "learn/weight-thin": "Thin: weight of the walks {$weight :number maximumFractionDigits=1}",
  "learn/rehearsed-only": "from rehearsals alone, which do not tell how fast a live walk is",
  "learn/take":
    "Plan {$likely :length form=second} likely, {$low :length form=second} to {$high :length form=second}",
  "learn/walks": ".input {$count :integer} .match $count one {{{$count} walk}} * {{{$count} walks}}",
  "learn/walk-took": "{$time :length form=second}, {$mode} of {$at :utc}",
  "learn/walk-broken-off": "Broken off after {$time :length form=second}, {$mode} of {$at :utc}",
  "learn/mode-live": "live walk",
  "learn/mode-rehearsal": "rehearsal",
  "learn/weighs": "weighs {$weight :number maximumFractionDigits=2}",
  "learn/start-said": "start entered",
  "learn/start-inferred": "start inferred",
  "learn/was-reopened": "opened again, both parts added",
  "learn/was-held": "a hold left out",
  "learn/far-off": "far off the others, weighs less",
  "learn/legend-planned": "plan: eight of ten",
  "learn/legend-found": "plan and walks: eight of ten",
  "learn/legend-quantiles": "eight of ten of these walks",
  "learn/legend-live": "live walk",
  "learn/legend-rehearsal": "rehearsal",
  "learn/legend-broken-off": "broken off",
  "learn/legend-outlier": "far off the others",
  "learn/legend-scale": "planned likely time; the lines beside it are half and twice as long",
  "learn/no-learning":
    ".input {$walks :integer} .match $walks one {{{$walks} rehearsal: no learning is shown.}} * {{{$walks} rehearsals: no learning is shown.}}",
  "learn/learning-shorter":
    "Over {$walks :integer} rehearsals steps became shorter: by {$percent :integer} % with each doubling of the repeats.",
  "learn/learning-longer":
    "Over {$walks :integer} rehearsals steps became longer: by {$percent :integer} % with each doubling of the repeats.",
  "learn/how":
    "Nothing changes until you save. Each offer is yours to take or to leave; the walks do not tell why a step took as long.",
  "learn/save":
    ".input {$count :integer} .match $count 0 {{Save as revision {$revision}}} one {{Save {$count} time as revision {$revision}}} * {{Save {$count} times as revision {$revision}}}",
  "learn/summary": "Times of {$steps :list} after the walks {$walks :list}.",
  "learn/summary-behind": "{$summary} Times of {$steps :list} after the walks {$walks :list}.",
} as const;
