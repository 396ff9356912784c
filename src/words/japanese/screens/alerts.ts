import type { alertWords as english } from "../../english/screens/alerts.ts";
import type { Translated } from "../../translated.ts";

/** What alerts say while a walk runs. They tell; they order nothing. */
export const alertWords: Translated<typeof english> = {
  "alert/turn-back-passed": "引き返し時刻 {$at :clock}を過ぎています（{$ago :length}前）",
  "alert/turn-back-near": "引き返し時刻 {$at :clock}まであと{$time :length}です",
  "alert/return-barred": "{$crew :list}：帰路がふさがれています。{$why :message}",
  "alert/no-return": "{$crew :list}：退避場所への帰路が収まらなくなったか、不明です",
  "alert/no-forecast": "予測できません。残りの作業がもう収まりません",
  "alert/over-limit": "予測では、残りの作業が制限時間を{$over :length}超えます",
  "alert/margin-small": "予測では、制限時間までの余裕は{$margin :length}です",
  "alert/redline": "{$crew}：{$supply}は{$at :clock}からレッドラインに達しています",
  "alert/redline-near": "{$crew}：{$supply}はあと{$time :length}、{$at :clock}にレッドラインに達します",
  "alert/impossible-reading": "{$crew}：{$supply}の読み値は採用していません。{$why :message}",
  "alert/watch-due": "{$crew :list}：{$watch}（期限 {$due :clock}）",
  "alert/hold": "船外活動は{$since :clock}からホールド中です",
  "alert/hold-because": "船外活動は{$since :clock}からホールド中です：{$reason}",
  "alert/decided-otherwise": "{$ask} {$outcome}。以前は「{$was}」で、その分岐で実施されたものはありません",
  "alert/decided-otherwise-after":
    "{$ask} {$outcome}。以前は「{$was}」で、その分岐で実施されたもの：{$steps :list}",
  "alert/decided-contrary":
    "{$ask} {$who}の判断「{$outcome}」が採られています。{$other}の判断は「{$was}」で、その分岐で実施されたものはありません。どれを有効とするかは責任者が決めます",
  "alert/decided-contrary-after":
    "{$ask} {$who}の判断「{$outcome}」が採られています。{$other}の判断は「{$was}」で、その分岐で実施されたもの：{$steps :list}。どれを有効とするかは責任者が決めます",
  "alert/asked-again": "{$ask} この判断は未完了に戻っています。改めて判断されるまで「{$outcome}」が有効です",
  "alert/item-elsewhere": "{$item}は{$holders :list}が所持しており、{$crew :list}が{$step}に必要としています",
  "alert/overtime": "{$crew :list}：{$step}（作業時間 {$time :length}、計画の最長 {$high :length}）",
};
