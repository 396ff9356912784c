import type { splitWords as english } from "../../english/screens/split.ts";
import type { Translated } from "../../translated.ts";

/** Who does what and in which order: the panel on the timeline of a plan, and `split` on the command line. */
export const splitWords: Translated<typeof english> = {
  "split/title": "最適な分担",
  "split/rest": "残りの最適な分担",
  "split/as-of": "PET {$now :clock}時点の状態です。",
  "split/moved-on": "その後に記録がありました。採用する前に再計算してください。",
  "split/working": "より良い分担を探しています …",
  "split/failed": "ここでは、より良い分担を探せませんでした。パネルを閉じて、もう一度実行してください。",
  "split/going-on": "探索中：現時点の最良です。",
  "split/stop": "探索を中止",
  "split/prove": "証明する",
  "split/proving": "証明を探しています …",
  "split/no-solver":
    "証明に必要なアプリの一部がまだこの端末にありません。アプリの配信元に接続して、もう一度実行してください。",
  "split/second-proven": "数理計画でも証明されました（二者択一の数：{$choices :integer}）。",
  "split/second-open":
    "数理計画では、許された探索の範囲で決まりませんでした（二者択一の数：{$choices :integer}）。",
  "split/second-too-large": "数理計画として書き表すには大きすぎます（二者択一の数：{$choices :integer}）。",
  "split/now": "現在の計画：終了 {$finish :finish}。",
  "split/proven":
    "最適と証明済み：終了 {$finish :finish}、{$by :advance}早い。この作業でこれより早く済む分担はありません。",
  "split/best-found":
    "見つかった最良：終了 {$finish :finish}、{$by :advance}早い。これよりさらに{$over :length}を超えて早く済む分担はありません。",
  "split/kept-proven": "計画を維持：この作業でこれより早く済む分担はありません。",
  "split/kept":
    "計画を維持：より良い分担は見つかりませんでした。{$over :length}を超えて早く済む分担はありません。",
  "split/no-choice":
    "選べるものがありません。ほかの担当候補（or）を持つステップも、順序の自由なタスク（order）もありません。",
  "split/no-plan": "改善できる計画がありません。先に計画を妨げている問題を修正してください。",
  "split/step-given": "ステップ {$step}「{$text}」の担当を{$old :list}から{$crew :list}に変更。",
  "split/steps-given":
    "ステップ {$steps :list}の担当を{$old :list}から{$crew :list}にまとめて変更。最初から最後まで同じ人が持ち続けるものがあるためです。",
  "split/task-first": "タスク「{$task}」を先頭に。",
  "split/task-behind": "タスク「{$task}」を「{$behind}」の後に。",
  "split/gains": "これがないと、計画は{$time :advance}遅くなります。",
  "split/needed": "これがないと、ほかの変更はできません。",
  "split/chain":
    ".input {$count :integer} .match $count 1 {{計画の終了はステップ {$first}で決まり、その負担が軽くなります。}} * {{計画の終了は{$first}から{$last}までの{$count}ステップの連鎖で決まり、その負担が軽くなります。}}",
  "split/cost": "変更に伴うもの",
  "split/changed-hands":
    ".input {$count :integer} .match $count 0 {{担当の変わるステップはありません。}} * {{{$count}ステップの担当が変わります。}}",
  "split/metres": "全員の移動の合計が{$before :metres}から{$after :metres}になります。",
  "split/window-tighter":
    "「{$window}」で最も余裕の少ないステップの残りが、{$before :advance}から{$after :advance}になります。",
  "split/keep": "計画を維持",
  "split/save": "改訂 {$revision}として保存",
  "split/how-rest":
    "その時点からの見込み時間により、着手していない余裕時タスクを除きます。完了・作業中のステップと撤収作業は動きません。責任者が変更を記録するまで、何も変わりません。",
  "split/how":
    "見込み時間により、余裕時タスクを除き、判断は想定どおりとします。担当が変わるのはほかの担当候補を持つステップだけ、移るのは順序の自由なタスクだけで、撤収作業は動きません。改訂版を保存するまで、何も変わりません。",
};
