import type { decisionWords as english } from "../../english/screens/decisions.ts";
import type { Translated } from "../../translated.ts";

/** A decision on the follow screen: what each outcome would lead to, and what holds while it is asked again. */
export const decisionWords: Translated<typeof english> = {
  "decision/asked-again": "مفتوح من جديد: تبقى {$outcome} سارية إلى أن يُتخذ القرار من جديد، وفرعها ينتظر.",
  "decision/branch-asked-again":
    "قرار الخطوة {$number} مفتوح من جديد: هذه على الفرع {$outcome}، الذي ينتظر حتى ذلك الحين.",
  "decision/leads-to": "ما تؤدي إليه كل نتيجة، بالمدد المرجحة من هنا",
  "decision/expected": "متوقعة",
  "decision/in-force": "سارية",
  "decision/no-steps": "بلا خطوات خاصة بها.",
  "decision/steps":
    ".input {$count :integer} .match $count zero {{بلا خطوات خاصة بها.}} one {{خطوة واحدة خاصة بها.}} two {{خطوتان خاصتان بها.}} few {{{$count} خطوات خاصة بها.}} many {{{$count} خطوة خاصة بها.}} * {{{$count} خطوة خاصة بها.}}",
  "decision/steps-at":
    ".input {$count :integer} .match $count zero {{بلا خطوات خاصة بها: {$places :list}.}} one {{خطوة واحدة خاصة بها: {$places :list}.}} two {{خطوتان خاصتان بها: {$places :list}.}} few {{{$count} خطوات خاصة بها: {$places :list}.}} many {{{$count} خطوة خاصة بها: {$places :list}.}} * {{{$count} خطوة خاصة بها: {$places :list}.}}",
  "decision/joint": "يمكن أن تبدأ الخطوة المشتركة {$step} بعد {$time :length}.",
  "forecast/finish": "الانتهاء {$finish :finish}.",
  "forecast/finish-margin": "الانتهاء {$finish :finish}، الهامش {$margin :margin}.",
  "forecast/finish-over": "الانتهاء {$finish :finish}، بتجاوز قدره {$margin :length}.",
  "forecast/none-with-it": "معها لا يمكن توقّع ما تبقى.",
  "decision/before-start": "تُبيَّن الأوقات بعد تشغيل الساعة.",
};
