import type { textsWords as english } from "../../english/screens/texts.ts";
import type { Translated } from "../../translated.ts";

/** In which language the texts of a procedure are shown, and how each stands in it. */
export const textsWords: Translated<typeof english> = {
  "texts/language": "نصوص الإجراء",
  "texts/as-written": "كما كُتبت",
  "texts/as-written-in": "كما كُتبت ({$language})",
  "texts/missing": "كما كُتب",
  "texts/older": "نص أقدم",
  "texts/marked": "{$text} ({$mark})",
  "texts/older-count":
    ".input {$count :integer} .match $count zero {{لا نصوص أقدم من نص المؤلف.}} one {{نص واحد أقدم من نص المؤلف، وعليه علامة.}} two {{نصان أقدم من نص المؤلف، وعليهما علامة.}} few {{{$count} نصوص أقدم من نص المؤلف، وعليها علامة.}} many {{{$count} نصًا أقدم من نص المؤلف، وعليها علامة.}} * {{{$count} نص أقدم من نص المؤلف، وعليها علامة.}}",
};
