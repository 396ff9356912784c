import type { findingsOfProcedureWords as english } from "../../english/screens/findings-procedure.ts";
import type { Translated } from "../../translated.ts";

/** What the checker says of a procedure that could be read: order, decisions, supplies, ways, tethers, custody, wording. */
export const findingsOfProcedureWords: Translated<typeof english> = {
  "check/when": "{$finding :message} (عندما: {$conditions :list style=chained}.)",
  "check/when-outcome": "تكون نتيجة «{$decision}» هي «{$outcome}»",
  "check/when-get-ahead": "لا تُنفَّذ من المهام الإضافية إلا «{$task}»",
  "task/needs-get-ahead":
    "لا يمكن تنفيذ المهمة الإضافية «{$task}» دون المهمة الإضافية «{$other}». اجعلهما مهمة واحدة، أو دع «{$task}» تُحضر ما تحتاج إليه بنفسها.",
  "task/needs-get-aheads":
    "لا يمكن تنفيذ المهمة الإضافية «{$task}» وحدها، بل مع سائر المهام الإضافية فقط. اجعلها مهمة واحدة، أو دع «{$task}» تُحضر ما تحتاج إليه بنفسها.",
  "check/when-get-aheads": "تُنفَّذ المهام الإضافية",
  "order/not-all-scenarios":
    "تركيبات النتائج أكثر من أن تُدقَّق واحدة واحدة؛ دُقِّق كل خروج عن المتوقع، مفردًا أو مثنى (العدد: {$count :integer}).",
  "order/deadlock": "انسداد: هذه الخطوات ينتظر بعضها بعضًا إلى الأبد: {$waits :clauses}.",
  "order/waits-in-lane": "«{$step}» ({$crew :list style=chained}) تنتظر «{$other}»، التي تسبقها في التسلسل",
  "order/waits-on-step":
    "«{$step}» ({$crew :list style=chained}) تنتظر «{$other}»، التي ينفذها {$otherCrew :list style=chained}",
  "order/more-races": "أزواج الخطوات المتزاحمة على أغراض أو حالات أكثر من {$most :integer}؛ ولا يُذكر الباقي.",
  "order/mend-deadlock": "إزالة «{$other}» مما تأتي «{$step}» بعده.",
  "place/mend-at": "تنفيذ «{$step}» عند {$place}.",
  "place/mend-translation": "انتقال {$crew} إلى {$place} قبل «{$step}».",
  "custody/mend-receiver": "مشاركة {$crew} في «{$step}».",
  "order/race-moves":
    "كل من «{$mover}» ({$moverCrew :list style=chained}) و«{$other}» ({$otherCrew :list style=chained}) تنقل {$item}، ولا شيء يبيّن أيهما أولًا. اجعل إحداهما بعد الأخرى.",
  "state/race":
    "تجعل «{$one}» الحالة {$state} بقيمة {$value}، وتجعلها «{$other}» بقيمة {$otherValue}، ولا شيء يبيّن أيهما أولًا. اجعل إحداهما بعد الأخرى.",
  "state/needs": "تحتاج «{$step}» إلى أن تكون {$state} بقيمة {$value}: {$why :message}",
  "state/between":
    "تجعل «{$other}» الحالة {$state} بقيمة {$is}، وقد تأتي قبل «{$step}». اجعل «{$other}» بعد «{$step}»، أو أضف بينهما خطوة تعيدها إلى {$value}.",
  "state/not-set-first":
    "تجعل «{$other}» الحالة {$state} بقيمة {$value}، لكن لا شيء يبيّن أنها تأتي أولًا؛ وحتى ذلك الحين قيمتها {$is}. اجعل «{$step}» بعد «{$other}»، أو عيّن القيمة في خطوة سابقة.",
  "state/set-too-late":
    "لا تجعل «{$other}» الحالة {$state} بقيمة {$value} إلا بعد «{$step}»؛ وحتى ذلك الحين قيمتها {$is}. ضع «{$step}» بعد «{$other}»، أو عيّن القيمة في خطوة سابقة.",
  "state/never-set":
    "قيمتها {$is} من البداية، ولا خطوة تجعل {$state} بقيمة {$value}. أضف قبل «{$step}» خطوة تفعل ذلك، أو صحّح ما تحتاج إليه «{$step}».",
  "state/unset":
    "تجعل «{$other}» الحالة {$state} بقيمة {$is}، ولا شيء بعدها يعيدها إلى {$value}. اجعل «{$step}» قبل «{$other}»، أو أضف بينهما خطوة تعيّنها.",
  "state/not-at-its-end":
    "في النهاية قيمة {$state} هي {$is}، كما كانت في البداية، لا {$end} كما يجب. أضف خطوة تعيّنها.",
  "state/left-by":
    "في النهاية قيمة {$state} هي {$is}، كما تتركها «{$step}»، لا {$end} كما يجب. أضف بعدها خطوة تعيّنها.",
  "order/race-takes-out":
    "تنقل «{$mover}» ({$moverCrew :list style=chained}) الغرض {$item} بينما تحتاج إليه «{$other}» ({$otherCrew :list style=chained}) في موضعه للوصول إلى {$handled}، ولا شيء يبيّن أيهما أولًا. اجعل إحداهما بعد الأخرى.",
  "order/race-puts-in":
    "تنقل «{$mover}» ({$moverCrew :list style=chained}) الغرض {$item} بينما تضع «{$other}» ({$otherCrew :list style=chained}) بداخله {$handled}، ولا شيء يبيّن أيهما أولًا. اجعل إحداهما بعد الأخرى.",
  "decision/one-outcome": "للقرار «{$decision}» نتيجة واحدة فقط، «{$outcome}»، فلا شيء لتقريره.",
  "decision/no-branch": "لا تتوقف أي خطوة على نتيجة القرار «{$decision}».",
  "decision/never-performed": "لا تُنفَّذ «{$step}» أبدًا: لا تجتمع النتائج التي تحتاج إليها.",
  "task/closeout-get-ahead":
    "يجب تنفيذ «{$task}» في طريق العودة، فلا يمكن أن تكون مهمة إضافية تُترك عند ضيق الوقت.",
  "record/no-supply":
    "ليس لدى {$crew :list of=any} إمداد «{$supply}»، فالقياس ليس قراءة لأحد. اذكر إمدادًا لمن ينفذ الخطوة.",
  "record/other-unit":
    "وحدة القياس {$unit}، ووحدة الإمداد «{$supply}» هي {$other}. استخدم الوحدة نفسها لكليهما.",
  "supply/redline-above-full":
    "{$crew}: {$supply}: الممتلئ {$full :number} والحد الأحمر {$redline :number}: يكون قد نفد قبل بدء النشاط.",
  "supply/short":
    "{$crew}: بالمعدل المخطَّط يبلغ {$supply} الحد الأحمر عند PET {$at :clock}، قبل إنهاء «{$step}» بمقدار {$before :length}.",
  "watch/never-on": "ينتهي الفحص الدوري «{$watch}» قبل أن يبدأ: لا تبدأ «{$until}» بعد إنجاز «{$from}».",
  "watch/none-due":
    "لا يحلّ موعد الفحص الدوري «{$watch}» أبدًا: يتكرر كل {$every :length}، لكنه لا يسري إلا مدة {$on :length}.",
  "time/beyond-turn-back":
    "تُبقي «{$step}» {$crew} عند {$place} حتى PET {$until :clock}. إذا قُطع العمل عندئذ، تستغرق العودة {$back :length} مع الختام كله، فيكون على الجميع بدء العودة في موعد أقصاه PET {$latest :clock} للوصول قبل الحد {$limit :clock}: بتجاوز قدره {$over :length}.",
  "time/no-return":
    "إذا قُطع العمل عند نهاية «{$step}»، PET {$at :clock}، فلا نافذة تتسع للختام بعد ذلك، فلا يمكن تحديد آخر وقت لبدء العودة من هناك فصاعدًا.",
  "time/return-barred":
    "إذا قُطع العمل عند نهاية «{$step}»، PET {$at :clock}، فطريق العودة مسدود، فلا يمكن تحديد آخر وقت لبدء العودة من هناك فصاعدًا. {$why :message}",
  "time/return-breaks": "إذا قُطع العمل عند نهاية «{$step}»، PET {$at :clock}: {$what :message}",
  "return/bar": "{$need :message} {$setter :message}",
  "return/step-needs": "تحتاج «{$step}» إلى أن تكون {$state} بقيمة {$value}، وقيمتها {$is}.",
  "return/way-needs": "يحتاج طريق {$crew} إلى {$place} أن تكون {$state} بقيمة {$value}، وقيمتها {$is}.",
  "return/refuge-needs": "يحتاج طريق {$crew} إلى ملاذ أن تكون {$state} بقيمة {$value}، وقيمتها {$is}.",
  "return/set-by-none": "لا خطوة تعيّن ذلك.",
  "return/set-by-closeout": "كان على «{$step}» أن تعيّن ذلك، ولا يمكن تنفيذها قبله.",
  "return/set-by-left-out": "كان على «{$step}» أن تعيّن ذلك، وليست من خطوات الختام، فتُترك في طريق العودة.",
  "return/set-by-done": "كان على «{$step}» أن تعيّن ذلك من جديد: وقد أُنجزت، ولا خطوة من الختام تعيّنه.",
  "return/done-late": "في طريق العودة تُنجز «{$step}» بعد موعدها PET {$by :pet} بمقدار {$over :length}.",
  "return/started-late":
    "في طريق العودة تبدأ «{$step}» بعد أكثر من {$within :margin} من «{$after}»: متأخرة بمقدار {$over :length}.",
  "place/no-refuge": "لا مكان موسومًا ملاذًا، فلا يمكن تحديد آخر وقت لبدء العودة. وسّم الأماكن الآمنة.",
  "place/no-way-home":
    "لا طرق ذات مدة تؤدي من {$place} إلى ملاذ، فلا يمكن تحديد آخر وقت لبدء العودة للخطوات هناك.",
  "place/no-start": "«{$step}» بلا مدة، وليس لأي من منفذيها مكان بداية.",
  "place/not-there": "{$crew} عند {$place}، لكن «{$step}» تُنفَّذ عند {$at}، ولا انتقال يؤدي إلى هناك.",
  "place/no-way-unknown": "لا يُعرف مكان {$crew} قبل «{$step}»، فلا يمكن أخذ مدة الانتقال من الطرق.",
  "place/no-way": "لا طرق ذات مدة تؤدي من {$from} إلى {$to}، فتحتاج «{$step}» إلى مدة خاصة بها.",
  "text/confirms-itself": "في «{$step}» يؤكد {$crew} ما يفعله وحده؛ دع شخصًا آخر يؤكده.",
  "unit/not-valid":
    "«{$unit}» ليس رمز UCUM، فلا يعرف أحد ما تعنيه القيمة. اكتب رمز الوحدة، مثل kPa أو N.m أو ⁦/min⁩.",
  "unit/not-valid-meant": "«{$unit}» ليس رمز UCUM، فلا يعرف أحد ما تعنيه القيمة. أقرب رمز هو «{$meant}».",
  "unit/mend": "تغيير «{$unit}» إلى «{$meant}».",
  "size/far-off":
    "في «{$step}» للقياس {$record} حد قدره ⁦{$value :number} {$unit}⁩، يبعد أكثر من مئة ضعف عن كل حد آخر بوحدة {$unit}. تحقق من توافق القيمة والوحدة.",
  "time/zero":
    "لا تستغرق «{$step}» أي وقت، ومع ذلك يُنفَّذ فيها شيء. اذكر مدتها، أو احذف ما يُنفَّذ فيها لتكون علامة مرحلية.",
  "time/long":
    "تستغرق «{$step}» {$likely :length} و{$high :length} على الأكثر، أي أكثر من أربع ساعات لخطوة واحدة. تحقق من صحة المدة، أو قسّمها إلى عدة خطوات.",
  "time/spread":
    "تستغرق «{$step}» {$low :length} على الأقل و{$high :length} على الأكثر، أي أكثر من مئة ضعف. تحقق من أن كليهما بالوحدة الصحيحة.",
  "time/seconds":
    "تستغرق «{$step}» {$likely :length}، بينما يستغرق نصف الخطوات أكثر من {$usual :length}. تحقق مما إذا كان المقصود دقائق.",
  "text/hand-over-not-confirmed":
    "في «{$step}» ينتقل {$item} من فرد إلى آخر، ولا أحد يؤكد الإمساك به. أضف تأكيدًا.",
  "text/mate-not-confirmed": "في «{$step}» يُوصَل شيء، ولا أحد يؤكد وصله. أضف تأكيدًا.",
  "text/many-actions": "يبدو أن «{$step}» تتضمن أكثر من عمل؛ عمل واحد في كل خطوة أسهل متابعةً وتسجيلًا.",
  "text/no-verb": "لا تبدأ «{$step}» بما ينبغي عمله؛ ابدأ بالفعل.",
  "text/receiver-not-named": "في «{$step}» ينتقل {$item} إلى {$crew}، لكن النص لا يذكر {$crew}.",
  "place/way-closed":
    "في «{$step}» يذهب {$crew} من {$from} إلى {$to}، ولا يكون ذلك طريقًا إلا إذا كانت {$state} بقيمة {$value}: {$why :message}",
  "tether/reach-not-known":
    "لا طرق تؤدي من {$anchor}، نقطة تثبيت حبل {$crew}، إلى {$place}، فلا يُعرف هل يصل الحبل في «{$step}».",
  "tether/out-of-reach":
    "في «{$step}» {$crew} عند {$place}، على بعد {$way :metres} بأقصر طريق من {$anchor}، نقطة تثبيت حبل {$crew}. طول الحبل {$length :metres}: أقصر من اللازم بمقدار {$short :metres round=up}. انقل نقطة التثبيت إلى موضع أقرب أولًا.",
  "tether/anchor-not-there":
    "في «{$step}» تُنقل نقطة تثبيت حبل {$crew} إلى {$anchor}، لكن {$crew} عند {$place}.",
  "tether/shared-route":
    "قد يمتد حبلا {$one} ({$oneDuring :message}) و{$other} ({$otherDuring :message}) كلاهما على الطريق بين {$from} و{$to}. باعد بينهما.",
  "tether/in-step": "في «{$step}»",
  "tether/from-step-to-step": "من «{$first}» إلى «{$last}»",
  "custody/would-be-inside-itself": "سيكون {$item} داخل نفسه بعد «{$step}».",
  "custody/not-held":
    "في «{$step}» لا يستطيع {$crew :list style=chained} نقل {$item}، فمكانه: {$where :message}.",
  "custody/hand-over-apart":
    'في «{$step}» لا يمكن أن ينتقل {$item} من {$giver} ({$giverAt :message}) إلى {$receiver} ({$receiverAt :message}). اجمعهما أولًا في مكان واحد، أو بيّن بالمفتاح "at" أين يتم ذلك.',
  "custody/hands-full":
    "بعد «{$step}»، عند PET {$at :clock}، في يد {$crew}: {$items :list style=chained}، وعدد الأيدي اللازمة {$needed :integer}. ضع شيئًا جانبًا أولًا، أو ناوله غيره.",
  "custody/hands-full-at-start":
    "عند PET {$at :clock} في يد {$crew}: {$items :list style=chained}، وعدد الأيدي اللازمة {$needed :integer}. اجعل شيئًا منها يبدأ في موضع آخر.",
  "place/inside-works-outside":
    "تُنفَّذ «{$step}» عند {$place}، وهو في الخارج، ولا أحد من منفذيها في الخارج: {$crew :list style=chained}. اذكر شخصًا في الخارج، أو احذف المكان.",
  "custody/receiver-absent": "في «{$step}» ينتقل {$item} إلى {$crew}، وهو لا يشارك في الخطوة.",
  "custody/place-not-there": "في «{$step}» يُترك {$item} عند {$place}، لكن لا أحد من منفذي الخطوة هناك.",
  "custody/bag-not-at-hand":
    "في «{$step}» يوضع {$item} في {$bag}، وليس ذلك في متناول {$crew :list style=chained}.",
  "custody/not-at-its-end": "في النهاية ليس {$item} حيث يجب ({$end :message}): {$is :message}.",
  "custody/left-outside": "يُترك {$item} في الخارج في النهاية ({$is :message}). أدخله، أو عيّن له نهاية.",
  "custody/where-nowhere": "بلا مكان",
  "custody/where-unknown": "في مكان غير معروف",
  "custody/where-crew": "مع {$crew :list style=chained}",
  "custody/where-inside": "في الداخل",
  "custody/where-ground": "على الأرض",
  "custody/where-place": "عند {$place}",
  "custody/where-item": "داخل {$item}",
  "words/no-member": "في نصوص {$language}، ‏«{$key}» ليس معرّف شيء له نص.",
  "words/no-text": "في نصوص {$language}، لدى «{$key}» حقل «{$field}» ليس له نص عند المؤلف.",
  "words/several":
    "في نصوص {$language}، قد يعني «{$key}» أكثر من شيء له «{$field}». اكتب اسم القائمة قبل المعرّف، مثل «places {$key}».",
  "words/too-many": "في نصوص {$language}، لدى «{$key}» تحت «{$field}» أكثر مما كتبه المؤلف.",
  "words/older":
    "نص {$language} للحقل «{$field}» في «{$key}» أقدم من النص الذي يترجمه: كان «{$was}» وصار «{$is}».",
  "words/missing":
    ".input {$count :integer} .match $count zero {{لا نصوص بلا ترجمة إلى {$language}.}} one {{نص واحد ليست له ترجمة إلى {$language} بعد، ويُعرض بنص المؤلف.}} two {{نصان ليست لهما ترجمة إلى {$language} بعد، ويُعرضان بنص المؤلف.}} few {{{$count} نصوص ليست لها ترجمة إلى {$language} بعد، وتُعرض بنص المؤلف.}} many {{{$count} نصًا ليست له ترجمة إلى {$language} بعد، ويُعرض بنص المؤلف.}} * {{{$count} نص ليست له ترجمة إلى {$language} بعد، ويُعرض بنص المؤلف.}}",
};
