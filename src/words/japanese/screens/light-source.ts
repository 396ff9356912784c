import type { lightSourceWords as english } from "../../english/screens/light-source.ts";
import type { Translated } from "../../translated.ts";

/** Where day and night come from, and why a file of an orbit or of spans is refused. */
export const lightSourceWords: Translated<typeof english> = {
  "light/of-site": "地点 {$latitude :number}°、{$longitude :number}°の日の出と日の入り（上縁、標準大気差）。",
  "light/of-orbit":
    "{$object :message}の{$form}、元期 {$epoch :utc form=minute} UTC。SGP4、半径{$radius :number} kmの球による円錐の影。",
  "light/of-orbit-before":
    "{$object :message}の{$form}、元期 {$epoch :utc form=minute} UTC（開始の{$days :number minimumFractionDigits=1 maximumFractionDigits=1}日前）。SGP4、半径{$radius :number} kmの球による円錐の影。",
  "light/of-orbit-after":
    "{$object :message}の{$form}、元期 {$epoch :utc form=minute} UTC（開始の{$days :number minimumFractionDigits=1 maximumFractionDigits=1}日後）。SGP4、半径{$radius :number} kmの球による円錐の影。",
  "light/contact":
    "{$windows :list}：{$sites :list}の上空のパス。軌道から大気差なしで計算。ファイルの時刻は使いません。",
  "light/contact-site":
    "{$latitude :number}°、{$longitude :number}°、{$height :number} m、マスク {$mask :number}°以上",
  "light/contact-nowhere": "この手順書に交信の時間帯がないため、地上局による変化はありません。",
  "light/object": "物体 {$number}",
  "light/old": "{$light :message}14日を超えているため、時刻はおおよそのものと見てください。",
  "orbit/problem": "{$field :message}：{$why :message}",
  "orbit/file": "ファイル",
  "orbit/line": "{$line :integer}行目",
  "orbit/empty": "空です",
  "orbit/needs": "「{$value}」ですが、SGP4には{$needed}が必要です",
  "orbit/not-sgp4": "{$type}で、SGP4ではありません",
  "orbit/missing": "ありません",
  "orbit/not-a-number": "「{$text}」は数値ではありません",
  "orbit/not-an-epoch": "「{$text}」はUTCの日付と時刻ではありません",
  "orbit/not-whole": "整数ではありません",
  "orbit/no-such-keyword": "規格にないキーワードです",
  "orbit/not-json": "正しいJSONではありません",
  "orbit/several-sets": "{$count :integer}組あります。必要なのは1組です",
  "orbit/not-an-omm": "OMMではありません",
  "orbit/neither": "数値でも文字列でもありません",
  "orbit/no-assignment": "代入の形になっていません",
  "orbit/stands-twice": "2つあります",
  "orbit/not-xml": "正しいXMLではありません",
  "orbit/stands-twice-one-needed": "2つあります。必要なのは1組です",
  "orbit/line-length": "{$count :integer}文字です。69文字でなければなりません",
  "orbit/line-columns": "桁の並びが2行軌道要素のものではありません",
  "orbit/line-checksum": "チェックサムは{$written}ですが、数字の合計は{$sum :integer}です",
  "orbit/two-lines": "2行軌道要素は2行、名前付きなら3行です",
  "orbit/two-objects": "1行目は物体 {$one}、2行目は物体 {$two}のものです",
  "orbit/no-such-day": "{$year :integer}年に{$day :number}日目はありません",
  "orbit/out-of-range": "{$value :number}は{$from :number}から{$to :number}の間にありません",
  "spans/heading": '見出しは"start,end"でなければなりません',
  "spans/cells": "セルが{$count :integer}個あります。2個でなければなりません",
  "spans/instants": "開始と終了は、オフセットまたはZの付いた日時でなければなりません",
  "spans/ends-first": "終了が開始より前です",
};
