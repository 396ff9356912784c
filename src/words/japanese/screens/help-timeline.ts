import type { helpOfTimelineWords as english } from "../../english/screens/help-timeline.ts";
import type { Translated } from "../../translated.ts";

/** The help of the timeline, of a plan and of a walk. */
export const helpOfTimelineWords: Translated<typeof english> = {
  "guide/timeline": "ヘルプ：タイムライン",
  "guide/timeline-lanes":
    "各行は1人のクルーで、時間は右へPETで進みます。背景は、分かる場合に昼、夜、時間帯を示します。",
  "guide/timeline-shapes": "記号の意味は図の下にあります。「表で表示」で、同じ内容が数値で示されます。",
  "guide/timeline-waits":
    "斜線の部分は待ちです。その後のステップをタップすると、誰または何を待つかが分かります。",
  "guide/timeline-now": "船外活動の進行中は、線が現在を示します。その前は実施されたもの、その後は予測です。",
  "guide/timeline-forecast":
    "予測は、実施されたものを残し、以後を現在から見込み時間で計画します。作業中のステップは、開始に見込み時間を足した時刻か現在の、遅い方に終わるとします。",
  "guide/timeline-misses":
    "「収まらない試行」は、試行が外す時間帯と、ステップがその時刻または期間内に終わらない場合を、それぞれ試行の割合とともに示します。",
  "guide/timeline-starts":
    "開始の図は、1日の各開始に対する終了を示し、点線で確率を示します。選んだ開始の数値がその下にあります。",
  "guide/timeline-light":
    "昼、夜、交信は、選ばれた軌道ファイル、地点、または時刻の一覧によります。軌道要素は古くなるほど不正確になります。日付を見てください。",
  "guide/timeline-what-if":
    "試算は保存するまで何も変えません。保存すると棚に別の改訂版ができ、元のファイルはそのままです。",
  "guide/timeline-split":
    "「最適な分担」は、手順書に選択の余地がある場合に、終了が最も早くなる担当と順序を探します。提案を改訂版として保存するまで、計画は変わりません。「証明する」はその証明を探します。必要なアプリの一部はそのとき取得され、以後端末に残ります。",
  "guide/timeline-leaves":
    "「計画の書き出し」では、計画を表、ワークブック（クルーと時間の表、および一覧）、A3またはタブロイドのポスターとして得られます。そこでの変更は手順書に戻りません。",
  "guide/timeline-fragments":
    "「定型手順」では、繰り返し使う数個のステップまたはタスクを空欄を埋めて挿入し、結果を改訂版として保存します。挿入されたステップは元を覚えているため、後に定型手順の別の改訂版が提案されます。",
  "guide/timeline-none":
    "タイムラインがない場合、手順書は計画できません。代わりに理由が示されます。昼夜がない場合は、軌道ファイルか地点を選んでください。",
};
