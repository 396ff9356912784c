import type { fitWords as english } from "../../english/screens/fit.ts";
import type { Translated } from "../../translated.ts";

/** What still fits under the limit: the panel on the follow screen and on the timeline of a plan. */
export const fitWords: Translated<typeof english> = {
  "fit/title": "ما يتسع له الوقت",
  "fit/tool": "تأخّر؟",
  "fit/in-time": "معنى «في الوقت»",
  "fit/by-chance": "تسع عينات من عشر تُنجز قبل الحد",
  "fit/by-likely": "المدد المرجحة تكفي، أيًا كان الاحتمال",
  "fit/working": "جارٍ بحث ما يتسع له الوقت…",
  "fit/failed": "تعذّر هنا حساب ما يتسع له الوقت. أغلق اللوحة واسأل من جديد.",
  "fit/from": "من PET {$now :clock}، الحد {$limit :clock}.",
  "fit/from-no-limit": "من PET {$now :clock}. لا حد في الإجراء، فيتسع الوقت لكل شيء.",
  "fit/proven":
    ".input {$tried :integer} .match $tried zero {{الأفضل بإثبات: لا شيء مما يتسع له الوقت أعلى قيمة (بُحثت {$tried} مجموعة).}} one {{الأفضل بإثبات: لا شيء مما يتسع له الوقت أعلى قيمة (بُحثت مجموعة واحدة).}} two {{الأفضل بإثبات: لا شيء مما يتسع له الوقت أعلى قيمة (بُحثت مجموعتان).}} few {{الأفضل بإثبات: لا شيء مما يتسع له الوقت أعلى قيمة (بُحثت {$tried} مجموعات).}} many {{الأفضل بإثبات: لا شيء مما يتسع له الوقت أعلى قيمة (بُحثت {$tried} مجموعة).}} * {{الأفضل بإثبات: لا شيء مما يتسع له الوقت أعلى قيمة (بُحثت {$tried} مجموعة).}}",
  "fit/no-choice": "الوقت يتسع. لا مهمة إضافية باقية للاختيار.",
  "fit/best-found":
    ".input {$tried :integer} .match $tried zero {{أفضل ما وُجد: القيمة {$worth :number maximumFractionDigits=2}؛ ولا شيء مما يتسع له الوقت تزيد قيمته على {$bound :number maximumFractionDigits=2} (بُحثت {$tried} مجموعة).}} one {{أفضل ما وُجد: القيمة {$worth :number maximumFractionDigits=2}؛ ولا شيء مما يتسع له الوقت تزيد قيمته على {$bound :number maximumFractionDigits=2} (بُحثت مجموعة واحدة).}} two {{أفضل ما وُجد: القيمة {$worth :number maximumFractionDigits=2}؛ ولا شيء مما يتسع له الوقت تزيد قيمته على {$bound :number maximumFractionDigits=2} (بُحثت مجموعتان).}} few {{أفضل ما وُجد: القيمة {$worth :number maximumFractionDigits=2}؛ ولا شيء مما يتسع له الوقت تزيد قيمته على {$bound :number maximumFractionDigits=2} (بُحثت {$tried} مجموعات).}} many {{أفضل ما وُجد: القيمة {$worth :number maximumFractionDigits=2}؛ ولا شيء مما يتسع له الوقت تزيد قيمته على {$bound :number maximumFractionDigits=2} (بُحثت {$tried} مجموعة).}} * {{أفضل ما وُجد: القيمة {$worth :number maximumFractionDigits=2}؛ ولا شيء مما يتسع له الوقت تزيد قيمته على {$bound :number maximumFractionDigits=2} (بُحثت {$tried} مجموعة).}}",
  "fit/no-plan": "لا يتسع الوقت: لا يمكن وضع خطة للعمل الأساسي من هنا.",
  "fit/never":
    "لا يتسع الوقت تحت أي حد: في عدد من العينات أكبر من المقبول لا تتسع أي نافذة لخطوة من العمل الأساسي.",
  "fit/short": "لا يتسع الوقت: العمل الأساسي وحده ينقصه {$time :length}.",
  "fit/without-any": "بلا مهام إضافية",
  "fit/keep-to-plan": "التزام الخطة، بلا أي مهمة إضافية",
  "fit/with": "{$tasks :list} (القيمة {$worth :number maximumFractionDigits=2})",
  "fit/fewest": "تترك أقل عدد من المهام الإضافية بين كل المجموعات التي يتسع لها الوقت.",
  "fit/without": "المتروك: {$tasks :list}",
  "fit/in-time-share": "في الوقت",
  "fit/amend": "عرض ما تؤول إليه الخطة بهذا",
  "fit/share": "{$share :chance} (⁦± {$error :number maximumFractionDigits=1}⁩ نقطة مئوية)",
  "fit/windows": "تحتاج خطواتها إلى {$windows :list}.",
  "fit/left": "ليس كما ينبغي في النهاية",
  "fit/again": "السؤال من جديد من الآن",
  "fit/leave-out": "ترك عمل أساسي",
  "fit/leave-out-how":
    "لا يُترك شيء أساسي إلا إذا أشّرت عليه هنا. والمهمة المؤشَّر عليها لا يُحسب منها شيء بعد ذلك.",
  "fit/how":
    "لا يتغير شيء هنا. الانتهاء بالمدد المرجحة؛ و«في الوقت» نسبة العينات الخاصة بهذا البحث التي تُنجز قبل الحد. القيمة يعيّنها المؤلف، وهي 1 ما لم تُذكر.",
};
