import type { helpWords as english } from "../../english/screens/help.ts";
import type { Translated } from "../../translated.ts";

/** What the help of several screens says alike. */
export const helpWords: Translated<typeof english> = {
  "guide/marks": "記号の意味",
  "guide/figures": "数値の根拠",
  "guide/doing": "ここでできること",
  "guide/trouble": "足りないもの、誤りがあるとき",
  "guide/advice": "Tetherlineの立場",
  "guide/advises":
    "Tetherlineは助言するだけで、指示はしません。判断の拠り所は飛行規則、現地の規則、有資格者の実務で、画面と異なる場合はそちらが正しいとします。印刷した手順書を手元に置いてください。",
  "guide/offline": "このヘルプは端末に保存されており、ネットワークは不要です。",
  "guide/strand":
    "一覧を縦に通る線はひもで、1人のクルーを表します。破線の形が誰かを示し、上端にラベルがあります。船外の1人目は実線、2人目は長い破線、船内の1人目は短い破線、地上の1人目は間隔の広い破線です。",
  "guide/bead":
    "ひもの上の玉は、そのクルーのステップです。これからのものは中抜き、完了すると塗りつぶしになります。",
  "guide/knot": "結び目は共同ステップです。加わる全員のひもが引き寄せられ、全員がそろうと始まります。",
  "guide/perhaps":
    "破線の玉や結び目は、スキップされたステップ、または判断の結果によって実施されるステップです。",
  "guide/alert-words":
    "警告、注意、注記は、ステップの作業の前に示されます。色だけでなく、語と枠でも区別できます。",
  "guide/critical":
    "クリティカルは、ステップが終了を決める連鎖の上にあることを示します。遅れると、終了も遅れます。",
  "guide/slack": "フロートは、終了を動かさずにステップの終わりを遅らせられる時間です。",
  "guide/planned-times":
    "計画の時刻は、ファイルの見込み時間、順序、経路、時間帯から導かれます。秒のない時刻は、分未満を切り捨てています。",
  "guide/margin": "余裕は、手順書の制限時間から終了を引いたものです。制限時間がなければ、余裕もありません。",
  "guide/share":
    "制限時間内の割合は、試行を数えたものです。各ステップの時間を、最短から最長までのPERTベータ分布から、常に同じシードで抽出するため、どの端末でも同じ値になります。",
};
