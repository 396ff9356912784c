/** The page of all marks, and its help. */
export const marksWords = {
  "marks/title": "All marks",
  "marks/what": "Every sign of every screen, and what it means",
  "marks/braid": "Beside a list of steps",
  "marks/step": "At a step",
  "marks/alerts": "Alerts of a walk",
  "marks/amended": "A step that an amendment touched says how, until it was seen on this device.",
  "marks/notes": "A sheet with a folded corner counts the notes at the step.",
  "guide/marks-title": "Help: the marks",
  "guide/marks-page": "Each sign is drawn here by what draws it on its screen, with what it means beside it.",
  "guide/marks-hue":
    "Hue never stands alone: what differs in colour differs in shape, in dashes or by a word too.",
  "guide/marks-themes": "By night and in dim colours the shapes and dashes stay as they are.",
  "guide/marks-sample":
    "The worksite is that of the practice walk. Where it cannot be read, the sentences stand without a picture.",
  "guide/marks-words":
    "A sign that is not here is none of this program: look for it in what the author of the procedure drew or wrote.",
} as const;
