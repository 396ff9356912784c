import type { languagesWords as english } from "../../english/screens/languages.ts";
import type { Translated } from "../../translated.ts";

/** The texts of a procedure in other languages, as they are written. */
export const languagesWords: Translated<typeof english> = {
  "languages/tag": "言語タグ（frやpt-BRなど）",
  "languages/add": "言語を追加",
  "languages/show": "表示する文",
  "languages/all": "すべて",
  "languages/open": "未訳または古い訳",
  "languages/missing": "未訳",
  "languages/none-open": "未訳の文も、原文より古い訳文もありません。",
  "languages/was": "翻訳時の原文：{$text}",
  "languages/holds": "この訳のままでよい",
  "languages/more": "さらに{$count :integer}件を表示",
};
