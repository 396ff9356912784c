import type { lightSourceWords as english } from "../../english/screens/light-source.ts";
import type { Translated } from "../../translated.ts";

/** Where day and night come from, and why a file of an orbit or of spans is refused. */
export const lightSourceWords: Translated<typeof english> = {
  "light/of-site":
    "شروق الشمس وغروبها في الموقع عند ⁦{$latitude :number}°⁩، ⁦{$longitude :number}°⁩، الحافة العليا مع الانكسار القياسي.",
  "light/of-orbit":
    "{$form} للجسم {$object :message}، لحظة الأساس {$epoch :utc form=minute} UTC؛ SGP4، ظل مخروطي لكرة نصف قطرها ⁦{$radius :number} km⁩.",
  "light/of-orbit-before":
    "{$form} للجسم {$object :message}، لحظة الأساس {$epoch :utc form=minute} UTC، قبل البداية بأيام عددها {$days :number minimumFractionDigits=1 maximumFractionDigits=1}؛ SGP4، ظل مخروطي لكرة نصف قطرها ⁦{$radius :number} km⁩.",
  "light/of-orbit-after":
    "{$form} للجسم {$object :message}، لحظة الأساس {$epoch :utc form=minute} UTC، بعد البداية بأيام عددها {$days :number minimumFractionDigits=1 maximumFractionDigits=1}؛ SGP4، ظل مخروطي لكرة نصف قطرها ⁦{$radius :number} km⁩.",
  "light/contact":
    "{$windows :list}: مرات المرور فوق {$sites :list}، محسوبة من المدار، دون انكسار؛ ولا تُحتسب الأوقات في الملف.",
  "light/contact-site":
    "⁦{$latitude :number}°⁩، ⁦{$longitude :number}°⁩، ⁦{$height :number} m⁩، فوق حد ارتفاع زاوي ⁦{$mask :number}°⁩",
  "light/contact-nowhere": "لا نافذة اتصال في هذا الإجراء، فلا تغيّر المحطات الأرضية شيئًا.",
  "light/object": "رقم {$number}",
  "light/old": "{$light :message} ذلك أكثر من 14 يومًا: عُدّ الأوقات تقريبية.",
  "orbit/problem": "{$field :message}: {$why :message}",
  "orbit/file": "الملف",
  "orbit/line": "السطر {$line :integer}",
  "orbit/empty": "فارغ",
  "orbit/needs": "القيمة «{$value}»، لكن SGP4 يحتاج إلى {$needed}",
  "orbit/not-sgp4": "هو {$type}، وليس SGP4",
  "orbit/missing": "ناقص",
  "orbit/not-a-number": "«{$text}» ليس عددًا",
  "orbit/not-an-epoch": "«{$text}» ليس تاريخًا ووقتًا بتوقيت UTC",
  "orbit/not-whole": "ليس عددًا صحيحًا",
  "orbit/no-such-keyword": "لا توجد في المعيار كلمة مفتاحية كهذه",
  "orbit/not-json": "ليس JSON صالحًا",
  "orbit/several-sets": "فيه مجموعات عددها {$count :integer}؛ والمطلوب مجموعة واحدة",
  "orbit/not-an-omm": "ليس OMM",
  "orbit/neither": "ليس عددًا ولا نصًا",
  "orbit/no-assignment": "ليس إسناد قيمة",
  "orbit/stands-twice": "مكرر مرتين",
  "orbit/not-xml": "ليس XML صالحًا",
  "orbit/stands-twice-one-needed": "مكرر مرتين؛ والمطلوب مجموعة واحدة",
  "orbit/line-length": "عدد محارفه {$count :integer}، لا 69",
  "orbit/line-columns": "أعمدته ليست أعمدة مجموعة عناصر مدارية ذات سطرين",
  "orbit/line-checksum": "مجموعه الاختباري {$written}، لكن مجموع أرقامه {$sum :integer}",
  "orbit/two-lines": "لمجموعة العناصر المدارية ذات السطرين سطران، أو ثلاثة مع الاسم",
  "orbit/two-objects": "السطر 1 للجسم {$one}، والسطر 2 للجسم {$two}",
  "orbit/no-such-day": "لا يوجد يوم رقمه {$day :number} في سنة {$year :integer}",
  "orbit/out-of-range": "{$value :number} ليست بين {$from :number} و{$to :number}",
  "spans/heading": 'يجب أن يكون العنوان "start,end"',
  "spans/cells": "عدد خلاياه {$count :integer}، لا 2",
  "spans/instants": "يجب أن تكون البداية والنهاية لحظتين بفارق توقيت أو Z",
  "spans/ends-first": "ينتهي قبل أن يبدأ",
};
