/** The timeline as a large sheet, and the ways in which a plan leaves. */
export const posterWords = {
  "poster/paper": "Paper",
  "poster/iso": "A3",
  "poster/ansi": "Tabloid (11 × 17 in)",
  "poster/no-start": "no start given, so without UTC",
  "poster/caution":
    "By likely durations. A plan advises; flight rules, local codes and those in charge decide.",
  "poster/step": "{$start :pet} {$who}:",
  "poster/leaves": "Take the plan along",
  "poster/leave-csv": "Table (CSV)",
  "poster/leave-workbook": "Workbook (.xlsx)",
  "poster/leave-poster": "Poster",
  "poster/not-written": "The workbook could not be made; the part of the app that writes it was not loaded.",
  "timeline/strip": "Timeline from PET {$from :hour-minute} to {$to :hour-minute}",
} as const;
