/** The help of the timeline, of a plan and of a walk. */
export const helpOfTimelineWords = {
  "guide/timeline": "Help: the timeline",
  "guide/timeline-lanes":
    "Each row is one crew member, and time runs to the right in PET. The ground behind shows day, night and windows where they are known.",
  "guide/timeline-shapes":
    "What each shape means stands below the picture. “As a table” gives the same in figures.",
  "guide/timeline-waits":
    "A hatched stretch is a wait: tap the step behind it to read whom or what it is for.",
  "guide/timeline-now":
    "While a walk runs, a line marks now: what is before it was done, what is behind it is forecast.",
  "guide/timeline-forecast":
    "The forecast keeps what was done and plans the rest by likely times, from now on. A step in work ends at its start and likely time, or now, whichever is later.",
  "guide/timeline-misses":
    "“What samples miss” names the windows that samples miss, and the times by which or within which they do not do a step, each with its share of the samples.",
  "guide/timeline-starts":
    "The chart of starts shows the finish for every start of a day, and as a dotted line the chance: below it stand the figures of the start that is chosen.",
  "guide/timeline-light":
    "Day, night and contact come from the orbit file, the site or the list of times that was chosen. Element sets of an orbit grow worse with age: look at their date.",
  "guide/timeline-what-if":
    "A trial changes nothing until it is saved; saved, it is another revision on the shelf. The file it came from stays as it is.",
  "guide/timeline-split":
    "“Best split” looks for who should do what, and in which order, for the earliest finish, where the procedure leaves a choice. The plan stays as it is until you save what it offers as a revision. “Prove it” looks for a proof of it, by a part of the app that is fetched then and stays.",
  "guide/timeline-leaves":
    "“Take the plan along” gives the plan as a table, as a workbook with a grid of crew by time and a list, and as a poster on A3 or tabloid. What is changed in them does not come back into the procedure.",
  "guide/timeline-fragments":
    "“Fragments” puts in a few steps or tasks that are used again, with their blanks filled, and saves the result as a revision. Steps that were put in remember it, so that a later revision of the fragment can be offered.",
  "guide/timeline-none":
    "Without a timeline, the procedure cannot be planned: the reasons stand in its place. Without day and night, choose an orbit file or a site.",
} as const;
