import type { helpOfCompareWords as english } from "../../english/screens/help-compare.ts";
import type { Translated } from "../../translated.ts";

/** The help of comparing and merging. */
export const helpOfCompareWords: Translated<typeof english> = {
  "guide/compare": "ヘルプ：比較",
  "guide/compare-changes":
    "「変更点」は、変更をタスクごとに示します。ステップはidで区別するため、idが変わったものは、外されて追加されたものとして扱います。",
  "guide/compare-flag":
    "タイムラインでは、変更のあったステップのバーの先頭に旗が付きます。2つの縮尺は同じです。",
  "guide/compare-choose":
    "上で2つの改訂版を選びます。ファイルは棚に置かれずに比較され、ページとともに忘れられます。",
  "guide/compare-print": "印刷ページは後の改訂版で、変更のあったすべてのステップの横の余白に線が付きます。",
  "guide/compare-merge":
    "統合するには、両方の元になった改訂版を選びます。一方だけが変えたものは採用されます。両方が同じ箇所を変えた場合は、選ぶまで何も採用されません。",
  "guide/compare-effect":
    "どちらも判断は想定どおり、余裕時タスクを除き、同じ開始と昼夜で計画します。内容が同じ指摘は同じものとみなします。",
  "guide/compare-not-there":
    "この端末にない改訂版は比較できません。そのファイルを取り込んでください。統合が正しくできるのは、実際に両方の元になった改訂版を使った場合だけです。別の改訂版を使うと、外したものが戻ってきます。",
};
