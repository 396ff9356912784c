import type { surpriseSentences as english } from "../../english/command-line/surprises.ts";
import type { Translated } from "../../translated.ts";

/** Surprises of rehearsals on the command line. */
export const surpriseSentences: Translated<typeof english> = {
  "cli/surprises-laid":
    "想定外事象 {$of :integer}件のうち{$count :integer}件を仕込みました。内容は船外活動のレビューにあります。",
  "cli/surprises": "想定外事象",
  "cli/surprise-came": "{$at :clock} {$title}：{$effect}",
  "cli/surprise-never": "発生せず：{$title}：{$effect}",
  "cli/surprise-expected": "{$crew :list}に{$time :length}以内に期待される対応：{$notice} {$act}",
  "cli/surprise-unnoticed": "気付いたことを示すエントリーはありません。",
  "cli/surprise-sign": "{$at :clock} {$who}：{$what}",
  "cli/surprise-sign-said": "{$at :clock} {$who}：{$what}；{$said}",
  "cli/surprise-cost":
    ".input {$way :string} .match $way earlier {{その後、予測の終了は{$time :length form=second}早くなりました。}} * {{その後、予測の終了は{$time :length form=second}遅くなりました。}}",
  "cli/surprise-margin": "余裕は{$before :margin}から{$after :margin}になりました。",
  "cli/surprise-supply":
    "{$crew}の{$supply}の最終残量は{$before :quantity}から{$after :quantity}になりました。",
  "cli/surprises-alone":
    "{$file}は想定外事象のファイルです。手順書「{$procedure}」のファイルも一緒に指定してください。",
};
