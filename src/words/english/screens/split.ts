/** Who does what and in which order: the panel on the timeline of a plan, and `split` on the command line. */
export const splitWords = {
  "split/title": "Best split",
  "split/rest": "Best split of the rest",
  "split/as-of": "The walk as it was at PET {$now :clock}.",
  "split/moved-on": "Something has been entered since. Ask again before you take it up.",
  "split/working": "Looking for a better split …",
  "split/failed": "A better split could not be looked for here. Close the panel and ask again.",
  "split/going-on": "Still looking: this is the best so far.",
  "split/stop": "Stop looking",
  "split/prove": "Prove it",
  "split/proving": "Looking for a proof …",
  "split/no-solver":
    "The proof needs a part of the app that is not on this device yet. With a link to where the app comes from, ask again.",
  "split/second-proven": "Shown a second time by a program (yes-or-no choices: {$choices :integer}).",
  "split/second-open":
    "A program could not settle it within the search that it was allowed (yes-or-no choices: {$choices :integer}).",
  "split/second-too-large":
    "It is too large to be written down as a program (yes-or-no choices: {$choices :integer}).",
  "split/now": "The plan as it is: finish {$finish :finish}.",
  "split/proven":
    "Proven best: finish {$finish :finish}, {$by :advance} earlier. No split of this work is complete earlier.",
  "split/best-found":
    "Best found: finish {$finish :finish}, {$by :advance} earlier. No split can be complete more than {$over :length} earlier still.",
  "split/kept-proven": "Keep the plan: no split of this work is complete earlier.",
  "split/kept":
    "Keep the plan: nothing better was found. No split can be complete more than {$over :length} earlier.",
  "split/no-choice":
    "There is nothing to choose: no step says who else could do it (or), and no task is free in its place (order).",
  "split/no-plan": "There is no plan that could be made better: mend first what keeps it from being made.",
  "split/step-given": "Step {$step} “{$text}” is done by {$crew :list} instead of {$old :list}.",
  "split/steps-given":
    "Steps {$steps :list} are done by {$crew :list} instead of {$old :list}, all together, since something is in one hand from the first to the last.",
  "split/task-first": "Task “{$task}” comes first.",
  "split/task-behind": "Task “{$task}” comes behind “{$behind}”.",
  "split/gains": "Without this one the plan would be complete {$time :advance} later.",
  "split/needed": "The other changes cannot be made without this one.",
  "split/chain":
    ".input {$count :integer} .match $count one {{The finish of the plan hangs on step {$first}, which is relieved.}} * {{The finish of the plan hangs on a chain of {$count} steps from {$first} to {$last}, which is relieved.}}",
  "split/cost": "What it costs",
  "split/changed-hands":
    ".input {$count :integer} .match $count 0 {{No step changes hands.}} one {{{$count} step changes hands.}} * {{{$count} steps change hands.}}",
  "split/metres": "Everybody together goes {$after :metres} instead of {$before :metres}.",
  "split/window-tighter":
    "In “{$window}” the tightest step has {$after :advance} left instead of {$before :advance}.",
  "split/keep": "Keep the plan",
  "split/save": "Save as revision {$revision}",
  "split/how-rest":
    "By likely times from then on, without get-aheads that nobody has begun. What is complete or in work stays, and so does closeout. Nothing is changed until a lead enters an amendment.",
  "split/how":
    "By likely times, without get-aheads, decisions as expected. Only steps that say who else could do them change hands, and only tasks that are free in their place are moved; closeout stays. Nothing is changed until you save a revision.",
} as const;
