import type { followAlertWords as english } from "../../english/screens/follow-alerts.ts";
import type { Translated } from "../../translated.ts";

/** The one place of alerts on the follow screen, and the list behind it. */
export const followAlertWords: Translated<typeof english> = {
  "alert/level-act-now": "للتصرف الآن",
  "alert/level-look-soon": "للنظر قريبًا",
  "alert/level-know": "للعلم",
  "alert/alerts": "الإنذارات",
  "alert/since": "منذ PET {$since :clock}.",
  "alert/seen-by": "اطّلع عليه {$who}.",
  "alert/seen": "تم الاطّلاع",
  "alert/step": "الخطوة {$number}",
  "alert/more": "المزيد: {$count :integer}",
  "alert/none": "لا إنذار قائم.",
  "alert/sounds": "الصوت والاهتزاز على هذا الجهاز عند",
  "alert/raised-so-far": "ما صدر حتى الآن",
  "alert/raised-at": "PET {$at :clock}",
  "alert/how":
    "الإنذار يُعلِم ولا يأمر: القرار لقواعد الطيران والمسؤولين. ما يطلب التصرف الآن يبقى إلى أن يزول، وغيره يبقى إلى أن يُطّلع عليه.",
};
