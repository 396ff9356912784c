import type { hubConsoleWords as english } from "../../english/hub/console.ts";
import type { Translated } from "../../translated.ts";

/** What a hub tells its owner on the console: what it is, and what keeps it from running. */
export const hubConsoleWords: Translated<typeof english> = {
  "hub/own-mistake": "ハブで内部エラーが起きました：{$what}",
  "engine/silent-on-entry": "エントリーがどうなったか、保存先から応答がありませんでした。",
  "engine/disk-full": "{$place}のあるディスクがいっぱいです。空きを作ってください。",
  "engine/not-written": "{$place}に書き込めません。書き込み可能なデータフォルダーをハブに指定してください。",
  "engine/not-opened": "{$place}を開けません。書き込み可能なデータフォルダーをハブに指定してください。",
  "engine/not-made": "{$place}を作成できません。書き込み可能なデータフォルダーをハブに指定してください。",
  "engine/not-in-folder": "{$place}はフォルダーの中にありません。ハブにデータフォルダーを指定してください。",
  "engine/not-a-folder": "{$place}はフォルダーではありません。ハブにデータフォルダーを指定してください。",
  "engine/not-a-log": "{$place}はハブのログではありません。バックアップから戻すか、移動してください。",
  "engine/damaged": "{$place}は破損しています。バックアップから戻してください。",
  "engine/another-hub":
    "別のハブが{$place}を使っています。そのハブを止めるか、このハブに別のフォルダーを指定してください。",
  "engine/disk-fails": "{$place}のあるディスクに障害があります。ディスクを確認してください。",
  "engine/with-code": "{$what :message}（{$code}）",
  "engine/foreign-stream":
    '{$place}のストリーム{$stream}はハブが作ったものではありません（{$key}が異なります）。"?name="で別の名前を指定してください。',
  "engine/not-let-in":
    "{$place}のエンジンがこのハブを認証しません。ユーザー名とパスワードを確認してください。",
  "engine/not-kept": "{$place}のエンジンが保存しません：{$why :message}（{$code}）。",
  "engine/no-answer":
    "{$place}のエンジンが応答しません（{$why :message}）。JetStreamを有効にしてnats-serverを起動してください。",
  "engine/marker-damaged": "{$path}は破損しています。バックアップから戻すか、削除してください。",
  "engine/marker-about":
    "このフォルダーにハブのログがあります。このファイルは、ここにあるものだけで、または何もない状態で続ける場合に限って削除してください。参加者全員が、すべてを読み直します。",
  "engine/log-gone":
    "ハブのログは{$folder}にありましたが、{$file}がないか空です。バックアップから戻すか、{$marker}を削除してログなしで続けてください。",
  "engine/left-wal":
    "{$file}は、以前ここにあったログの残りです。別に置き、使いません。足りないものがないと確かめてから削除してください。",
  "engine/not-proven":
    "{$file}が、このハブの持っていたログであると証明できません（コピー、移動または復元されました）。参加者全員がすべてを読み直し、足りないものを送ります。",
  "engine/backup-is-there": "{$file}はすでにあります。バックアップに別の名前を付けてください。",
  "engine/no-backup-here":
    "ログは{$place}のエンジンにあります。そのエンジンのツールでバックアップしてください。",
  "hub/full":
    "ハブの接続は上限の{$most :integer}件です。使われていない接続は新しいもののために閉じ、ほかには後で来るよう伝えます。",
  "hub/journal-unusable": "ジャーナル{$path}に書き込めません：{$why :message}",
  "hub/another-past":
    "ある参加者に、このログにないエントリーが伝えられていました。ログが写しから戻されたためです。参加者全員がすべてを読み直し、足りないものを送ります。",
  "backup/no-socket":
    'このハブの稼働中は"hub backup"から接続できません：{$path}で待ち受けられません。ハブを止めてバックアップするか、名前の短いデータフォルダーを指定してください。',
  "backup/no-answer":
    "稼働中のハブから、バックアップについての応答がありませんでした。もう一度試してください。",
  "backup/nothing-there": "{$folder}にハブのログはありません。--dataでデータフォルダーを指定してください。",
  "engine/rights-mended":
    "{$folder}をほかの人が読み書きできる状態でした。ファイルをこのユーザーだけのものに戻しました。",
  "engine/folder-open":
    "{$folder}はこのハブ専用ではなく、ほかの人が書き込めます。専用のデータフォルダーをハブに指定してください。",
  "engine/secrets-about":
    "ハブの機密情報：所有者コード、署名用の鍵、ほかのハブのトークン。このファイルを持つ人は何でもできます。これがなくなると、全員が参加し直す必要があります。",
  "engine/secrets-damaged":
    "{$path}は破損しています。バックアップから戻してください。削除すると、全員が参加し直す必要があります。",
  "engine/secrets-gone":
    "ハブの機密情報のファイル（hub-secrets.json）がありません。所有者コードは新しいものになり、全員が参加し直す必要があります。",
  "engine/single-server":
    'エンジンはすべてを1部だけ保存し、ディスクに書き込む前にエントリーを確認します。停電で最後の2分間が失われる可能性があります。設定に"sync_interval: always"を入れるか（nats-server 2.10以降）、"?replicas=3"を指定してください。',
  "engine/no-sqlite": 'ここではSQLiteを使えません（{$why}）。"npm ci"を実行してください。',
  "engine/other-file":
    "{$file}はハブのログではありません。移動するか、ハブに別のデータフォルダーを指定してください。",
  "engine/unsound": "{$file}は破損しています。バックアップから戻してください。（{$found}、{$unsound}）",
  "engine/newer-version":
    "{$file}は、このプログラムの新しい版で書かれています（形式{$version :integer}、既知の形式{$known :integer}）。その版を使ってください。",
  "engine/other-version":
    "{$file}は、このプログラムの別の版で書かれています（形式{$version :integer}、既知の形式{$known :integer}）。その版を使ってください。",
  "engine/file-closed": "{$file}は閉じられています。ハブは終了中です。",
  "engine/slow-to-tell": "エンジンの保存内容の応答に時間がかかっています。もう一度試してください。",
  "engine/slow-to-read": "エンジンの読み出しに時間がかかっています。もう一度試してください。",
  "engine/closed": "エンジンは閉じられています。ハブは終了中です。",
  "engine/address-not-understood":
    "エンジンのアドレスを解釈できません。nats://host:portの形で指定するか、省いてください。",
  "engine/address-has-unknown": "エンジンのアドレスにある「{$what}」は使えません。",
  "engine/bad-replicas": "エンジンのアドレスのreplicasは1、3、5のいずれかです。",
  "engine/bad-name": "エンジンの名前は、英数字、-、_の32文字以内です。",
  "engine/unreadable-file": "エンジンのアドレスにある{$path}を読み取れません。",
  "engine/gives-nothing-back": "保存した直後のものを、保存先から読み戻せません。",
  "hub/certificate-unreadable": "「{$file}」を読み取れません。",
  "hub/not-a-certificate": "「{$certificate}」と「{$key}」は、PEM形式の証明書とその鍵ではありません。",
  "hub/folder-unusable":
    "{$folder}を使えません（{$code}）。書き込み可能なデータフォルダーをハブに指定してください。",
  "hub/presence-not-told": "船外活動の参加者を伝えられませんでした：{$why :message}",
  "hub/cert-and-key": "証明書とその鍵の両方を指定してください。--certと--keyは一組です。",
  "hub/plain-or-cert": "--plainと--certは、どちらか一方だけです。TLSなしのハブは証明書を示しません。",
  "hub/upstream-and-code": "別のハブのアドレスとそのコードを指定してください：--upstreamと--upstream-code。",
  "hub/upstream-not-understood":
    "別のハブのアドレスを解釈できません。https://host:portの形で、必要なら#fingerprintを付けて指定してください。",
  "hub/no-host": "待ち受けるホストを指定するか、--hostを省いてください。",
  "hub/kept-in": "Tetherlineハブ「{$name}」、ログの保存先 {$place}。",
  "hub/no-app": "{$folder}にビルド済みのアプリがありません。インターフェースだけを提供します。",
  "hub/plain":
    "TLSなしのHTTPです。TLS付きのプロキシーを前に置かないと、コードとトークンが途中で読まれるおそれがあります。",
  "hub/certificate": "証明書、SHA-256：{$fingerprint}",
  "hub/authority": "このハブ自身の認証局が発行、SHA-256：{$fingerprint}",
  "hub/to-trust": "タブレットは、次のアドレスの/tetherline-hub.crtをインストールすると信頼します。",
  "hub/owner-code": "所有者コード：{$code}",
  "hub/key-code": "鍵コード（このハブのログの検証用）：{$key}",
  "hub/witness-trouble": "このハブが自身についてログに書く内容を書き込めませんでした：{$why :message}",
  "hub/how-to-stop": "Ctrl+Cでハブを停止します。開くアドレス：",
  "hub/port-in-use":
    "ポート{$port :integer}は使用中です。使っているものを止めるか、--portで別のポートを指定してください。",
  "hub/port-or-folder-denied":
    "ポート{$port :integer}またはデータフォルダー「{$folder}」を使う権限がありません。--portと--dataで別のものを指定してください。",
  "hub/not-this-machine":
    "「{$host}」はこのマシンのアドレスではありません。--hostでこのマシンのアドレスを指定してください。",
  "hub/data-not-a-folder":
    "データフォルダー「{$folder}」はフォルダーではありません。--dataで別のものを指定してください。",
  "hub/data-not-in-folder":
    "データフォルダー「{$folder}」はフォルダーの中にありません。--dataで別のものを指定してください。",
  "hub/data-not-made": "データフォルダー「{$folder}」を作成できません。--dataで別のものを指定してください。",
  "hub/data-denied":
    "データフォルダー「{$folder}」を使う権限がありません。--dataで別のものを指定してください。",
  "hub/data-not-written":
    "データフォルダー「{$folder}」に書き込む権限がありません。--dataで別のものを指定してください。",
  "hub/data-disk-full": "データフォルダー「{$folder}」のディスクがいっぱいです。空きを作ってください。",
  "hub/authority-name": "Tetherlineハブ {$name}",
  "hub/metric-entries": "届いたエントリーの数（処理結果別）",
  "hub/metric-append": "まとまりの判定から、永続化までの時間",
  "hub/metric-links": "ほかのハブとの船外活動の接続（状態別）。",
  "hub/metric-unsent": "ほかのハブへの送信を待つエントリー。",
  "hub/metric-lag":
    "最も遅れているハブに届いていない最初のエントリーの経過時間（秒）。まだ何も届いていないハブがあれば無限大。",
  "hub/metric-hub-lag": "同じ値（このハブが接続している各ハブについて）。",
  "hub/metric-hub-unsent": "このハブが接続している各ハブへの送信を待つエントリー。",
  "hub/metric-disk": "ログのあるディスク：空きと容量（バイト）。",
  "hub/metric-queue": "現在永続化中のまとまり。",
  "hub/metric-refused": "実行されなかったリクエスト（応答のステータス別）。",
  "hub/metric-followers": "このハブで開いているイベントストリーム",
  "hub/metric-memory": "このハブの常駐メモリー",
};
