/** What the help of reading says of remarks. */
export const helpOfRemarksWords = {
  "guide/remarks":
    "“Remarks” takes comments and agreements, on a step or on the whole. Open comments stand among the findings until somebody resolves them, also in later revisions.",
  "guide/remarks-agree":
    "An agreement is to one text alone, with all its bytes, and approves nothing. Save remarks as a file to give them to others: files of several readers come together in any order.",
} as const;
