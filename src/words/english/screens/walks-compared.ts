/** What is said of many walks side by side. */
export const walksComparedWords = {
  "walks/title": "Walks compared",
  "walks/what": "Every walk of this procedure on one time axis",
  "walks/all": ".input {$count :integer} .match $count one {{{$count} walk}} * {{{$count} walks}}",
  "walks/all-how":
    "A line for each crew member, thick where a step was done; gaps are waits and idle time. A lozenge marks a step that was done otherwise than planned. Tap a line to open the walk’s review at that step.",
  "walks/of-live": "Live walk of {$at :utc}",
  "walks/of-rehearsal": "Rehearsal of {$at :utc}",
  "walks/end-complete": "complete",
  "walks/end-terminated": "terminated",
  "walks/end-aborted": "aborted",
  "walks/end-open": "open",
  "walks/finish": "{$ended}, last step {$finish :finish}",
  "walks/finish-later": "{$ended}, last step {$finish :finish}, {$by :length} later than planned",
  "walks/finish-earlier": "{$ended}, last step {$finish :finish}, {$by :advance} earlier than planned",
  "walks/order":
    ".input {$broken :integer} .input {$all :integer} .match $broken $all 0 one {{order kept at the one place there is}} 0 * {{order kept at all {$all} places}} * one {{order broken at the one place there is}} * * {{order broken at {$broken} of {$all} places}}",
  "walks/order-none": "no order to look at",
  "walks/deviations":
    ".input {$count :integer} .match $count 0 {{no deviations}} one {{{$count} deviation}} * {{{$count} deviations}}",
  "walks/waits": "Waited most: {$waits :clauses}",
  "walks/waited": "{$who}: {$waited :message}",
  "walks/open": "Review",
  "walks/open-of": "Review the walk of {$at :utc}",
  "walks/in-second": "in the second group",
  "walks/show-rest":
    ".input {$count :integer} .match $count one {{Show {$count} more walk}} * {{Show {$count} more walks}}",
  "walks/steps": "Step by step",
  "walks/no-steps": "No step of these walks tells how long it took.",
  "walks/too-few":
    ".input {$count :integer} .match $count one {{{$count} walk: below five there are only the walks themselves}} * {{{$count} walks: below five there are only the walks themselves}}",
  "walks/quantiles":
    "Half within {$middle :length form=second}, eight of ten {$from :length form=second} to {$to :length form=second}, usually off by a factor of {$factor :number maximumFractionDigits=2}",
  "walks/groups": "Two groups",
  "walks/groups-choose": "Mark the walks of a second group above, and the others are the first.",
  "walks/groups-of": "{$first :integer} walks in the first group, {$second :integer} in the second.",
  "walks/groups-untested": "No step has two walks in each group, so that nothing is tested.",
  "walks/groups-none":
    ".input {$count :integer} .match $count one {{No difference is shown in the {$count} step that was tested.}} * {{No difference is shown in any of the {$count} steps that were tested.}}",
  "walks/groups-shown":
    ".input {$count :integer} .input {$all :integer} .match $count one {{A difference is shown in {$count} of {$all} steps that were tested.}} * {{A difference is shown in {$count} of {$all} steps that were tested.}}",
  "walks/group-ratio":
    "in the second group {$ratio :number maximumFractionDigits=2} times as long ({$first :integer} and {$second :integer} walks)",
  "walks/groups-how":
    "Where no difference is shown there may be one all the same; and one that is shown does not tell its cause, nor that anybody is faster.",
  "walks/forecasts": "Were the forecasts right?",
  "walks/forecasts-working": "Working the forecasts out again from the logs…",
  "walks/forecasts-none":
    "No forecast can be judged yet: it takes a walk that was closed as complete, with more than one task.",
  "walks/bands-held":
    "At the end of tasks, {$held :integer} of {$count :integer} bands of 80 % held the finish that came ({$from :integer} to {$to :integer} % with chance allowed for), in {$walks :integer} walks.",
  "walks/scores":
    "On average off by a score of {$score :length form=second}; the plan with the planner’s figures alone by {$planned :length form=second}. Less is better.",
  "walks/verdict-too-few": "That is too little for a verdict: it takes 40 forecasts and 5 walks.",
  "walks/verdict-hold": "The bands hold about as often as they say.",
  "walks/verdict-too-narrow":
    "The bands are too narrow: the finish lies outside them more often than they say.",
  "walks/verdict-too-wide": "The bands are wider than they need to be.",
  "walks/forecasts-left-out":
    ".input {$count :integer} .match $count one {{{$count} walk is left out, since it was not closed as complete.}} * {{{$count} walks are left out, since they were not closed as complete.}}",
  "walks/forecasts-shorter":
    ".input {$count :integer} .match $count one {{{$count} forecast is left out: a get-ahead was done that it had not counted on.}} * {{{$count} forecasts are left out: a get-ahead was done that they had not counted on.}}",
  "walks/forecasts-how":
    "Forecasts of one walk are right or wrong together, so that many of few walks say less than they seem to.",
} as const;
