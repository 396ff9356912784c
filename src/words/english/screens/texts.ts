/** In which language the texts of a procedure are shown, and how each stands in it. */
export const textsWords = {
  "texts/language": "Texts of the procedure",
  "texts/as-written": "As written",
  "texts/as-written-in": "As written ({$language})",
  "texts/missing": "as written",
  "texts/older": "older text",
  "texts/marked": "{$text} ({$mark})",
  "texts/older-count":
    ".input {$count :integer} .match $count one {{One text is older than the author’s, and marked.}} * {{{$count} texts are older than the author’s, and marked.}}",
} as const;
