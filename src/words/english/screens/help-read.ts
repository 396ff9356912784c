/** The help of the procedure as prepared. */
export const helpOfReadWords = {
  "guide/read": "Help: reading a procedure",
  "guide/read-finding":
    "A finding stands at the step it concerns, with its level: an error must be mended before the walk, a caution wants a look, advice may be left. What follows from another finding stands under it.",
  "guide/read-conditions":
    "“Only while”, “Only in”, “Not before” and “After” say what must be true before a step. “Afterwards” says what it changes.",
  "guide/read-branch":
    "“Only if” marks the steps of a branch. The plan here takes each decision as the file expects it to come out.",
  "guide/read-outline":
    "This page shows the file alone: no start time, no orbit and nothing that has happened. Choose those on the timeline.",
  "guide/read-waits":
    "A wait names whom or what it is for; it follows from the plan, and is no step of the file.",
  "guide/read-no-plan":
    "Where no planned time stands, the procedure cannot be planned as it is, or the step hangs on a decision. The findings say why.",
  "guide/read-mend":
    "Edit leads to the table, where a finding is mended; or mend the file in an editor and bring it in again as another revision.",
  "guide/texts":
    "A procedure may carry its texts in several languages: “Texts of the procedure” chooses one, here and under More in a walk, and a button beside it shows them as written and back. The choice holds on every screen of the procedure and its walks. “As written” at a text says that it is missing in that language, “older text” that the author has changed theirs since.",
} as const;
