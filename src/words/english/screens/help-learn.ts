/** The help of learning from walks and of walks compared. */
export const helpOfLearnWords = {
  "guide/learn": "Help: learning from walks",
  "guide/learn-strip":
    "Each step has a strip: above, hollow, where eight of ten walks lie by the plan; below, filled, where they lie by the plan and the walks together. Every strip has the same scale: the dashed line is the planned likely time, the lines beside it half and twice as long.",
  "guide/learn-marks":
    "A filled dot is a live walk, a hollow one a rehearsal. An arrow was broken off and would have taken longer. A ring is far off the others: it weighs less, and is not left out.",
  "guide/learn-weight":
    "A live walk weighs 1. All rehearsals of a step together weigh less than one live walk. “Thin” means that one more walk may change the figures much.",
  "guide/learn-left-out":
    "Steps that were tapped done within five seconds of each other tell nothing each, holds are not counted, and a step that others do now, or that moves other things, starts afresh.",
  "guide/learn-offer":
    "Other figures are offered where at least two walks tell of a step and its likely time would move by a tenth and half a minute. Take what you agree with, and save it as a new revision: the one on the shelf stays as it is.",
  "guide/learn-disagree":
    "“Plan and evidence disagree” means that walks vary far more than was planned. Open them before you change the figures: the step may be two different things.",
  "guide/learn-claims":
    "These figures do not tell why a step took as long, or who is faster, and rehearsals alone do not tell how fast a live walk is.",
  "guide/learn-here": "Only walks on this device count. A log from elsewhere is brought in on the shelf.",
  "guide/walks": "Help: walks compared",
  "guide/walks-strips":
    "Each walk is a strip on one time axis: a line for each crew member, thick where a step was done. A lozenge marks a deviation.",
  "guide/walks-open":
    "A tap on a strip opens the review at that step; the list of walks under a step does the same.",
  "guide/walks-steps":
    "From five walks on a step has the points between which eight of ten lie, and the factor by which times are usually off the middle. Below five there are only the walks themselves.",
  "guide/walks-order":
    "Order looks at every pair of steps of which one has to come first, where both were done.",
  "guide/walks-groups":
    "Two groups are compared step by step. A difference is shown only where chance would hardly make it, the number of steps allowed for.",
  "guide/walks-forecasts":
    "The forecast at the end of each task is worked out again from the log, as it was shown then, and held against the finish that came.",
} as const;
