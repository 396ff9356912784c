/** What the help of several screens says alike. */
export const helpWords = {
  "guide/marks": "What the marks mean",
  "guide/figures": "Where the figures come from",
  "guide/doing": "What can be done here",
  "guide/trouble": "When something is missing or wrong",
  "guide/advice": "What it is not",
  "guide/advises":
    "Tetherline advises and never commands. Flight rules, local codes and licensed practice decide, and where the screen and they differ, they are right. Keep the printed procedure at hand.",
  "guide/offline": "This help is kept on the device and needs no network.",
  "guide/strand":
    "A line down the list is a strand: one crew member. Its dashes tell who it is, and its label stands at the top. The first outside has a full line, the second long dashes, the first inside short ones, the first on the ground wide ones.",
  "guide/bead":
    "A bead on a strand is a step of that crew member: empty while it is to come, filled once done.",
  "guide/knot":
    "A knot is a joint step: the strands of everybody who takes part are drawn together, and it begins when all of them are there.",
  "guide/perhaps":
    "A dashed bead or knot is a step that was skipped, or one that is done only if a decision comes out one way.",
  "guide/alert-words":
    "WARNING, CAUTION and NOTE stand before the action of their step. They differ by word and edge as well as by colour.",
  "guide/critical":
    "Critical means that the step lies on the chain that sets the finish: any delay of it moves the finish.",
  "guide/slack": "Slack is how much later a step may end before the finish moves.",
  "guide/planned-times":
    "Planned times follow from the likely durations of the file, the order, the routes and the windows. They are cut to the minute where no seconds stand.",
  "guide/margin":
    "Margin is the elapsed limit of the procedure less the finish. Without a limit there is none.",
  "guide/share":
    "A percentage within the limit counts samples: the time of each step is drawn from the PERT-beta distribution between its low and its high, always with the same seed, so that every device says the same.",
} as const;
