/** The texts of a procedure in other languages, as they are written. */
export const languagesWords = {
  "languages/tag": "Language tag, such as fr or pt-BR",
  "languages/add": "Add the language",
  "languages/show": "Texts shown",
  "languages/all": "All",
  "languages/open": "Missing or older",
  "languages/missing": "missing",
  "languages/none-open": "No text is missing, and none is older than the author’s.",
  "languages/was": "Translated from: {$text}",
  "languages/holds": "It still holds",
  "languages/more": "Show {$count :integer} more",
} as const;
