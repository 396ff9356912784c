import type { hubConsoleWords as english } from "../../english/hub/console.ts";
import type { Translated } from "../../translated.ts";

/** What a hub tells its owner on the console: what it is, and what keeps it from running. */
export const hubConsoleWords: Translated<typeof english> = {
  "hub/own-mistake": "حدث في المركز خطأ داخلي: {$what}",
  "engine/silent-on-entry": "لم يذكر المخزن ما آل إليه قيد.",
  "engine/disk-full": "القرص الذي عليه {$place} ممتلئ: أفسح مساحة عليه.",
  "engine/not-written": "لا تجوز الكتابة في {$place}: أعطِ المركز مجلد بيانات تجوز له الكتابة فيه.",
  "engine/not-opened": "لا يجوز فتح {$place}: أعطِ المركز مجلد بيانات تجوز له الكتابة فيه.",
  "engine/not-made": "لا يمكن إنشاء {$place}: أعطِ المركز مجلد بيانات تجوز له الكتابة فيه.",
  "engine/not-in-folder": "{$place} ليس داخل مجلد: أعطِ المركز مجلد بيانات.",
  "engine/not-a-folder": "{$place} ليس مجلدًا: أعطِ المركز مجلد بيانات.",
  "engine/not-a-log": "{$place} ليس سجل مركز: استعده من نسخة احتياطية، أو انقله.",
  "engine/damaged": "{$place} تالف: استعده من نسخة احتياطية.",
  "engine/another-hub": "يستخدم مركز آخر {$place}: أوقفه، أو أعطِ هذا المركز مجلدًا خاصًا به.",
  "engine/disk-fails": "القرص الذي عليه {$place} معطوب: افحص القرص.",
  "engine/with-code": "{$what :message} ({$code})",
  "engine/foreign-stream":
    'التدفق {$stream} عند {$place} لم ينشئه مركز (قيمة {$key} فيه مختلفة): أعطِ ⁦"?name="⁩ اسمًا آخر.',
  "engine/not-let-in": "المحرك عند {$place} لا يُدخل هذا المركز: تحقق من اسم المستخدم وكلمة المرور.",
  "engine/not-kept": "المحرك عند {$place} لا يحفظه: {$why :message} ({$code}).",
  "engine/no-answer": "المحرك عند {$place} لا يجيب ({$why :message}): شغّل nats-server مع JetStream.",
  "engine/marker-damaged": "{$path} تالف: استعده من نسخة احتياطية، أو احذفه.",
  "engine/marker-about":
    "يحتفظ مركز بسجله في هذا المجلد. لا تحذف هذا الملف إلا للاستمرار بما هو هنا أيًا كان، أو بلا شيء: وسيقرأ كل المتابعين كل شيء من جديد.",
  "engine/log-gone":
    "كان سجل المركز في {$folder}، لكن {$file} زال أو فارغ: استعده من نسخة احتياطية، أو احذف {$marker} للاستمرار دونه.",
  "engine/left-wal":
    "{$file} متروك من السجل الذي كان هنا سابقًا: نُحّي جانبًا ولا يُستخدم. احذفه بعد التحقق من أنه لا ينقص شيء.",
  "engine/not-proven":
    "لا يثبت أن {$file} هو السجل الذي كان لهذا المركز (نُسخ أو نُقل أو استُعيد): يقرأ كل المتابعين كل شيء من جديد ويرسلون ما ينقص.",
  "engine/backup-is-there": "{$file} موجود من قبل: أعطِ النسخة الاحتياطية اسمًا آخر.",
  "engine/no-backup-here": "السجل محفوظ في المحرك عند {$place}: انسخه احتياطيًا بأدوات ذلك المحرك.",
  "hub/full":
    "لدى المركز أكبر عدد من الاتصالات يستطيع حمله، وهو {$most :integer}: تُغلق الخاملة لأجل الجديدة، ويُطلب من غيرها أن تعود لاحقًا.",
  "hub/journal-unusable": "لا يمكن الكتابة في اليومية {$path}: {$why :message}",
  "hub/another-past":
    "أُبلغ متابِع بقيود ليست في هذا السجل: فقد استُعيد من نسخة. يقرأ كل المتابعين كل شيء من جديد ويرسلون ما ينقص.",
  "backup/no-socket":
    'لا يستطيع "hub backup" الوصول إلى هذا المركز وهو يعمل: لا يمكن الاستماع عند {$path}. أوقف المركز لأجل نسخة احتياطية، أو أعطه مجلد بيانات اسمه أقصر.',
  "backup/no-answer": "لم يجب المركز العامل بشأن النسخة الاحتياطية: حاول من جديد.",
  "backup/nothing-there": "لا سجل مركز في {$folder}: اذكر مجلد بياناته بالخيار ⁦--data⁩.",
  "engine/rights-mended":
    "كان غير هذا المستخدم يستطيع القراءة أو الكتابة في {$folder}: صارت ملفاته له وحده من جديد.",
  "engine/folder-open":
    "تجوز لآخرين الكتابة في {$folder}، وهو ليس للمركز وحده: أعطِ المركز مجلد بيانات خاصًا به.",
  "engine/secrets-about":
    "أسرار مركز: رمز المالك ومفاتيح التوقيع ورموز الوصول إلى مراكز أخرى. من لديه هذا الملف يستطيع فعل كل شيء. ودونه على الجميع الانضمام من جديد.",
  "engine/secrets-damaged":
    "{$path} تالف: استعده من نسخة احتياطية، أو احذفه فيكون على الجميع الانضمام من جديد.",
  "engine/secrets-gone":
    "الملف الذي فيه أسرار المركز (hub-secrets.json) ليس هنا: رمز المالك رمز آخر، وعلى الجميع الانضمام من جديد.",
  "engine/single-server":
    'يحتفظ المحرك بنسخة واحدة من كل شيء ويؤكد القيود قبل أن تصير على قرصه: قد يُفقد بانقطاع الكهرباء ما في آخر دقيقتين. اضبط "sync_interval: always" في إعداداته (nats-server 2.10 أو أحدث)، أو اطلب ⁦"?replicas=3"⁩.',
  "engine/no-sqlite": 'لا يمكن استخدام SQLite هنا ({$why}): شغّل "npm ci".',
  "engine/other-file": "{$file} ليس سجل مركز: انقله، أو أعطِ المركز مجلد بيانات آخر.",
  "engine/unsound": "{$file} تالف: استعده من نسخة احتياطية. ({$found}، {$unsound})",
  "engine/newer-version":
    "كُتب {$file} بنسخة أحدث من هذا البرنامج (الصيغة {$version :integer}، لا {$known :integer}): استخدم تلك النسخة.",
  "engine/other-version":
    "كُتب {$file} بنسخة أخرى من هذا البرنامج (الصيغة {$version :integer}، لا {$known :integer}): استخدم تلك النسخة.",
  "engine/file-closed": "{$file} مغلق: المركز في طريقه إلى التوقف.",
  "engine/slow-to-tell": "المحرك بطيء في بيان ما لديه: حاول من جديد.",
  "engine/slow-to-read": "المحرك بطيء في قراءة ما لديه: حاول من جديد.",
  "engine/closed": "المحرك مغلق: المركز في طريقه إلى التوقف.",
  "engine/address-not-understood": "عنوان المحرك غير مفهوم: أعطِ nats://host:port، أو اتركه.",
  "engine/address-has-unknown": "في عنوان المحرك «{$what}»، وهو غير معروف.",
  "engine/bad-replicas": "يطلب عنوان المحرك قيمة replicas غير 1 و3 و5.",
  "engine/bad-name": "يجوز أن يتألف اسم المحرك من 32 حرفًا ورقمًا على الأكثر، ومنها ⁦-⁩ و⁦_⁩.",
  "engine/unreadable-file": "يذكر عنوان المحرك {$path}، ولا تمكن قراءته.",
  "engine/gives-nothing-back": "لا يعيد المخزن ما حُفظ فيه للتو.",
  "hub/certificate-unreadable": "لا تمكن قراءة «{$file}».",
  "hub/not-a-certificate": "«{$certificate}» و«{$key}» ليسا شهادة ومفتاحها بصيغة PEM.",
  "hub/folder-unusable": "لا يمكن استخدام {$folder} ({$code}): أعطِ المركز مجلد بيانات تجوز له الكتابة فيه.",
  "hub/presence-not-told": "تعذّر الإبلاغ بمن يتابع النشاط: {$why :message}",
  "hub/cert-and-key": "أعطِ شهادة ومفتاحها: ⁦--cert⁩ و⁦--key⁩ معًا.",
  "hub/plain-or-cert": "إما ⁦--plain⁩ وإما ⁦--cert⁩: المركز دون TLS لا يعرض شهادة.",
  "hub/upstream-and-code": "أعطِ عنوان المركز الآخر ورمزًا منه: ⁦--upstream⁩ و⁦--upstream-code⁩.",
  "hub/upstream-not-understood":
    "عنوان المركز الآخر غير مفهوم: أعطِ https://host:port، مع ⁦#fingerprint⁩ عند الحاجة.",
  "hub/no-host": "أعطِ مضيفًا للاستماع عنده، أو اترك ⁦--host⁩.",
  "hub/kept-in": "مركز Tetherline «{$name}»، والسجل محفوظ في {$place}.",
  "hub/no-app": "لا تطبيق مبنيًا في {$folder}: لا تُقدَّم إلا الواجهة البرمجية.",
  "hub/plain": "HTTP دون تشفير: ضع أمامه وسيطًا مع TLS، وإلا أمكنت قراءة الرموز ورموز الوصول في الطريق.",
  "hub/certificate": "الشهادة، SHA-256: {$fingerprint}",
  "hub/authority": "صادرة عن سلطة هذا المركز نفسه، SHA-256: {$fingerprint}",
  "hub/to-trust": "يثق بها الجهاز اللوحي بعد تثبيت ⁦/tetherline-hub.crt⁩ من العنوان أدناه.",
  "hub/owner-code": "رمز المالك: {$code}",
  "hub/key-code": "رمز المفتاح، وبه يُتحقق من سجلات هذا المركز: {$key}",
  "hub/witness-trouble": "تعذّرت كتابة ما يكتبه هذا المركز عن نفسه في سجل: {$why :message}",
  "hub/how-to-stop": "أوقف المركز بـ Ctrl+C. افتح:",
  "hub/port-in-use": "المنفذ {$port :integer} مستخدم: أوقف ما يستخدمه، أو أعطِ غيره بالخيار ⁦--port⁩.",
  "hub/port-or-folder-denied":
    "لا يجوز استخدام المنفذ {$port :integer} أو مجلد البيانات «{$folder}»: أعطِ غيرهما بالخيارين ⁦--port⁩ و⁦--data⁩.",
  "hub/not-this-machine": "«{$host}» ليس عنوانًا لهذا الحاسوب: أعطِ أحد عناوينه بالخيار ⁦--host⁩.",
  "hub/data-not-a-folder": "مجلد البيانات «{$folder}» ليس مجلدًا: أعطِ غيره بالخيار ⁦--data⁩.",
  "hub/data-not-in-folder": "مجلد البيانات «{$folder}» ليس داخل مجلد: أعطِ غيره بالخيار ⁦--data⁩.",
  "hub/data-not-made": "لا يمكن إنشاء مجلد البيانات «{$folder}»: أعطِ غيره بالخيار ⁦--data⁩.",
  "hub/data-denied": "لا يجوز استخدام مجلد البيانات «{$folder}»: أعطِ غيره بالخيار ⁦--data⁩.",
  "hub/data-not-written": "لا تجوز الكتابة في مجلد البيانات «{$folder}»: أعطِ غيره بالخيار ⁦--data⁩.",
  "hub/data-disk-full": "القرص الذي عليه مجلد البيانات «{$folder}» ممتلئ: أفسح مساحة عليه.",
  "hub/authority-name": "مركز Tetherline {$name}",
  "hub/metric-entries": "القيود المعروضة، بحسب ما آلت إليه",
  "hub/metric-append": "من الحكم على دفعة إلى ثبوت حفظها",
  "hub/metric-links": "ارتباطات الأنشطة بمراكز أخرى، بحسب حالتها.",
  "hub/metric-unsent": "القيود المنتظرة إرسالها إلى مراكز أخرى.",
  "hub/metric-lag":
    "عمر أول قيد ينقص أكثر المراكز الأخرى تأخرًا، بالثواني؛ وهو لا نهائي حيث لم يصل أحدها شيء بعد.",
  "hub/metric-hub-lag": "الشيء نفسه لكل مركز مرتبط بهذا المركز.",
  "hub/metric-hub-unsent": "القيود المنتظرة إرسالها إلى كل مركز مرتبط بهذا المركز.",
  "hub/metric-disk": "القرص الذي عليه السجل: الخالي منه وحجمه، بالبايت.",
  "hub/metric-queue": "الدفعات الجاري تثبيت حفظها في هذه اللحظة.",
  "hub/metric-refused": "الطلبات التي لم تُنفَّذ، بحسب حالة الجواب.",
  "hub/metric-followers": "تدفقات الأحداث المفتوحة على هذا المركز",
  "hub/metric-memory": "الذاكرة المقيمة لهذا المركز",
};
