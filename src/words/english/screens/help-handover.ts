/** The help of the handover. */
export const helpOfHandoverWords = {
  "guide/handover": "Help: the handover",
  "guide/handover-what":
    "One page that says how the walk stands, for whoever takes over: alerts, limits, crew, what is outstanding, what was otherwise than planned, supplies, states and items.",
  "guide/handover-moment":
    "It holds for the moment that its head names, and for the log of this device. “Make it anew” brings it up to date.",
  "guide/handover-paper":
    "“The procedure as it stands” is the paper procedure with what is done ticked and what is known filled in, to go on with on paper.",
  "guide/handover-figures":
    "A redline and a turn-back time are forecasts, from the last readings or the planned rate. A supply that was never read goes by the plan.",
  "guide/handover-late":
    "What other devices have entered and not sent yet is not in it. The head names the last entry that is: ask for what is missing.",
  "guide/handover-unseen": "An alert that nobody has seen is listed as such. Read it out.",
} as const;
