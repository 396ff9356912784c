/** The help of comparing and merging. */
export const helpOfCompareWords = {
  "guide/compare": "Help: compare",
  "guide/compare-changes":
    "“What changed” names each change by its task. A step is told by its id: one that was given another id counts as dropped and added.",
  "guide/compare-flag":
    "In the timelines a flag on the start of a bar marks a step that changed; both have one scale.",
  "guide/compare-choose":
    "Two revisions are chosen above. A file is compared without being put on the shelf, and is forgotten with its page.",
  "guide/compare-print":
    "The printed page is the later revision, with a bar in the margin beside every step that changed.",
  "guide/compare-merge":
    "To merge, choose the revision that both were made from. What only one of them changed is taken. Where both changed one thing, nothing is taken until you choose.",
  "guide/compare-effect":
    "Both are planned as expected, without get-aheads, with the same start and light. A finding is the same when it says the same.",
  "guide/compare-not-there":
    "A revision that is not on this device cannot be compared: bring its file in. Merging is sound only with the revision that both were really made from; another one brings back what was dropped.",
} as const;
