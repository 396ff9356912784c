import type { cardsWords as english } from "../../english/screens/cards.ts";
import type { Translated } from "../../translated.ts";

/** The cards that are worn on the wrist. */
export const cardsWords: Translated<typeof english> = {
  "cards/wrist-cards": "بطاقات المعصم",
  "cards/title": "بطاقات المعصم: {$title}",
  "cards/what":
    "لكل فرد من الطاقم في الخارج: خطواته وخطواته المشتركة والتنبيهات وخطط الطوارئ، بأرقام الشاشات نفسها. اطبع بالحجم الكامل (⁦100 %⁩)، وقصّ عند العلامات. الأوقات المخطَّطة أوقات مرجحة وليست حدودًا.",
  "cards/size": "الحجم",
  "cards/size-large": "⁦90 × 122 mm⁩، 4 في الورقة",
  "cards/size-medium": "⁦58 × 122 mm⁩، 6 في الورقة",
  "cards/size-small": "⁦58 × 79 mm⁩، 9 في الورقة",
  "cards/size-own": "حجم مخصص",
  "cards/width": "العرض، mm",
  "cards/height": "الارتفاع، mm",
  "cards/nobody": "لا يعمل أحد في الخارج في هذا الإجراء، فلا بطاقات.",
  "cards/no-plan": "لا توجد خطة: البطاقات بلا أوقات.",
  "cards/foot": "{$id}، {$revision}، طُبع {$at :utc form=minute} UTC",
  "cards/task": "{$number :integer} {$title}",
  "cards/get-ahead": "{$number :integer} {$title} (إضافية: إذا سمح الوقت فقط)",
  "cards/contingency": "{$number} {$title}",
  "cards/contingency-when": "{$number} {$title} (متى: {$when})",
  "cards/planned": "الخطة {$at :hour-minute}",
  "cards/with": "مع {$crew}",
  "cards/sheet": "{$crew}، الورقة {$sheet :integer} من {$of :integer}",
  "cards/card": "{$crew}، البطاقة {$number :integer} من {$of :integer}",
  "cards/number": "{$number :integer} من {$of :integer}",
  "cards/continued": "{$step}، تتمة من البطاقة {$card :integer}",
  "cards/goes-on": "{$step} لها تتمة: البطاقة {$card :integer}",
};
