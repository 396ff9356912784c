import type { walksComparedWords as english } from "../../english/screens/walks-compared.ts";
import type { Translated } from "../../translated.ts";

/** What is said of many walks side by side. */
export const walksComparedWords: Translated<typeof english> = {
  "walks/title": "مقارنة الأنشطة",
  "walks/what": "كل نشاط لهذا الإجراء على محور زمني واحد",
  "walks/all":
    ".input {$count :integer} .match $count zero {{لا أنشطة}} one {{نشاط واحد}} two {{نشاطان}} few {{{$count} أنشطة}} many {{{$count} نشاطًا}} * {{{$count} نشاط}}",
  "walks/all-how":
    "خط لكل فرد من الطاقم، غليظ حيث نُفّذت خطوة؛ والفجوات انتظار ووقت بلا عمل. والمعيّن يدل على خطوة أُنجزت على نحو مخالف للخطة. انقر على خط لفتح مراجعة النشاط عند تلك الخطوة.",
  "walks/of-live": "النشاط الفعلي في {$at :utc}",
  "walks/of-rehearsal": "التمرين في {$at :utc}",
  "walks/end-complete": "مكتمل",
  "walks/end-terminated": "مُنهى مبكرًا",
  "walks/end-aborted": "مُجهَض",
  "walks/end-open": "مفتوح",
  "walks/finish": "{$ended}، آخر خطوة {$finish :finish}",
  "walks/finish-later": "{$ended}، آخر خطوة {$finish :finish}، متأخرة عن المخطَّط {$by :length}",
  "walks/finish-earlier": "{$ended}، آخر خطوة {$finish :finish}، متقدمة على المخطَّط {$by :advance}",
  "walks/order":
    ".input {$broken :integer} .input {$all :integer} .match $broken 0 {{رُوعي الترتيب في كل المواضع، وعددها {$all}}} zero {{رُوعي الترتيب في كل المواضع، وعددها {$all}}} one {{خولف الترتيب في موضع واحد من {$all}}} two {{خولف الترتيب في موضعين من {$all}}} few {{خولف الترتيب في {$broken} مواضع من {$all}}} many {{خولف الترتيب في {$broken} موضعًا من {$all}}} * {{خولف الترتيب في {$broken} موضع من {$all}}}",
  "walks/order-none": "لا ترتيب للنظر فيه",
  "walks/deviations":
    ".input {$count :integer} .match $count zero {{لا انحرافات}} one {{انحراف واحد}} two {{انحرافان}} few {{{$count} انحرافات}} many {{{$count} انحرافًا}} * {{{$count} انحراف}}",
  "walks/waits": "أكثر الانتظار: {$waits :clauses}",
  "walks/waited": "{$who}: {$waited :message}",
  "walks/open": "المراجعة",
  "walks/open-of": "مراجعة النشاط في {$at :utc}",
  "walks/in-second": "في المجموعة الثانية",
  "walks/show-rest":
    ".input {$count :integer} .match $count zero {{عرض {$count} نشاط آخر}} one {{عرض نشاط آخر}} two {{عرض نشاطين آخرين}} few {{عرض {$count} أنشطة أخرى}} many {{عرض {$count} نشاطًا آخر}} * {{عرض {$count} نشاط آخر}}",
  "walks/steps": "خطوة بخطوة",
  "walks/no-steps": "لا خطوة في هذه الأنشطة تبيّن كم استغرقت.",
  "walks/too-few":
    ".input {$count :integer} .match $count zero {{لا أنشطة: دون الخمسة لا توجد إلا الأنشطة نفسها}} one {{نشاط واحد: دون الخمسة لا توجد إلا الأنشطة نفسها}} two {{نشاطان: دون الخمسة لا توجد إلا الأنشطة نفسها}} few {{{$count} أنشطة: دون الخمسة لا توجد إلا الأنشطة نفسها}} many {{{$count} نشاطًا: دون الخمسة لا توجد إلا الأنشطة نفسها}} * {{{$count} نشاط: دون الخمسة لا توجد إلا الأنشطة نفسها}}",
  "walks/quantiles":
    "النصف خلال {$middle :length form=second}، وثمانية من عشرة من {$from :length form=second} إلى {$to :length form=second}، والابتعاد المعتاد بعامل {$factor :number maximumFractionDigits=2}",
  "walks/groups": "مجموعتان",
  "walks/groups-choose": "علّم أعلاه أنشطة المجموعة الثانية، فتكون البقية المجموعة الأولى.",
  "walks/groups-of": "أنشطة المجموعة الأولى: {$first :integer}، والثانية: {$second :integer}.",
  "walks/groups-untested": "لا خطوة لها نشاطان في كل مجموعة، فلا يُختبر شيء.",
  "walks/groups-none":
    ".input {$count :integer} .match $count zero {{لا خطوة اختُبرت.}} one {{لا يظهر فرق في الخطوة الوحيدة التي اختُبرت.}} two {{لا يظهر فرق في أي من الخطوتين اللتين اختُبرتا.}} few {{لا يظهر فرق في أي من الخطوات التي اختُبرت، وعددها {$count}.}} many {{لا يظهر فرق في أي من الخطوات التي اختُبرت، وعددها {$count}.}} * {{لا يظهر فرق في أي من الخطوات التي اختُبرت، وعددها {$count}.}}",
  "walks/groups-shown":
    ".input {$count :integer} .match $count zero {{يظهر فرق في {$count} خطوة مما اختُبر، وعدد المختبَر {$all :integer}.}} one {{يظهر فرق في خطوة واحدة مما اختُبر، وعدد المختبَر {$all :integer}.}} two {{يظهر فرق في خطوتين مما اختُبر، وعدد المختبَر {$all :integer}.}} few {{يظهر فرق في {$count} خطوات مما اختُبر، وعدد المختبَر {$all :integer}.}} many {{يظهر فرق في {$count} خطوة مما اختُبر، وعدد المختبَر {$all :integer}.}} * {{يظهر فرق في {$count} خطوة مما اختُبر، وعدد المختبَر {$all :integer}.}}",
  "walks/group-ratio":
    "في المجموعة الثانية المدة مضروبة في {$ratio :number maximumFractionDigits=2} (الأنشطة {$first :integer} و{$second :integer})",
  "walks/groups-how": "حيث لا يظهر فرق قد يوجد مع ذلك فرق؛ والفرق الظاهر لا يبيّن سببه، ولا أن أحدًا أسرع.",
  "walks/forecasts": "هل صحّت التوقّعات؟",
  "walks/forecasts-working": "جارٍ إعادة حساب التوقّعات من السجلات…",
  "walks/forecasts-none": "لا يمكن الحكم على أي توقّع بعد: يلزم نشاط أُغلق مكتملًا، فيه أكثر من مهمة واحدة.",
  "walks/bands-held":
    "عند نهاية المهام، تضمّن {$held :integer} من {$count :integer} من نطاقات ⁦80 %⁩ الانتهاء الذي حصل (من {$from :integer} إلى ⁦{$to :integer} %⁩ مع مراعاة المصادفة)، في أنشطة عددها {$walks :integer}.",
  "walks/scores":
    "الابتعاد في المتوسط بدرجة {$score :length form=second}؛ والخطة بأرقام المخطِّط وحدها بدرجة {$planned :length form=second}. الأقل أفضل.",
  "walks/verdict-too-few": "ذلك أقل مما يلزم للحكم: يلزم 40 توقّعًا و5 أنشطة.",
  "walks/verdict-hold": "تصحّ النطاقات بقدر ما تقول تقريبًا.",
  "walks/verdict-too-narrow": "النطاقات أضيق مما ينبغي: يقع الانتهاء خارجها أكثر مما تقول.",
  "walks/verdict-too-wide": "النطاقات أوسع مما يلزم.",
  "walks/forecasts-left-out":
    ".input {$count :integer} .match $count zero {{{$count} نشاط مستبعدة، لأنها لم تُغلق مكتملة.}} one {{نشاط واحد مستبعد، لأنه لم يُغلق مكتملًا.}} two {{نشاطان مستبعدان، لأنهما لم يُغلقا مكتملين.}} few {{{$count} أنشطة مستبعدة، لأنها لم تُغلق مكتملة.}} many {{{$count} نشاطًا مستبعدة، لأنها لم تُغلق مكتملة.}} * {{{$count} نشاط مستبعدة، لأنها لم تُغلق مكتملة.}}",
  "walks/forecasts-shorter":
    ".input {$count :integer} .match $count zero {{{$count} توقّع مستبعدة: أُنجزت مهمة إضافية لم تحسبها.}} one {{توقّع واحد مستبعد: أُنجزت مهمة إضافية لم يحسبها.}} two {{توقّعان مستبعدان: أُنجزت مهمة إضافية لم يحسباها.}} few {{{$count} توقّعات مستبعدة: أُنجزت مهمة إضافية لم تحسبها.}} many {{{$count} توقّعًا مستبعدة: أُنجزت مهمة إضافية لم تحسبها.}} * {{{$count} توقّع مستبعدة: أُنجزت مهمة إضافية لم تحسبها.}}",
  "walks/forecasts-how":
    "توقّعات النشاط الواحد تصح معًا أو تخطئ معًا، فكثرتها من أنشطة قليلة تقول أقل مما يبدو.",
};
