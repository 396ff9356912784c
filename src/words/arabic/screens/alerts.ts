import type { alertWords as english } from "../../english/screens/alerts.ts";
import type { Translated } from "../../translated.ts";

/** What alerts say while a walk runs. They tell; they order nothing. */
export const alertWords: Translated<typeof english> = {
  "alert/turn-back-passed": "فات آخر وقت لبدء العودة: كان {$at :clock}، منذ {$ago :length}",
  "alert/turn-back-near": "آخر وقت لبدء العودة بعد {$time :length}، عند {$at :clock}",
  "alert/return-barred": "{$crew :list}: طريق العودة مسدود. {$why :message}",
  "alert/no-return": "{$crew :list}: لم يعد أي طريق عودة إلى ملاذ ممكنًا، أو لا يُعرف أي طريق",
  "alert/no-forecast": "لا يمكن وضع توقّع: ما تبقى لم يعد ممكنًا",
  "alert/over-limit": "بحسب التوقّع يستغرق ما تبقى وقتًا يتجاوز الحد بمقدار {$over :length}",
  "alert/margin-small": "بحسب التوقّع سيبقى من الحد {$margin :length}",
  "alert/redline": "{$crew}: {$supply} عند الحد الأحمر منذ {$at :clock}",
  "alert/redline-near": "{$crew}: {$supply} يبلغ الحد الأحمر بعد {$time :length}، عند {$at :clock}",
  "alert/impossible-reading": "{$crew}: {$supply}: القراءة غير محتسبة: {$why :message}",
  "alert/watch-due": "{$crew :list}: {$watch} (مستحق منذ {$due :clock})",
  "alert/hold": "النشاط موقوف مؤقتًا منذ {$since :clock}",
  "alert/hold-because": "النشاط موقوف مؤقتًا منذ {$since :clock}: {$reason}",
  "alert/decided-otherwise": "{$ask} {$outcome}؛ وقبل ذلك: {$was}، ولم يُنجز شيء على ذلك الفرع",
  "alert/decided-otherwise-after": "{$ask} {$outcome}؛ وقبل ذلك: {$was}، وأُنجز على ذلك الفرع: {$steps :list}",
  "alert/decided-contrary":
    "{$ask} قرّر {$who}: {$outcome}، وهذا هو المحتسب؛ وكان {$other} قد قرّر: {$was}، ولم يُنجز شيء على ذلك الفرع. القائد يبيّن أيهما يسري",
  "alert/decided-contrary-after":
    "{$ask} قرّر {$who}: {$outcome}، وهذا هو المحتسب؛ وكان {$other} قد قرّر: {$was}، وأُنجز على ذلك الفرع: {$steps :list}. القائد يبيّن أيهما يسري",
  "alert/asked-again": "{$ask} هذا القرار مفتوح من جديد، وتبقى {$outcome} سارية إلى أن يُتخذ قرار آخر",
  "alert/item-elsewhere": "{$item} مع {$holders :list}، و{$crew :list} بحاجة إليه في {$step}",
  "alert/overtime": "{$crew :list}: {$step} (جارية منذ {$time :length}، وأقصى ما خُطط لها {$high :length})",
};
