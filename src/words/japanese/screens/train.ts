import type { trainWords as english } from "../../english/screens/train.ts";
import type { Translated } from "../../translated.ts";

/** The trainer's screen. */
export const trainWords: Translated<typeof english> = {
  "train/title": "想定外事象",
  "train/no-rehearsal": "この船外活動はリハーサルでないため、想定外事象は入れられません。",
  "train/not-for-followers": "想定外事象は教官用です。参加者には、船外活動のクローズまで何も知らされません。",
  "train/told-in-review": "船外活動はクローズ済みです。各想定外事象の経過はレビューにあります。",
  "train/none": "「{$title}」に付属する想定外事象はありません。ファイルを選んでください。",
  "train/choose-file": "ファイルを選択…",
  "train/file-given":
    "これは手順書「{$procedure}」のリハーサル用の想定外事象です。この端末に用意され、リハーサルの進行画面の「想定外事象」にあります。",
  "train/file-for-none":
    "これは想定外事象で、リハーサルの進行画面の「想定外事象」で使うものです。どの手順書用かがファイルに書かれていないため、保存していません。",
  "train/findings": "ファイルの誤り",
  "train/finding-at": "{$line :integer}行目：{$finding :message}",
  "train/not-entered": "入力できませんでした：{$why}",
  "train/no-effect": "入力されましたが、効力はありません：{$why :message}。",
  "train/kept-back":
    "このリハーサルは、この端末でも進行されています。クローズまで、一覧、タイムライン、地図、現時点のレビューには想定外事象の影響だけが表れ、想定外事象であることは示されません。ログと書き出したログでは、偶然読まれない形で書かれますが、鍵がかかっているわけではありません。",
  "train/show-them": "教官として想定外事象を表示",
  "train/hide-them": "想定外事象を隠す",
  "train/lay-how":
    "この{$count :integer}件の想定外事象のうち、どれがいつ起こるかをシードで抽選します。どれかは知らされません。",
  "train/seed": "シード：同じ値なら同じ抽選結果",
  "train/lay": "抽選して仕込む",
  "train/laid":
    ".input {$count :integer} .match $count 0 {{抽選の結果、該当なしです。}} * {{想定外事象 {$count}件を仕込みました。}}",
  "train/are-laid":
    "このリハーサルには想定外事象が{$count :integer}件仕込まれています。内容は、クローズ後のレビューにあります。",
  "train/too-late-to-lay":
    "時計が開始されているため、もう仕込めません。手動で発生させることはできます。ここで行うか、ハブから参加した教官が行います。",
  "train/fired": "「{$title}」を発生させました。",
  "train/not-started": "想定外事象を発生させられるのは、時計の開始後です。",
  "train/expected": "{$crew}に{$time :length}以内に期待される対応：{$notice} {$act}",
  "train/by-itself": "手動では未発生。仕込まれている場合の発生：{$when :message}",
  "train/laid-for": "仕込み済み。発生：{$when :message}",
  "train/was-fired": "PET {$at}に手動で発生。",
  "train/came": "PET {$at}に発生。",
  "train/nobody-yet": "気付いたことを示すエントリーはまだありません。",
  "train/first-sign": "発生から{$time :length form=second}後の最初の反応、{$who}：{$what :message}",
  "train/fire": "発生させる",
  "train/fire-which": "「{$title}」を発生させる",
  "train/fire-now": "「{$title}」を今発生させる",
  "train/leave": "今はしない",
  "train/sight": "参加者に見えている内容",
  "train/at": "PET {$at}",
  "train/crew": "クルー",
  "train/lane-ready": "開始可能",
  "train/lane-waiting": "待ち",
  "train/lane-working": "作業中",
  "train/lane-finished": "終了",
  "train/unseen": "誰も確認していません。",
  "train/seen": "{$who}が確認済み。",
  "guide/train": "ヘルプ：想定外事象",
  "guide/train-what":
    "リハーサルには、教官がファイルに書いた想定外事象を入れられます。長引くステップ、許容範囲外の値、見当たらない物品、応答のないクルー、減っていく消耗品、異なる結果の判断などです。",
  "guide/train-lay":
    "時計の開始前に、どれがいつ起こるかをシードで抽選します。どれかは誰にも知らされません。これに教官は必要ありません。",
  "guide/train-fire":
    "教官は、ハブのコードを使って教官として参加し、すべてを閲覧し、想定外事象を手動で発生させます。発生させたものはすぐに起こり、取り消せません。教官のタブレットからは何も入力しません。",
  "guide/train-here":
    "ハブがない場合、またはクルー役を演じるタブレットでは、教官はそこでこのページを開き（別のタブでも可）、教官であることを示します。それまで想定外事象は表示されません。ネットワークは不要です。2回発生させたものは1回と数え、クローズ後に発生させたものは効力がありません。",
  "guide/train-file":
    "想定外事象のファイルは、棚に渡すこともできます。その手順書のどのリハーサルでも、この端末のここに用意されます。",
  "guide/train-play":
    "クルー役は、想定外事象のとおりに動きます。クルー役は、リハーサルを作成したタブレットで演じられます。参加者に見えるのは、値、消耗品、長引くステップ、それに伴うアラートです。",
  "guide/train-hidden":
    "ほかのタブレットには、クローズまで想定外事象は表示されず、送られません。クルー役を演じるタブレットではログにありますが、偶然読まれない形で書かれています。鍵がかかっているわけではありません。",
  "guide/train-review":
    "クローズした船外活動のレビューでは、それぞれについて、発生した時、気付いたことを示す最初のエントリー、実施した対応、影響を、期待された対応と並べて示します。採点はしません。",
  "guide/train-wrong":
    "別の手順書用のファイルや、存在しないものを指すファイルは取り込まれません。各指摘にその行が示されます。",
};
