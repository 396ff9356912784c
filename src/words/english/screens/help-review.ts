/** The help of the review. */
export const helpOfReviewWords = {
  "guide/review": "Help: the review",
  "guide/review-pairs":
    "The pictures lay what was planned beside what was flown. Each sign is explained beside its picture, and the tables under them give the same in figures.",
  "guide/review-drift": "Drift is how far the end of a step was behind the plan (+) or ahead of it (−).",
  "guide/review-deviations":
    "A deviation is whatever was done otherwise than planned: a skip, another order, a value outside its limits, something that never came. It blames nobody.",
  "guide/review-delay":
    "What made the delay goes step by step along the chain that set the finish: longer or shorter work, and waits with whom or what for.",
  "guide/review-tables":
    "Amendments, confirmations, watches, records, supplies over time, decisions, reopened steps, corrected items and alerts each have a table, with when and by whom. A line that says “missing” or “not kept” never came. Planned is always the plan as the walk was opened; each amendment says what it did to finish and margin.",
  "guide/review-surprises":
    "The surprises of a rehearsal that is closed stand beside what their trainer expected: when each came, the first entry that shows that somebody noticed it, what was done, what it cost. No marks are given.",
  "guide/review-comments":
    "A comment is kept in the log as a note, also after the walk is closed, and alters no figure.",
  "guide/review-log":
    "Everything here is worked out from the log, as entered, and nothing is added. The plan is that of the procedure the walk was opened with.",
  "guide/review-starts":
    "One tap a step says when it ended. Where nobody entered its start, it is taken as the moment from which its people, its order and its windows allowed it.",
  "guide/review-clocks":
    "Times come from the clocks of the devices. Where a clock was compared with the hub’s, the table of clocks says by how much it was off.",
  "guide/review-open":
    "While the walk is not closed, this is the review so far: what is not done yet is not a deviation.",
  "guide/review-wrong":
    "A wrong entry is struck or corrected on the follow screen, and both stay in the log: nothing is ever deleted.",
  "guide/review-record":
    "“Is the log as it was entered?” looks at the seals of the devices. From best to worst: whole, intact, partly vouched for, cut, forked, broken; the worst device sets the verdict. Old logs have no seals, which is no error.",
  "guide/review-record-how":
    "A quick look takes one seal a run of entries, which vouches for those before it; the full look takes about a millisecond an entry, and more on a slow tablet. Only a hub whose key you gave here can vouch for devices.",
  "guide/review-voice-code":
    "The voice code stands for all entries and their order. Two sites that read the same code to one another hold the same; where codes differ, the groups that do are named.",
  "guide/review-unsound":
    "When a log is cut, forked or broken: keep every copy as it is, export the log from every device and hub, and compare them. The review above is still of the log as it is here.",
  "guide/review-extract":
    "An extract shows some entries to others without the rest, and can be verified by anyone with the key of the hub.",
  "guide/extract": "Help: an extract of a log",
  "guide/extract-what":
    "An extract shows a few entries of a log in full, each with its proof that a hub’s checkpoint held it, and of the others the numbers alone. It is read from its file and not taken in: nothing of it becomes a walk on this device.",
  "guide/review-export":
    "Exports are files for others: the log for another Tetherline, the table for a spreadsheet, the event log for tools that read XES.",
} as const;
