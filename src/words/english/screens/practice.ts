/** The guide beside a practice walk, and what offers it. */
export const practiceWords = {
  "practice/guide": "Practice guide",
  "practice/clock": "Rehearsal · its clock runs while you look",
  "practice/put-away": "Put the guide away",
  "practice/bring-back": "Show the practice guide",
  "practice/finish": "Finish the practice",
  "practice/tried": "Tried: {$count :integer} of {$all :integer}",
  "practice/tried-tap": "tapping",
  "practice/tried-joint": "joint step",
  "practice/tried-value": "value outside limits",
  "practice/tried-contingency": "contingency",
  "practice/tried-close": "review",
  "practice/is-tried": "tried",
  "practice/not-tried": "not yet",
  "practice/start":
    "You are IV, inside: you read the steps and tap what the two outside report. Tap “Start the rehearsal clock”.",
  "practice/first":
    "Each one has a strand down the edge, and whoever waits hangs loose. {$crew :list} begins, with step {$step}: tap “Done” beside it.",
  "practice/go-on": "Next is step {$step} of {$crew :list}: {$action}. Tap “Done” when you hear that it is.",
  "practice/waits":
    "{$waiting} has reached joint step {$joint} and waits there for {$missing}: the strand hangs loose down to it. Go on with step {$step} of {$crew :list}.",
  "practice/joint":
    "{$crew :list} are both at step {$step}: a knot draws their strands together, and one tap on “Done” marks it for both.",
  "practice/joint-confirm":
    "{$crew :list} are both at step {$step}, where a knot draws their strands together. Somebody confirms here: tap “Confirmed”, then “Done”, which marks it for both.",
  "practice/value-outside":
    "Step {$step} wants “{$record}”. To see what an alert is like, enter {$value :quantity}, which is outside the limits beside the field.",
  "practice/value": "Step {$step} wants “{$record}” again. Enter {$value :quantity}, then tap “Done”.",
  "practice/owed":
    "Step {$step} is done without “{$record}”, which is outstanding now, as the bar above says. Open the step in the list to enter it; or go on, and it stays owed.",
  "practice/within":
    "That lies within the limits, so nothing is raised. To see an alert, enter {$value :quantity} for “{$record}” instead. {$else :message}",
  "practice/outside":
    "The value lies outside its limits: an alert says so under the clock. Tap “Contingencies” at the foot, “{$contingency}”, then “Bring it in”, and “Enter the amendment”. {$else :message}",
  "practice/or-go-on": "Or go on with step {$step} of {$crew :list}.",
  "practice/go-on-anyhow": "Or leave it.",
  "practice/brought":
    "The contingency is in the plan now, and the review will say what it cost. Step {$step} of {$crew :list} belongs to it: {$action}. Tap “Done”.",
  "practice/close": "Every step is complete. Tap “Close the walk” below the list, and close it.",
  "practice/nobody-works":
    "Nobody can begin a step at this moment: the cards at the top say whom and what each one waits for.",
  "practice/held": "The walk is held, and its steps wait. Tap “Lift the hold” when it may go on.",
  "practice/closed": "The walk is closed. Tap “Read the review” below the list.",
  "practice/closed-early":
    "You closed the walk before its end, which is allowed. Tap “Read the review” below the list to see what it says of that, or reopen the walk there.",
  "practice/review":
    "This is the review: what was planned beside what happened, who waited for whom, and everything that went otherwise. That was the practice walk; the next one is yours.",
  "practice/skipped": "You skipped step {$step}. That counts as complete, and the review will name it.",
  "practice/out-of-order":
    "Step {$step} was marked out of order. That is taken, and the review will name it.",
  "practice/open-again": "Step {$step} is open again.",
} as const;
