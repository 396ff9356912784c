import type { writeMapWords as english } from "../../english/screens/write-map.ts";
import type { Translated } from "../../translated.ts";

/** The map on which places are put, and the pictures of a procedure. */
export const writeMapWords: Translated<typeof english> = {
  "write/map": "地図上の場所",
  "write/map-not-yet": "手順書にエラーの指摘がなくなると、地図を描けます。",
  "write/map-place": "動かす場所",
  "write/map-step": "動かす量",
  "write/map-metres": "{$metres :metres}",
  "write/map-move": "場所を動かす",
  "write/map-left": "← 左",
  "write/map-right": "→ 右",
  "write/map-up": "↑ 上",
  "write/map-down": "↓ 下",
  "write/map-how":
    "場所をタップして選び、空いた所をタップするとそこへ移ります。ボタンでも、ボタンにフォーカスがあるときの矢印キーでも動かせます。高さはフォームに入力します。",
  "write/map-says": "上から見た{$count :integer}か所の地図。",
  "write/map-ways": "「{$place}」からの経路",
  "write/map-way": "{$place}：経路で{$length :metres}、直線で{$straight :metres}",
  "write/way-out": "経路を外す：{$one}〜{$other}",
  "write/map-mode": "地図をタップしたときの動作",
  "write/map-mode-move": "場所の移動",
  "write/map-mode-way": "経路",
  "write/map-mode-place": "新しい場所",
  "write/map-how-way": "経路で結ぶ2か所をタップするか、ここで選んでください。",
  "write/map-how-place": "空いた所をタップすると、新しい場所がそこに置かれます。名前はフォームに入力します。",
  "write/map-place-beside": "「{$place}」の横に置く",
  "write/way": "2か所を結ぶ経路",
  "write/way-from": "起点",
  "write/way-to": "終点",
  "write/way-none": "場所を選択",
  "write/way-length": "経路の長さ、m",
  "write/way-measured": "位置から求めた直線距離は{$length :metres}です。経路ではこれより長い場合があります。",
  "write/way-shorter": "直線距離より短くなっています。",
  "write/way-not-measured": "測れません。ファイルに位置のない場所があります。",
  "write/way-time": "移動時間（分）",
  "write/way-take": "{$time :length form=second}とする",
  "write/way-take-from":
    "{$time :length form=second}は、この手順書で最も遅い経路 {$one}〜{$other} の速さによるものです。",
  "write/way-no-pace": "この手順書に時間の付いた経路がないため、参考にできる速さがありません。",
  "write/way-without-time": "時間がない経路は、移動の計画に使われません。",
  "write/way-put": "経路を入れる",
  "write/way-is-in": "経路を入れました：{$one}〜{$other}。",
  "write/no-picture": "手順書に入れられる画像ではありません。PNG、JPEG、WebP、SVGを使えます。",
  "write/pictures-how":
    "PNG、JPEG、WebP、SVG。1枚400 kBまで、合計3 MBまで。一緒に表示する画像はステップの側で指定します。",
  "write/map-no-ways": "「{$place}」からの経路はありません。",
};
