import type { languagesWords as english } from "../../english/screens/languages.ts";
import type { Translated } from "../../translated.ts";

/** The texts of a procedure in other languages, as they are written. */
export const languagesWords: Translated<typeof english> = {
  "languages/tag": "وسم اللغة، مثل fr أو pt-BR",
  "languages/add": "إضافة اللغة",
  "languages/show": "النصوص المعروضة",
  "languages/all": "الكل",
  "languages/open": "الناقصة أو الأقدم",
  "languages/missing": "ناقص",
  "languages/none-open": "لا نص ناقص، ولا نص أقدم من نص المؤلف.",
  "languages/was": "تُرجم من: {$text}",
  "languages/holds": "ما زال صحيحًا",
  "languages/more": "عرض المزيد: {$count :integer}",
};
