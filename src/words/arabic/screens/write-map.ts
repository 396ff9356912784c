import type { writeMapWords as english } from "../../english/screens/write-map.ts";
import type { Translated } from "../../translated.ts";

/** The map on which places are put, and the pictures of a procedure. */
export const writeMapWords: Translated<typeof english> = {
  "write/map": "الأماكن على الخريطة",
  "write/map-not-yet": "يمكن رسم الخريطة عندما لا يبقى في الإجراء مأخذ من مستوى خطأ.",
  "write/map-place": "المكان المراد نقله",
  "write/map-step": "مقدار النقل",
  "write/map-metres": "{$metres :metres}",
  "write/map-move": "نقل المكان",
  "write/map-left": "← يسارًا",
  "write/map-right": "→ يمينًا",
  "write/map-up": "↑ أعلى",
  "write/map-down": "↓ أسفل",
  "write/map-how":
    "انقر على مكان لاختياره، وعلى موضع خالٍ لوضعه هناك. وتنقله الأزرار، ومفاتيح الأسهم حين يكون التركيز على أحدها. وتُكتب الارتفاعات في نموذجه.",
  "write/map-says":
    ".input {$count :integer} .match $count zero {{خريطة من أعلى فيها {$count} مكان.}} one {{خريطة من أعلى فيها مكان واحد.}} two {{خريطة من أعلى فيها مكانان.}} few {{خريطة من أعلى فيها {$count} أماكن.}} many {{خريطة من أعلى فيها {$count} مكانًا.}} * {{خريطة من أعلى فيها {$count} مكان.}}",
  "write/map-ways": "الطرق من «{$place}»",
  "write/map-way": "{$place}: {$length :metres} عبر الطريق، {$straight :metres} بخط مستقيم",
  "write/way-out": "إزالة الطريق: {$one} – {$other}",
  "write/map-mode": "ما تفعله نقرة على الخريطة",
  "write/map-mode-move": "نقل الأماكن",
  "write/map-mode-way": "طريق",
  "write/map-mode-place": "مكان جديد",
  "write/map-how-way": "انقر على المكانين اللذين يصل بينهما الطريق، أو اخترهما هنا.",
  "write/map-how-place": "انقر على موضع خالٍ: يوضع هناك مكان جديد. ويُكتب اسمه في نموذجه.",
  "write/map-place-beside": "وضعه بجانب «{$place}»",
  "write/way": "طريق بين مكانين",
  "write/way-from": "من",
  "write/way-to": "إلى",
  "write/way-none": "اختر مكانًا",
  "write/way-length": "الطول عبر الطريق، m",
  "write/way-measured": "بينهما {$length :metres} بخط مستقيم، بحسب موضعيهما. وقد يكون الطريق أطول.",
  "write/way-shorter": "هذا أقصر من الخط المستقيم بينهما.",
  "write/way-not-measured": "لا يمكن قياسه: أحدهما بلا موضع في الملف.",
  "write/way-time": "المدة التي يستغرقها المرء، بالدقائق",
  "write/way-take": "أخذ {$time :length form=second}",
  "write/way-take-from": "{$time :length form=second} بسرعة أبطأ طريق في هذا الإجراء، {$one} – {$other}.",
  "write/way-no-pace": "لا طريق في هذا الإجراء له مدة، فلا شيء يُقاس عليه.",
  "write/way-without-time": "دون مدة لا يُخطَّط لأحد أن يسلك هذا الطريق.",
  "write/way-put": "إضافة الطريق",
  "write/way-is-in": "أُضيف الطريق: {$one} – {$other}.",
  "write/no-picture": "ليست هذه صورة يمكن أن يتضمنها إجراء: PNG أو JPEG أو WebP أو SVG.",
  "write/pictures-how":
    "PNG أو JPEG أو WebP أو SVG، حتى ⁦400 kB⁩ لكل صورة و⁦3 MB⁩ للمجموع. وتسمّي الخطوات الصور التي تُعرض معها.",
  "write/map-no-ways": "لا طريق ينطلق من «{$place}».",
};
