import type { farHubWords as english } from "../../english/hub/far.ts";
import type { Translated } from "../../translated.ts";

/** What a hub says of another one that it is linked with. */
export const farHubWords: Translated<typeof english> = {
  "far/unknown-hub": "そこで応答したハブは、このハブでは扱えません。",
  "far/connection-lost": "別のハブとの接続が切れました。",
  "far/answered": "別のハブの応答は{$status :integer}でした。",
  "far/not-reached": "{$origin}のハブにつながりません（{$why :message}）。",
  "far/other-certificate": "--upstreamで指定したものと異なる証明書です",
  "far/own-entry-unreadable": "このハブのエントリーを、この版では読み取れません：{$why :message}。",
  "far/no-relay": "この招待はハブ用ではありません。役割が中継（relay）の招待を作ってください。",
  "far/itself": "それはこのハブ自身です。別のハブのアドレスを指定してください。",
  "far/other-hub": "{$origin}のハブ：{$what}",
  "far/entries-refused": "{$count :integer}件のエントリーが拒否されました：{$why}",
};
