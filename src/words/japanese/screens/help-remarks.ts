import type { helpOfRemarksWords as english } from "../../english/screens/help-remarks.ts";
import type { Translated } from "../../translated.ts";

/** What the help of reading says of remarks. */
export const helpOfRemarksWords: Translated<typeof english> = {
  "guide/remarks":
    "「意見」では、ステップまたは全体にコメントと同意を付けられます。未解決のコメントは、誰かが解決済みにするまで、後の改訂版でも指摘の中に示されます。",
  "guide/remarks-agree":
    "同意は、全バイトまで同一の1つの内容だけに対するもので、何も承認しません。意見はファイルに保存してほかの人に渡せます。複数の読者のファイルは、どの順序でも1つにまとまります。",
};
