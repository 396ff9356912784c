import type { linkWords as english } from "../../english/screens/link.ts";
import type { Translated } from "../../translated.ts";

/** Joining, sharing and following a walk over a hub. */
export const linkWords: Translated<typeof english> = {
  "link/clock-set-back": "أُرجعت ساعة هذا الجهاز {$by :length}. وتستمر أوقات هذا النشاط كأن ذلك لم يحدث.",
  "link/clock-set-ahead": "قُدّمت ساعة هذا الجهاز {$by :length}. وتستمر أوقات هذا النشاط كأن ذلك لم يحدث.",
  "link/join-title": "الانضمام إلى نشاط",
  "link/join-what": "بالرمز الذي يعرضه قائده",
  "link/fetching": "جارٍ جلب النشاط من المركز…",
  "link/fetching-of": "جارٍ جلب النشاط من المركز: {$come :integer} من {$of :integer} من القيود…",
  "link/asking-for-walk": "ليس هذا النشاط على هذا الجهاز. يُطلب من المركز…",
  "link/no-walk-no-hub":
    "لا يوجد هذا النشاط على هذا الجهاز، ولا يجيب مركز يمكن أن يعود منه. ويُعاد الطلب كل 10 ثوانٍ.",
  "link/no-walk-no-member":
    "لا يوجد هذا النشاط على هذا الجهاز، ولا يعرف المركز هذا المتصفح في نشاط بهذا الاسم. إن كان قد توبع هنا فقد مُحي ما حفظه هذا الجهاز: انضم إلى النشاط برمز جديد، فيعود كل ما كان قد وصل إلى المركز.",
  "link/no-walk-other-name":
    "لا يوجد هذا النشاط على هذا الجهاز. كان قد توبع هنا قبل أن يُمحى ما حفظه هذا الجهاز، وبدأ هذا الجهاز بعد ذلك أنشطة أخرى: انضم إلى النشاط برمز جديد، فيعود كل ما كان قد وصل إلى المركز.",
  "link/who-uses": "مستخدم هذا الجهاز اللوحي",
  "link/asking": "جارٍ سؤال المركز…",
  "link/over-the-gap": "عبر الفجوة",
  "link/nobody-known": "لم يذكر المركز بعد من يتابع.",
  "link/unnamed": "بلا اسم",
  "link/this-tablet": "هذا الجهاز اللوحي",
  "link/take-off": "إخراج",
  "link/take-all-off": "إخراج الجميع…",
  "link/take-all-off-question": "إخراج جميع الآخرين من هذا النشاط؟",
  "link/take-all-off-how":
    ".input {$others :integer} .match $others zero {{يُستخدم إذا وقع رمز أو جهاز لوحي في أيدٍ غير مأذون لها. لا يُعرف في النشاط أحد آخر؛ وتنتهي كل الرموز. ويبقى ما أُدخل.}} one {{يُستخدم إذا وقع رمز أو جهاز لوحي في أيدٍ غير مأذون لها. يستمر جهاز أو مركز آخر وحده، ولا يأتي منه شيء إلى أن يكون له رمز جديد؛ وتنتهي كل الرموز. ويبقى ما أُدخل.}} two {{يُستخدم إذا وقع رمز أو جهاز لوحي في أيدٍ غير مأذون لها. يستمر جهازان أو مركزان آخران كل على حدة، ولا يأتي منهما شيء إلى أن يكون لهما رمز جديد؛ وتنتهي كل الرموز. ويبقى ما أُدخل.}} few {{يُستخدم إذا وقع رمز أو جهاز لوحي في أيدٍ غير مأذون لها. تستمر {$others} أجهزة أو مراكز أخرى كل على حدة، ولا يأتي منها شيء إلى أن يكون لها رمز جديد؛ وتنتهي كل الرموز. ويبقى ما أُدخل.}} many {{يُستخدم إذا وقع رمز أو جهاز لوحي في أيدٍ غير مأذون لها. يستمر {$others} جهازًا أو مركزًا آخر كل على حدة، ولا يأتي منها شيء إلى أن يكون لها رمز جديد؛ وتنتهي كل الرموز. ويبقى ما أُدخل.}} * {{يُستخدم إذا وقع رمز أو جهاز لوحي في أيدٍ غير مأذون لها. يستمر {$others} جهاز أو مركز آخر كل على حدة، ولا يأتي منها شيء إلى أن يكون لها رمز جديد؛ وتنتهي كل الرموز. ويبقى ما أُدخل.}}",
  "link/take-all-off-now": "إخراج الجميع",
  "link/keep-all": "إبقاؤهم",
  "link/all-taken-off":
    ".input {$count :integer} .match $count zero {{لم يكن في النشاط أحد آخر. وانتهت كل الرموز.}} one {{أُخرج جهاز واحد. وانتهت كل الرموز.}} two {{أُخرج جهازان. وانتهت كل الرموز.}} few {{أُخرجت {$count} أجهزة. وانتهت كل الرموز.}} many {{أُخرج {$count} جهازًا. وانتهت كل الرموز.}} * {{أُخرج {$count} جهاز. وانتهت كل الرموز.}}",
  "link/take-follower-off": "إخراج {$follower} من النشاط",
  "link/take-unnamed-off": "إخراج هذا المتابِع من النشاط",
  "link/offer-marker": "مسجِّل",
  "link/offer-marker-may": "يسجّل الخطوات والقياسات والملاحظات",
  "link/offer-watcher": "مراقب",
  "link/offer-watcher-may": "يقرأ فقط",
  "link/offer-trainer": "مدرِّب",
  "link/offer-trainer-may": "يرى كل شيء، ويطلق المفاجآت في التمرين",
  "link/offer-lead": "قائد",
  "link/offer-lead-may": "يغلق النشاط ويُدخل غيره أيضًا",
  "link/no-code": "لم يعطِ المركز رمزًا: {$why}",
  "link/invite": "إدخال جهاز لوحي آخر",
  "link/role": "الدور",
  "link/how-many-tablets": "عدد الأجهزة اللوحية التي يُدخلها",
  "link/code-for":
    ".input {$count :integer} .match $count zero {{صالح لـ {$count} جهاز لوحي، مرة لكل منها.}} one {{صالح لجهاز لوحي واحد.}} two {{صالح لجهازين لوحيين، مرة لكل منهما.}} few {{صالح لـ {$count} أجهزة لوحية، مرة لكل منها.}} many {{صالح لـ {$count} جهازًا لوحيًا، مرة لكل منها.}} * {{صالح لـ {$count} جهاز لوحي، مرة لكل منها.}}",
  "link/make-code": "إنشاء رمز",
  "link/qr-code": "عنوان الانضمام، في رمز QR",
  "link/lets-in-as-lead": "يُدخل بدور القائد، لمدة {$left :margin} أخرى.",
  "link/lets-in-as-marker": "يُدخل بدور المسجِّل، لمدة {$left :margin} أخرى.",
  "link/lets-in-as-watcher": "يُدخل بدور المراقب، لمدة {$left :margin} أخرى.",
  "link/lets-in-as-trainer": "يُدخل بدور المدرِّب، لمدة {$left :margin} أخرى.",
  "link/lets-in-as-relay": "يُدخل بدور المُرحِّل، لمدة {$left :margin} أخرى.",
  "link/code-expired": "انتهت صلاحية هذا الرمز: أنشئ غيره.",
  "link/open-codes": "رموز ما زالت صالحة",
  "link/open-code":
    ".input {$count :integer} .match $count zero {{بدور {$role}: {$count} جهاز لوحي آخر، لمدة {$left :margin} أخرى.}} one {{بدور {$role}: جهاز لوحي واحد آخر، لمدة {$left :margin} أخرى.}} two {{بدور {$role}: جهازان لوحيان آخران، لمدة {$left :margin} أخرى.}} few {{بدور {$role}: {$count} أجهزة لوحية أخرى، لمدة {$left :margin} أخرى.}} many {{بدور {$role}: {$count} جهازًا لوحيًا آخر، لمدة {$left :margin} أخرى.}} * {{بدور {$role}: {$count} جهاز لوحي آخر، لمدة {$left :margin} أخرى.}}",
  "link/end-code": "إنهاء هذا الرمز",
  "link/codes-not-told": "لم يذكر المركز أي الرموز ما زال صالحًا: {$why}",
  "link/scan-or-open": "امسحه بالكاميرا، أو افتح {$host} واختر «الانضمام إلى نشاط».",
  "link/code-field": "الرمز (تسعة أحرف وأرقام)",
  "link/join-example": "مثلًا: الأرض، أو IV",
  "link/join": "الانضمام إلى النشاط",
  "link/join-how":
    "يجد قائد النشاط رمزًا تحت «المزيد» ثم «الارتباط». ويُحفظ النشاط بعدئذ على هذا الجهاز اللوحي أيضًا، ويستمر هنا إذا انقطع الارتباط.",
  "link/state-alone": "وحده",
  "link/state-linking": "جارٍ الارتباط: محاولة الوصول إلى المركز",
  "link/state-linked": "مرتبط",
  "link/state-ended": "منتهٍ",
  "link/title": "الارتباط",
  "link/hub": "المركز",
  "link/role-here": "هذا الجهاز اللوحي",
  "link/key-here": "مفتاحه",
  "link/key-tied":
    "محفوظ على هذا الجهاز اللوحي حيث لا يستطيع أحد نسخه: لا يستطيع جهاز آخر أن يحل محله في النشاط",
  "link/key-copyable":
    "محفوظ على هذا الجهاز اللوحي رقمًا، إذ لا يحفظ متصفحه مفاتيح: من يصل إلى ما يحفظه الجهاز يستطيع نسخه والحلول محله في النشاط",
  "link/key-insecure":
    "لا يوجد، لأن هذه الصفحة لم تُفتح عبر TLS: إذا غادر هذا الجهاز اللوحي النشاط احتاج إلى مالك المركز ليعود",
  "link/key-unsupported":
    "لا يوجد، لأن هذا المتصفح لا يستطيع إنشاء مفتاح: إذا غادر هذا الجهاز اللوحي النشاط احتاج إلى مالك المركز ليعود",
  "link/key-not-kept":
    "لا يوجد، لأن هذا الجهاز اللوحي لم يستطع حفظ مفتاح: إذا غادر النشاط احتاج إلى مالك المركز ليعود",
  "link/entries": "القيود",
  "link/last-word": "آخر خبر",
  "link/clock-here": "الساعة هنا",
  "link/beyond": "عبر الفجوة",
  "link/beyond-hub": "{$what}.",
  "link/followers": "المتابعون",
  "link/leave-title": "المغادرة",
  "link/leave-how": "ما حُفظ هنا يبقى هنا، ولا يُرسل شيء بعد ذلك ولا يُجلب.",
  "link/leave-unsent":
    ".input {$count :integer} .match $count zero {{ما حُفظ هنا يبقى هنا، ولا يُرسل شيء بعد ذلك ولا يُجلب. كل القيود أُرسلت.}} one {{ما حُفظ هنا يبقى هنا، ولا يُرسل شيء بعد ذلك ولا يُجلب. قيد واحد لم يُرسل بعد.}} two {{ما حُفظ هنا يبقى هنا، ولا يُرسل شيء بعد ذلك ولا يُجلب. قيدان لم يُرسلا بعد.}} few {{ما حُفظ هنا يبقى هنا، ولا يُرسل شيء بعد ذلك ولا يُجلب. {$count} قيود لم تُرسل بعد.}} many {{ما حُفظ هنا يبقى هنا، ولا يُرسل شيء بعد ذلك ولا يُجلب. {$count} قيدًا لم تُرسل بعد.}} * {{ما حُفظ هنا يبقى هنا، ولا يُرسل شيء بعد ذلك ولا يُجلب. {$count} قيد لم تُرسل بعد.}}",
  "link/leave": "مغادرة المركز",
  "link/clock-agrees":
    "توافق ساعة المركز (⁦± {$error :number minimumFractionDigits=2 maximumFractionDigits=2} s⁩)",
  "link/clock-ahead":
    "متقدمة {$size :message} على ساعة المركز (⁦± {$error :number minimumFractionDigits=2 maximumFractionDigits=2} s⁩)",
  "link/clock-behind":
    "متأخرة {$size :message} عن ساعة المركز (⁦± {$error :number minimumFractionDigits=2 maximumFractionDigits=2} s⁩)",
  "link/seconds": "⁦{$size :number minimumFractionDigits=1 maximumFractionDigits=1} s⁩",
  "link/minutes": "⁦{$size :integer} min⁩",
  "link/hours": "⁦{$size :number minimumFractionDigits=1 maximumFractionDigits=1} h⁩",
  "link/all-sent": "أُرسل الكل",
  "link/fetched-of": "جُلب {$come :integer} من {$of :integer} من القيود",
  "link/not-sent": "لم يُرسل: {$count :integer}",
  "link/only-here":
    ".input {$count :integer} .match $count zero {{{$count} قيد من أجهزة أخرى على هذا الجهاز اللوحي فقط. لإيصالها إلى المركز، غادره وشارك النشاط من جديد برمز المالك.}} one {{قيد واحد من جهاز آخر على هذا الجهاز اللوحي فقط. لإيصاله إلى المركز، غادره وشارك النشاط من جديد برمز المالك.}} two {{قيدان من أجهزة أخرى على هذا الجهاز اللوحي فقط. لإيصالهما إلى المركز، غادره وشارك النشاط من جديد برمز المالك.}} few {{{$count} قيود من أجهزة أخرى على هذا الجهاز اللوحي فقط. لإيصالها إلى المركز، غادره وشارك النشاط من جديد برمز المالك.}} many {{{$count} قيدًا من أجهزة أخرى على هذا الجهاز اللوحي فقط. لإيصالها إلى المركز، غادره وشارك النشاط من جديد برمز المالك.}} * {{{$count} قيد من أجهزة أخرى على هذا الجهاز اللوحي فقط. لإيصالها إلى المركز، غادره وشارك النشاط من جديد برمز المالك.}}",
  "link/never-heard": "لم يُسمع منه قط",
  "link/heard-seconds-ago": "سُمع منه قبل ⁦{$seconds :integer} s⁩",
  "link/heard-ago": "سُمع منه قبل {$ago :length}",
  "link/in-memory": "في الذاكرة فقط",
  "link/export-before-closing": "صدّر قبل الإغلاق",
  "link/bar-alone": "هذا الجهاز وحده",
  "link/kept-here": "السجل محفوظ هنا",
  "link/bar-linking": "جارٍ الارتباط · {$heard}",
  "link/bar-linked": "مرتبط",
  "link/bar-linked-heard": "مرتبط · {$heard}",
  "link/bar-ended": "انتهى الارتباط",
  "link/kept-here-only": "محفوظ هنا فقط",
  "link/at-utc": "{$at :utc form=time-second} UTC",
  "link/another-hub": "مركز آخر",
  "link/is-reading": "يقرأ الآن",
  "link/seen-nothing": "لم يرَ شيئًا بعد",
  "link/seen-all": "رأى كل شيء",
  "link/seen-up-to": "رأى كل شيء حتى {$moment}",
  "link/away-seen-up-to": "غائب · رأى كل شيء حتى {$moment}",
  "link/hub-takes-nothing": "{$hub} لا يقبل شيئًا: {$why}",
  "link/hub-refused": "{$hub} لا يقبل شيئًا: رُفض",
  "link/hub-got-nothing": "{$hub} لم يصله شيء بعد",
  "link/hub-got-all": "{$hub} وصله كل شيء",
  "link/hub-got-up-to": "{$hub} وصله كل شيء حتى {$moment}",
  "link/waiting-to-be-sent": "في انتظار الإرسال: {$count :integer}",
  "link/another-device": "جهاز آخر",
  "link/overruled-done":
    "لم يُحتسب تسجيلك للخطوة {$number} «{$step}»: كان {$who} قد تخطّاها أولًا. افتح الخطوة لتغيير ذلك.",
  "link/overruled-skip":
    "لم يُحتسب تخطّيك للخطوة {$number} «{$step}»: كان {$who} قد سجّل إنجازها أولًا. افتح الخطوة لتغيير ذلك.",
  "link/overruled-asked-again":
    "لم يُحتسب تسجيلك للخطوة {$number} «{$step}»: كان قرارها قد فُتح من جديد. إن كانت قد أُنجزت، فافتح الخطوة وسجّلها منجزة خارج الترتيب مع ذكر السبب.",
  "link/overruled-settled":
    "الخطوة {$number}، {$step}: لم يُحتسب قرارك، لأن {$who} كان قد أفاد بصفته القائد بالنتيجة السارية. اسأل القائد.",
  "link/overruled-dropped": "لم يُحتسب تسجيلك للخطوة {$number} «{$step}»: كان {$who} قد أزال الخطوة من الخطة.",
  "link/share-how":
    "هذا النشاط على هذا الجهاز وحده. إذا نُقل إلى المركز عند {#b}{$host}{/b} أمكنت متابعته والتسجيل فيه من أجهزة لوحية أخرى؛ ويبقى كل شيء هنا محفوظًا هنا أولًا.",
  "link/share-how-anywhere":
    "هذا النشاط على هذا الجهاز وحده. إذا نُقل إلى مركز أمكنت متابعته والتسجيل فيه من أجهزة لوحية أخرى؛ ويبقى كل شيء هنا محفوظًا هنا أولًا.",
  "link/hub-address": "عنوان المركز",
  "link/hub-address-example": "مثلًا: ⁦https://vehicle.local:4173⁩",
  "link/hub-address-how":
    "كما تعرضه وحدة التحكم في المركز، بدءًا بـ ⁦https://⁩، أو رابط الدعوة كاملًا. وعلى هذا الجهاز اللوحي أن يثق بشهادة المركز.",
  "link/share-example": "مثلًا: الأرض",
  "link/owner-code": "رمز مالك المركز",
  "link/owner-code-where": "يعرضه المركز على وحدة التحكم عند بدء تشغيله.",
  "link/share": "مشاركة هذا النشاط",
  "link/no-walk-yet":
    "هذا رمز المركز نفسه، وليس لدى المركز نشاط بعد. شارك نشاطًا من الجهاز اللوحي الذي هو عليه.",
  "link/which-walk": "هذا رمز المركز نفسه: أي نشاط ستقود؟",
  "link/title-not-known": "غير معروف بعد",
  "link/walk-entries":
    ".input {$count :integer} .match $count zero {{{$walk}، لا قيود}} one {{{$walk}، قيد واحد}} two {{{$walk}، قيدان}} few {{{$walk}، {$count} قيود}} many {{{$walk}، {$count} قيدًا}} * {{{$walk}، {$count} قيد}}",
};
