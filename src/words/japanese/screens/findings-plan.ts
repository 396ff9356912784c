import type { findingsOfPlanWords as english } from "../../english/screens/findings-plan.ts";
import type { Translated } from "../../translated.ts";

/** What there is to say of a plan in its windows, its light and its limit. */
export const findingsOfPlanWords: Translated<typeof english> = {
  "time/over-limit": "計画が制限時間を{$over :integer} min超えています。",
  "light/decayed": "この軌道要素では、開始から1日以内に軌道が減衰します。",
  "window/not-known-start":
    "PET 0の日時がないため、{$window}がいつ来るか不明です。計画には考慮されていません。",
  "window/not-known-orbit":
    "軌道と開始日時がないため、{$window}がいつ来るか不明です。計画には考慮されていません。",
  "window/no-fit":
    "「{$step}」は{$length :number} minかかり、最も早くてPET {$ready :clock}に開始できます。{$why :message}{$mend :message}",
  "window/not-open-after":
    ".input {$count :integer} .match $count 1 {{それ以後{$windows :list style=chained}は開きません。}} * {{それ以後{$windows :list style=chained}が同時に開くことはありません。}}",
  "window/too-short":
    ".input {$count :integer} .match $count 1 {{それ以後{$windows :list style=chained}が開くのは最長{$longest :number} minで、{$short :number} min足りません。}} * {{それ以後{$windows :list style=chained}が同時に開くのは最長{$longest :number} minで、{$short :number} min足りません。}}",
  "window/call-out-of-contact":
    '「{$step}」はPET {$start :clock}から{$finish :clock}まで地上と通話しますが、{$windows :list style=chained}の外です。通話が時間帯を待つように"within"に交信の時間帯を指定するか、通話を移してください。',
  "window/fits-earlier": "{$earlier :number} min早く、PET {$at :clock}までに開始できれば収まります。",
  "window/fits-shorter": "所要時間が{$less :number} min短ければ収まります。",
  "window/fits-earlier-or-shorter":
    "{$earlier :number} min早く、PET {$at :clock}までに開始できるか、所要時間が{$less :number} min短ければ収まります。",
  "window/fits-never": "{$windows :list style=chained}に、十分な長さの期間はありません。",
  "time/done-late":
    "「{$step}」はPET {$by :clock}までに完了する必要がありますが、計画では{$at :finish form=second}で、{$over :length}遅れます。",
  "time/done-late-bound":
    "「{$step}」はPET {$by :clock}までに完了する必要がありますが、計画では{$at :finish form=second}で、{$over :length}遅れます。開始を最後に決めているのは、{$crew :list}の「{$other}」です。",
  "time/started-late":
    "「{$step}」は「{$after}」の後{$within :length}以内に開始する必要がありますが、計画では{$over :length}遅れて開始します。",
  "time/started-late-bound":
    "「{$step}」は「{$after}」の後{$within :length}以内に開始する必要がありますが、計画では{$over :length}遅れて開始します。開始を最後に決めているのは、{$crew :list}の「{$other}」です。",
  "place/too-far-apart":
    "「{$step}」の終わり、PET {$at :clock}に、{$one}と{$other}は経路で{$metres :metres}離れます。許容される{$apart :metres}を{$over :metres round=up}超えています。",
};
