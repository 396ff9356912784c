import type { helpOfBriefWords as english } from "../../english/screens/help-brief.ts";
import type { Translated } from "../../translated.ts";

/** The page of help of the briefing. */
export const helpOfBriefWords: Translated<typeof english> = {
  "guide/brief": "ブリーフィング",
  "guide/brief-play":
    "地図、キャプション、タイムラインの帯が、船外活動の1〜120倍の速さで一緒に再生されます。ボタンで前後のステップやタスクへ、スライダーと帯で任意の時点へ移ります。",
  "guide/brief-keys":
    "キーボードでは、スペースキーで再生と一時停止、左右の矢印キーでステップ、Page UpとPage Downでタスクを移ります。",
  "guide/brief-audience":
    "「視聴者用ウィンドウ」は、第2の画面用のウィンドウを開き、あなたの表示と同じものを映します。あなたのウィンドウには、メモ、次に来るもの、残り時間、次の警告・注意が出ます。あなたのウィンドウが閉じられると、視聴者用ウィンドウにそう示されます。",
  "guide/brief-quiz":
    "クイズをオンにすると、共同ステップの前で止まり、誰がどこで待ち、それぞれ何を持っているかを尋ねます。採点も保存もしません。",
  "guide/brief-spoken":
    "キャプションの読み上げには、この端末に音声がある場合、その音声だけを使います。そのとき文字のキャプションはタスク単位になります。",
  "guide/brief-paper":
    "ストーリーボードは、A4またはレターの横向きで印刷します。ファイルは誰にでも渡せます。このプログラムもネットワークもなしに再生できます。",
  "guide/brief-figures":
    "表示は、見込み時間による計画か、入力されたとおりの船外活動です。60×を超えると、ステップが速すぎて読めないため、キャプションはタスク単位になります。",
  "guide/brief-flown":
    "レビューから開いたブリーフィングは、最後のエントリーまで、または現在までの実際の経過を示します。",
  "guide/brief-trouble":
    "場所が地図にない場合は、手順書にその人の居場所が書かれていません。昼夜が出ない場合は、計画のタイムラインで昼夜の根拠と開始を選んでください。",
};
