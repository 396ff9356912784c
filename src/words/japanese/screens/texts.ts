import type { textsWords as english } from "../../english/screens/texts.ts";
import type { Translated } from "../../translated.ts";

/** In which language the texts of a procedure are shown, and how each stands in it. */
export const textsWords: Translated<typeof english> = {
  "texts/language": "手順書の文",
  "texts/as-written": "原文",
  "texts/as-written-in": "原文（{$language}）",
  "texts/missing": "原文のまま",
  "texts/older": "古い訳文",
  "texts/marked": "{$text}（{$mark}）",
  "texts/older-count":
    ".input {$count :integer} .match $count * {{作成者の原文より古い訳文が{$count}件あり、印を付けています。}}",
};
