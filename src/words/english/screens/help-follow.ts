/** The help of the follow screen. */
export const helpOfFollowWords = {
  "guide/follow": "Help: following a walk",
  "guide/follow-marker":
    "A disc with a label is a crew member, on the strand at the step it has reached. A small ring on a strand marks the step that a waiting crew member waits for.",
  "guide/follow-slack":
    "A strand that hangs loose is a crew member who waits; it reaches down to the step that is waited for. The card says for whom, and about how long.",
  "guide/follow-act-now": "▲ asks for action now, and stays until it is over.",
  "guide/follow-look-soon": "◆ wants a look soon, and stays until it is seen.",
  "guide/follow-know": "● is to be known, and stays until it is seen.",
  "guide/follow-owed":
    "○ marks what a step still owes: a value, a confirmation, a reason, a time that was not over. It stays until it comes, and stands under “Outstanding”.",
  "guide/follow-times":
    "The word above a time says what it is: done (bold) was entered, expected (slanted) is the forecast, planned is the plan before the clock starts.",
  "guide/follow-tap":
    "One tap on “Done” marks a step, and it is on disk before the screen says so. “Undo” goes back through everything that was entered on this device.",
  "guide/follow-step":
    "Tap a line of the list for everything else about its step: records, notes, skipping, opening it again.",
  "guide/follow-branches":
    "A step that decides says under its outcomes what each would lead to by likely times, from here; so does its panel at any time. Whoever decides chooses.",
  "guide/follow-away":
    "The list follows the walk. Scrolled away, it stays where it is, and “Back to now” leads back.",
  "guide/follow-practice":
    "Beside a rehearsal of the practice walk a guide says what to do next. It can be put away and brought back, and enters nothing itself. The clock of that walk runs while its screen is looked at.",
  "guide/follow-pet":
    "PET is the time since the clock was started, by this device’s clock, corrected by the hub’s where there is one.",
  "guide/follow-margin":
    "Margin is the limit of the procedure less the forecast finish: what is left, by likely times, from where everybody is.",
  "guide/follow-fit":
    "“Late?”, or a tap on “Against plan”, says what still fits: which get-aheads can be done by the limit, how sure that is, and by how much the essential work is short when it does not fit. “Best split of the rest” beside it looks for who should do what of the rest, and in which order, to be complete earlier. Neither changes anything.",
  "guide/follow-amend":
    "A lead amends the plan under “More”, at a step, from “Late?” or by bringing a contingency in. What it would come to is shown first; what is done or in work stays. The others are told until they tap “Seen”, and “behind” is then measured against the plan as amended.",
  "guide/follow-turn-back":
    "Turn-back is the latest PET from which those outside still come back before the limit or a redline, with the closeout that is planned. What sets it stands beside it; “Figures” says more.",
  "guide/follow-supplies":
    "A redline is told by the last readings, or by the planned rate where there are too few. Readings are as old as it says.",
  "guide/follow-windows":
    "The next change of light or contact comes from the orbit, site or list that the walk was opened with. Nothing measures it.",
  "guide/follow-unsure":
    "Where a figure is missing, the screen says so instead of guessing: no forecast, times not known. Go by the paper and the flight rules then.",
  "guide/follow-wrong":
    "A wrong mark: undo it, or open the step again with a reason. A wrong value: record it again. An item elsewhere: enter where under “Items”.",
  "guide/follow-refused":
    "What could not be kept is said in a box that stays. Note it on paper, export the log, and tap again.",
  "guide/follow-voice-code":
    "Whether two sites hold the same is told by the voice code under Link and followers: read it aloud, and type in what the other site reads.",
  "guide/follow-link-lost":
    "Without the link the walk goes on here, and what is entered is sent when the link is back. Two who mark one step do no harm: the first counts.",
  "guide/follow-gone":
    "If the screen fails, go on from the printed procedure, and open the walk again from the shelf: every confirmed mark is there. What was done meanwhile is entered with its times: “More”, “Enter from paper”.",
} as const;
